// SPDX-License-Identifier: GPL-3.0-or-later
// The whole glass: red bar, ribbon, and one screen below. A tap becomes an event, the event is folded, the
// next screen is shown.
#pragma once

#include "bench/bench.h"
#include "bench/settings.h"
#include "screens/job/bead_trial.h"
#include "screens/figures/figure_found.h"
#include "exchange/sheet_draft.h"
#include "screens/set_up/keeping_screens.h"
#include "screens/set_up/set_up_screen.h"
#include "screens/job/station_screens.h"
#include "screens/stock/stock_lot_screen.h"
#include "shell/alarm_bar.h"
#include "shell/any_key.h"
#include "shell/in_review.h"
#include "shell/key_rest.h"
#include "shell/passage.h"
#include "shell/place.h"
#include "shell/ribbon.h"
#include "shell/scan_reader.h"
#include "words/help_words.h"

#include <QElapsedTimer>
#include <QTimer>

#include <memory>

class QVBoxLayout;

namespace strandbench {

class Bell;
class CameraFeed;
class Instruments;
class PinScreen;
class PracticeFlow;
class RepairsScreen;
struct PhotoFile;

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
        /// Keeps changed assumptions; false when the disk refuses.
        std::function<bool(const AssumptionBook& book)> keepAssumptions = {};
        Player* player = nullptr;           ///< of tones; null: nothing sounds
        CameraFeed* cameras = nullptr;      ///< of photos; null: none is looked for
        Instruments* instruments = nullptr; ///< scale and thermo-hygrometer; null: all is keyed in
        Bell* bell = nullptr;               ///< of alarms; null: they are seen alone
        Keeper* keeper = nullptr;           ///< of the log; null where the bench looks only
        /// Begins anew with the log as it lies there; called after a backup took its place, or another was brought in.
        std::function<void()> startAgain = {};
        bool restoring = false;           ///< the log could not be opened: only a backup is to be chosen
        PracticeFlow* practice = nullptr; ///< null: there is nothing to practise on
    };
    explicit BenchWindow(Parts parts);
    ~BenchWindow() override;

    [[nodiscard]] Screen* screen() const { return m_screen; }
    [[nodiscard]] const Theme& theme() const { return *m_theme; }
    [[nodiscard]] const Settings& settings() const { return m_parts.settings; }
    /// The repair whose present step is shown; empty elsewhere, and where an earlier step is only looked at.
    [[nodiscard]] std::optional<QUuid> presentRepair() const
    {
        return m_place == Place::Repair && !m_look ? m_repair : std::nullopt;
    }
    [[nodiscard]] Passage& passage() { return m_passage; }
    /// True from a tap until its act is on the disk, or was refused; also while a key may be the first of a scan.
    [[nodiscard]] bool writing() const { return m_writing || !m_answering.empty() || m_scanGate.holding(); }
    void showHome();
    void showRepair(const QUuid& id);
    /// Brings every clock up to date; also called by the window's own timer on each second.
    void tick();

protected:
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override; ///< on a section: its legend
    void paintEvent(QPaintEvent* event) override;

private:
    void rebuild();
    void place(Place place);
    [[nodiscard]] Screen* makeScreen();
    [[nodiscard]] Screen* makeHome();
    [[nodiscard]] Screen* makeJobNumber();
    [[nodiscard]] Screen* makeSetUp();
    [[nodiscard]] Screen* makeCalibrate();
    [[nodiscard]] Screen* makeToday();
    [[nodiscard]] Screen* makeRecord();
    [[nodiscard]] Screen* makeLotList();
    [[nodiscard]] Screen* makeLotPage();
    [[nodiscard]] Screen* makePat();
    [[nodiscard]] Screen* makeWeigh(const Repair& repair);
    [[nodiscard]] Screen* makeBeadTrial();
    /// Begins the calibration of a lot's bead, or goes on with it; then leads back to a place.
    void beginBead(const QString& hardenerLot, Place after);
    /// Writes an act of the lot whose page is shown; then shows a place.
    void tellOfLot(const Payload& payload, Place after);
    [[nodiscard]] Screen* makeSupervisors();
    [[nodiscard]] Screen* makePin();
    [[nodiscard]] Screen* makeNewPin();
    [[nodiscard]] PinScreen* pinScreen(const QString& name, const QString& sentence, const QString& wayOn,
                                       bool counted);
    void setPin(PinScreen& screen, const QString& again);
    /// Asks for the PIN and writes a supervisor's act; then shows a place.
    /// bytes: that the act names by their SHA-256.
    void askSupervisor(const QUuid& subject, const Payload& payload, Place after,
                       const std::vector<QByteArray>& bytes = {});
    void showProduct(const ProductWish& wish);
    [[nodiscard]] Screen* makeProducts();
    [[nodiscard]] Screen* makeProductPage();
    [[nodiscard]] Screen* makeProductEdit();
    [[nodiscard]] Screen* makeProductFolder();
    void editProduct(const SheetDraft& draft, const QByteArray& file, Place from, bool atTheEnd);
    void readProduct(const QString& path);
    void exportProduct(const QString& folder);
    /// Ids that a new sheet may not have.
    [[nodiscard]] QSet<QString> takenSheetIds() const;
    [[nodiscard]] Screen* makeReview();
    [[nodiscard]] Screen* makeDayReview();
    [[nodiscard]] Screen* makeClosing();
    [[nodiscard]] Screen* makeReturnText();
    void reviewDay(const QString& day);
    /// Where signing off or returning leads: on through the day, where one is looked through.
    [[nodiscard]] Place afterClosing() const;
    [[nodiscard]] Screen* makeFigures();
    void followReading(const RepairsScreen& screen);
    [[nodiscard]] Screen* makeFinding();
    [[nodiscard]] Screen* makeLotTrace();
    void traceLot(const StockLot& lot, Place from);
    void showRecord(const QUuid& repair, Place from);
    void writeRecall(const QString& folder);
    [[nodiscard]] Screen* makeStock();
    [[nodiscard]] Screen* makeStockList();
    [[nodiscard]] Screen* makeStockLot();
    [[nodiscard]] Screen* makeStockMoves();
    void wirePractice();
    void backInPractice();
    void practise(const std::vector<Payload>& payloads);
    [[nodiscard]] Screen* makePractice();
    /// Opens help over what is shown, which stays as it is; straight: no page of help before it.
    void openHelp(Place page, bool straight);
    /// Back to what waits below help; built anew where it changed meanwhile.
    void leaveHelp();
    void forgetWaiting();
    [[nodiscard]] HelpTopic helpTopic() const;
    [[nodiscard]] Screen* makeHelp();
    [[nodiscard]] Screen* makeHelpPage();
    /// The place that is worked at: below help, the one that waits.
    [[nodiscard]] Place workedAt() const { return isHelp(m_place) ? m_help.from : m_place; }
    /// Shows anew what is worked at; where help stands over it, once help is left.
    void showAnew();
    [[nodiscard]] Screen* makeHowToTell(const Repair& repair);
    [[nodiscard]] Screen* makeStockNotes(const Repair& repair);
    /// The screens that ask what came in; null at other places.
    [[nodiscard]] Screen* makeBookIn();
    /// The screens that ask what became of a lot; null at other places.
    [[nodiscard]] Screen* makeStockAct();
    [[nodiscard]] Screen* makeReorder();
    void wishOfStock(StockWish wish);
    void tryLot(); ///< leads to the test pat of the lot that is shown
    /// Writes an act of the lot that is shown, then shows its page.
    void tellOfStock(const Payload& payload);
    void beginKeeping(Keeping what);
    [[nodiscard]] Screen* makeKeeping();
    [[nodiscard]] Screen* makeKeepFolder();
    [[nodiscard]] Screen* makeKept();
    [[nodiscard]] Screen* makeKeepPin();
    /// Finds out what would come of the log that was chosen.
    void weighLog(const QString& path);
    template <class T> void showKept(const Logged<T>& report, std::optional<T>& into);
    void askToKeep();
    void doKeep();
    void planBackups();
    [[nodiscard]] QString folderOfBackups() const; ///< if it is there, else the person's home
    /// Brings what rings up to date; answers one of those that are shown.
    void ring();
    void answerAlarm(std::size_t index);
    /// For half a second, by the glass's own time.
    [[nodiscard]] bool alarmJustAnswered() const;
    [[nodiscard]] AlarmShown shown(const DueAlarm& alarm, std::size_t more) const;
    void tellJump();
    [[nodiscard]] bool save(const Settings& settings) const;
    [[nodiscard]] Screen* makeRepairScreen(const Repair& repair);
    [[nodiscard]] Screen* makeMixes();
    void showAir();
    [[nodiscard]] Screen* makeAir();
    [[nodiscard]] Screen* makeLots(const Repair& repair);
    [[nodiscard]] Ways ways();
    [[nodiscard]] Screen* makeBeside(const Repair& repair);
    [[nodiscard]] Screen* makePhotoPick(const Repair& repair);
    [[nodiscard]] Screen* makePhotoFolder();
    [[nodiscard]] Screen* makeCamera(const Repair& repair);
    void keepPhoto(const PhotoFile& photo);
    void choosePhoto(PhotoMoment moment, Place after);
    /// Writes an act that moves no step, with bytes that it names; then shows a place.
    void keep(const Payload& payload, const std::vector<QByteArray>& bytes, Place after);
    /// Writes one act while the answers wait; then goes on, or tells what kept it from being written.
    void write(const QUuid& repair, const Payload& payload, const std::vector<QByteArray>& bytes,
               const std::function<void()>& written);
    void keepPanel(const QString& panel); ///< among those taken in lately
    void takeScan(const QString& text);
    void tellScan(const QString& text);
    void forgetScan(); ///< once it has been told for long enough
    void setScreen(Screen* screen);
    /// Shows a screen that stands in the column, coming from where the place before leads to it.
    void bringIn(Screen* screen, Heading heading);
    /// What was entered and is not recorded yet is kept by repair and screen, until it is recorded.
    void keepDraft();
    void dropDraft();
    [[nodiscard]] QString draftOwner() const; ///< the repair, or the lot on the shelf, that is worked at
    void back();
    void leadBack(); ///< to the place that 'back' means here
    void act(std::vector<Payload> payloads);
    void submitNext(std::shared_ptr<std::vector<Payload>> payloads, std::size_t at);
    void askJob(); ///< who is at the bench, where nobody is, then the job number
    void takeIn(const QString& panel);
    /// Takes in the returned repair that is shown once more, and closes it with that.
    void beginRework();
    void linkRework(const QUuid& returned, const QUuid& rework);
    void choosePerson(const QString& person);
    void apply(const Settings& settings);
    void changeUnits();
    /// Saves settings that change no language, unit or colour; then shows a place, or stays when none is told.
    void remember(const Settings& wanted, std::optional<Place> next = std::nullopt);
    void changeAssumptions(const Assumptions& wanted);
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
    AlarmBar* m_alarmBar = nullptr;
    FitLabel* m_unsaved = nullptr;
    Screen* m_screen = nullptr;
    Place m_place = Place::Home;
    Passage m_passage;
    Place m_cameFrom = Place::Home; ///< the place of the screen before
    bool m_goesBack = false;        ///< while 'back' is followed
    Place m_afterPerson = Place::Home;
    QString m_job;
    std::optional<QUuid> m_repair;
    std::optional<Look> m_look;
    BatchRef m_curveOf;                ///< the batch whose curve is shown, or whose air is read
    LotOfProduct m_lot;                ///< whose page is shown
    Place m_afterLot = Place::LotList; ///< where its page was come to from
    std::optional<Mass> m_weighed;     ///< the filler, taken over on the mix screen
    BeadTrial m_trial;
    bool m_layBead = false; ///< the next bead is asked for, not what they come to
    Place m_afterBead = Place::SetUp;
    QString m_askedLot; ///< scanned, and not told yet what it is of
    QMap<QString, QVariantMap> m_drafts;
    QString m_draftKey; ///< of the present screen; empty: nothing of it is kept
    QUuid m_recordOf;   ///< the repair whose record is shown; it may have been handed over long ago
    Question m_toldQuestion = Question::Substrate;
    std::pair<std::optional<QUuid>, std::vector<FoundBy>>
        m_foundBy; ///< what told the substrate of which repair, so far
    struct Asked {
        QUuid subject;
        Payload payload;
        Place after;
        Place from;
        std::vector<QByteArray> bytes = {};
    };
    std::optional<Asked> m_asked; ///< of the supervisor
    struct InProducts {
        QString id; ///< of the sheet whose page is shown
        SheetDraft draft;
        QByteArray file;       ///< that the draft was read from, while nothing of it was changed
        bool isNew = true;     ///< its id follows from its name
        bool atTheEnd = false; ///< of the editor: what the engine makes of it
        Place from = Place::SetUp;
        bool exporting = false;
        QString path; ///< of the file that was read
        Faults faults;
        QString told; ///< on the page: what was done last
    };
    InProducts m_products;
    struct InStock {
        StockLot lot; ///< that is shown, or booked in
        QString typed;
        bool more = false;  ///< of a lot that is known already
        StockReceived came; ///< as told so far
        StockChange change = StockChange::Spilled;
        bool less = false;
        StockEnd end = StockEnd::UsedUp;
        Place from = Place::Home;
    };
    InStock m_stock;
    struct InFinding {
        QString text;
        StockLot lot; ///< that is traced
        Place lotFrom = Place::Found;
        std::vector<LotUse> uses; ///< of it, as read
    };
    InFinding m_finding;
    struct InHelp {
        Screen* waiting = nullptr; ///< what help was opened over, hidden
        QString waitingDraft;      ///< its key
        Place from = Place::Home;
        HelpTopic topic = HelpTopic::Home;
        bool straight = false; ///< back leads out of help at once
        bool changed = false;  ///< what waits is to be built anew
    };
    InHelp m_help;
    InReview m_review;
    FigureAsked m_figures;              ///< the figure that is shown, its lot, and the period
    Place m_afterRecord = Place::Today; ///< where the record was come to from
    struct InKeeping {
        Keeping what = Keeping::Merge;
        QString path;       ///< of the log or backup that was chosen
        bool doing = false; ///< it is being done, not only weighed
        bool done = false;
        std::optional<MergeReport> merge;
        std::optional<RestoreReport> restore;
        std::optional<LogFailure> failure;
    };
    InKeeping m_keeping;
    std::vector<QString> m_overriding;       ///< codes of the stops
    std::pair<qint64, QString> m_correcting; ///< the event that is put right, as it is told
    QString m_oldPin;
    QString m_newPin;
    std::vector<DueAlarm> m_ringing;
    QElapsedTimer m_answeredAt;
    std::vector<DueAlarm> m_answering; ///< answered, and not written yet
    bool m_writing = false;
    PhotoMoment m_photoMoment = PhotoMoment::AsFound;
    Place m_afterPhoto = Place::Photos;
    QString m_folderLookedAt;
    QString m_parkReason;
    std::optional<std::pair<QString, Instant>> m_scanTold; ///< what was told of a scan, and when
    ScanGate m_scanGate;
    AnyKey m_anyKey;
    KeyRest m_enter;      ///< Enter on the control in focus
    KeyRest m_footSwitch; ///< after it was set up: its bounces are no taps
    SetUpPlace m_setUp;
    QTimer m_tick;
};

} // namespace strandbench
