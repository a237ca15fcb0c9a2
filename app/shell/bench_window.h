// SPDX-License-Identifier: GPL-3.0-or-later
// The whole glass: red bar, ribbon, and one screen below. A tap becomes an event, the event is folded, the
// next screen is shown.
#pragma once

#include "bench/bench.h"
#include "bench/settings.h"
#include "screens/station_screens.h"
#include "shell/any_key.h"
#include "shell/ribbon.h"

#include <QTimer>

#include <memory>

class QVBoxLayout;

namespace strandbench {

class BenchWindow final : public QWidget {
    Q_OBJECT
public:
    struct Parts {
        Bench& bench;
        SettingsFile settingsFile;
        Settings settings;
        double screenPixelsPerMillimetre; ///< what the screen says of itself, for a glass not calibrated yet
        /// Makes the application speak a language; called before the screens are built again.
        std::function<void(const QString& language)> speak;
    };
    explicit BenchWindow(Parts parts);
    ~BenchWindow() override;

    [[nodiscard]] Screen* screen() const { return m_screen; }
    [[nodiscard]] const Theme& theme() const { return *m_theme; }
    [[nodiscard]] const Settings& settings() const { return m_parts.settings; }
    /// True from a tap until its act is on the disk, or was refused.
    [[nodiscard]] bool writing() const { return m_writing; }
    void showHome();
    void showRepair(const QUuid& id);
    /// Brings every clock up to date; also called by the window's own timer on each second.
    void tick();

protected:
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    enum class Place { Home, JobNumber, Panel, Person, SetUp, Calibrate, Repair, Why, HowToTell, Ask, Bead, Curve, Today, Record, Sheet };

    void rebuild();
    void place(Place place);
    [[nodiscard]] Screen* makeScreen();
    [[nodiscard]] Screen* makeHome();
    [[nodiscard]] Screen* makeJobNumber();
    [[nodiscard]] Screen* makeSetUp();
    [[nodiscard]] Screen* makeCalibrate();
    [[nodiscard]] Screen* makeToday();
    [[nodiscard]] Screen* makeRecord();
    void showRecord(const QUuid& repair, Place from);
    [[nodiscard]] Screen* makeRepairScreen(const Repair& repair);
    [[nodiscard]] Ways ways();
    void setScreen(Screen* screen);
    void back();
    void act(std::vector<Payload> payloads);
    void submitNext(std::shared_ptr<std::vector<Payload>> payloads, std::size_t at);
    void takeIn(const QString& panel);
    void choosePerson(const QString& person);
    void apply(const Settings& settings);
    void changeUnits();
    /// Saves and shows them; place next, built anew.
    void changeSettings(const Settings& wanted, Place next);
    void tellUnlessSaved(bool saved);
    void showUnsaved();
    void tellTrouble(const LogFailure& failure);
    void scheduleTick();
    [[nodiscard]] const Repair* current() const;

    Parts m_parts;
    std::unique_ptr<Theme> m_theme;
    std::unique_ptr<Words> m_words;
    std::unique_ptr<Surroundings> m_around;
    QVBoxLayout* m_column = nullptr;
    Ribbon* m_ribbon = nullptr;
    FitLabel* m_unsaved = nullptr;
    Screen* m_screen = nullptr;
    Place m_place = Place::Home;
    Place m_afterPerson = Place::Home;
    QString m_job;
    std::optional<QUuid> m_repair;
    std::optional<Look> m_look;
    BatchRef m_curveOf; ///< the batch whose curve is shown
    QUuid m_recordOf; ///< the repair whose record is shown; it may have been handed over long ago
    Place m_recordFrom = Place::Today;
    Question m_toldQuestion = Question::Substrate;
    bool m_writing = false;
    AnyKey m_anyKey;
    QTimer m_tick;
};

} // namespace strandbench
