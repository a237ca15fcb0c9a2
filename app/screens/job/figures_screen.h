// SPDX-License-Identifier: GPL-3.0-or-later
// Figures on one screen: steppers for a small change, the key pad for the rest. Nothing is filled in before
// it has been measured.
#pragma once

#include "gear/instrument_feed.h"
#include "screens/frame/screen.h"
#include "touch/key_pad.h"
#include "touch/stepper.h"

#include <optional>
#include <set>

class QStackedLayout;

namespace strandbench {

/// One figure to be entered. Values are SI; print and read turn them into the person's units.
struct FigureSpec {
    QString name; ///< stem of the object names, "size_length"
    QString caption;
    QString keyPadSentence;
    double lowest = 0;
    double highest = 0;
    double step = 1;  ///< of the large keys
    double start = 0; ///< what the first tap on a large key gives
    std::function<Printed(double)> print;
    std::function<QString()> unit;
    /// Reads typed text in the person's units; the fault names what is allowed.
    std::function<Checked<double>(const QString&)> read;
    std::optional<double> value;
};

class FiguresScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        QString name;
        QString context;
        QString sentence;
        std::vector<FigureSpec> figures;
        QString wayOn;
        std::vector<CautionText> cautions; ///< of this step, beside the figures
        /// What the figures come to so far; shown beside them. `allowed` false keeps the way on shut.
        struct Verdict {
            QString text;
            bool allowed = true;
        };
        std::function<Verdict(const std::vector<std::optional<double>>&)> verdict;
        /// What the figures lead to, when it takes computing: work for the bench's worker, whose result is shown below
        /// the verdict. Asked for at every step, also while the finger is down; empty work clears it.
        std::function<std::function<Verdict()>(const std::vector<std::optional<double>>&)> outlook;
        std::function<void(const std::vector<double>&)> done;
        /// A key that puts in what an instrument of the bench says, while that is steady and of now.
        struct TakeOver {
            QString name;                   ///< object name
            QString caption;                ///< what it sets: "Air and humidity"
            InstrumentFeed* feed = nullptr; ///< outlives the screen
            /// Figures by their place, and what they are by this reading.
            std::function<std::vector<std::pair<std::size_t, double>>(const LineReading&)> figures;
        };
        std::vector<TakeOver> takeOvers;
        std::function<void()> changeUnits;
        bool ofARepair = true; ///< 'stop, ask' is of a repair: elsewhere there is nothing to stop
    };
    FiguresScreen(const Surroundings& around, Spec spec, QWidget* parent = nullptr);

    [[nodiscard]] QVariantMap draft() const override; ///< figures that are not as they were, and what is being keyed in
    void setDraft(const QVariantMap& draft) override;
    void setWriting(bool writing) override;
    void tick() override { showTakeOvers(); }
    /// Puts in a figure that an instrument gave just before this screen; one that is not allowed stays out.
    void putTaken(std::size_t figure, double value);
    /// True while a figure stands as an instrument gave it.
    [[nodiscard]] bool takenOver(std::size_t figure) const { return m_taken.count(figure) > 0; }

private:
    void buildSteppers(QWidget* page);
    void buildKeyPad(QWidget* page);
    [[nodiscard]] QWidget* takeOverKeys();
    void showTakeOvers();
    void takeOver(const Spec::TakeOver& from);
    /// What the instrument has for the figures, if it is steady and all of it is allowed.
    [[nodiscard]] std::vector<std::pair<std::size_t, double>> offered(const Spec::TakeOver& from) const;
    void step(std::size_t index, int direction);
    void openKeyPad(std::size_t index);
    void takeTyped();
    void showTyped(const QString& text);
    void closeKeyPad();
    void refresh();
    void askOutlook();
    void wayOn();
    void back();
    void shutOrOpen();
    [[nodiscard]] std::vector<std::optional<double>> values() const;

    Spec m_spec;
    std::vector<Stepper*> m_steppers;
    QStackedLayout* m_pages = nullptr;
    KeyPad* m_keys = nullptr;
    FitLabel* m_typed = nullptr;
    FitLabel* m_verdict = nullptr;
    FitLabel* m_outlook = nullptr;
    std::vector<TapButton*> m_takeOverKeys;
    std::set<std::size_t> m_taken; ///< figures that an instrument gave
    std::vector<std::optional<double>> m_atFirst;
    bool m_shut = false;         ///< while an act is written
    bool m_allowed = true;       ///< by the verdict
    bool m_outlookAllows = true; ///< by what the figures lead to
    Worker m_worker;
    std::optional<std::size_t> m_typing;
};

} // namespace strandbench
