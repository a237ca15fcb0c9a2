// SPDX-License-Identifier: GPL-3.0-or-later
// Bench set-up in seven groups of whole pages: the bench, its people, sound and glass, the record, assumptions, product
// sheets, instruments. The way on leads from group to group; a group of several pages is turned by two large arrows.
#pragma once

#include "bench/settings.h"
#include "screens/frame/screen.h"

namespace strandbench {

class Keeper;
class Player;

enum class SetUpGroup { Bench, People, SoundAndGlass, Record, Assumptions, Sheets, Instruments };

/// What of the product sheets is asked for.
struct ProductWish {
    enum class What { Page, New, FromFile } what = What::Page;
    QString id; ///< of the sheet whose page it is
};

/// What of the set-up is shown.
struct SetUpPlace {
    SetUpGroup group = SetUpGroup::Bench;
    int page = 0;
    QString detail =
        {}; ///< the assumption that is changed, by its code; of the people: newName; of the instruments: one of
            ///< instrument_details. Empty: the page itself
};

/// The detail of the people that asks for a new name.
inline const QString newName = QStringLiteral("new");

class SetUpScreen : public Screen {
    Q_OBJECT
public:
    SetUpScreen(const Surroundings& around, const QString& name, const SetUpPlace& place, QWidget* parent);

Q_SIGNALS:
    void settingsChanged(const strandbench::Settings& settings);
    void assumptionsChanged(const strandbench::Assumptions& assumptions);
    void placeWanted(const strandbench::SetUpPlace& place);
    void calibrateWanted();
    void productWanted(const strandbench::ProductWish& wish);
    void pinWanted();  ///< to set or change the supervisor's
    void beadWanted(); ///< to calibrate what the hardener's tube lays

protected:
    /// The frame with the way on to the next group, and what the page stands in. With more than one page, the arrows
    /// stand beside it, or below it on an upright glass; the place's page is brought within them.
    QWidget* buildPage(const QString& context, const QString& sentence, int pages = 1);
    [[nodiscard]] int page() const { return m_place.page; }
    /// A choice; a tap on one that is not chosen asks for the settings that it stands for.
    TapButton* choice(const QString& name, const QString& title, bool chosen, const Settings& wanted);
    /// Back leads to a page of the set-up instead of home.
    void backTo(const SetUpPlace& place);
    /// A key that is as large as set-up asks for.
    TapButton* key(const QString& name, TapButton::Kind kind, const QString& title, const QString& second = {});

private:
    TapButton* arrow(const QString& name, const QString& title, int pages, int step);

    SetUpPlace m_place;
};

/// Language, units, colours, hand, motion, foot switch.
class SetUpBenchScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpBenchScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override; ///< who goes on by Tab means no foot switch

private:
    struct Row {
        QString caption;
        std::vector<TapButton*> keys;
    };
    [[nodiscard]] Row languages();
    [[nodiscard]] Row units();
    [[nodiscard]] Row colours();
    [[nodiscard]] Row hands();
    [[nodiscard]] Row motion();
    [[nodiscard]] Row footSwitch();
    void addRow(QBoxLayout* column, const std::vector<Row>& rows);
    void listen(bool listening);

    TapButton* m_oneKey = nullptr;
    bool m_listening = false;
};

/// Makes the screen of a place. player: null where nothing can sound; keeper: null where the log is only looked at.
[[nodiscard]] SetUpScreen* makeSetUpScreen(const Surroundings& around, const SetUpPlace& place, Player* player,
                                           const Keeper* keeper, QWidget* parent);

/// The card's outline at the size that the glass is believed to have, with keys to make it wider or narrower
/// until a card of ISO/IEC 7810 ID-1 (85.60 x 53.98 mm) held on the glass covers it.
class CalibrateScreen final : public Screen {
    Q_OBJECT
public:
    CalibrateScreen(const Surroundings& around, QWidget* parent = nullptr);
    [[nodiscard]] double pixelsPerMillimetre() const { return m_ppmm; }

Q_SIGNALS:
    void calibrated(double pixelsPerMillimetre);

private:
    void change(double pixels);
    TapButton* key(const QString& name, const QString& title, double pixels);

    double m_ppmm;
    QWidget* m_outline = nullptr;
};

} // namespace strandbench
