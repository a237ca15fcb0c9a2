// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/run_bench.h"

#include "bench/assumptions_file.h"
#include "camera/camera_feed.h"
#include "gear/instruments.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "school/practice_flow.h"
#include "shell/bench_arguments.h"
#include "shell/bench_window.h"
#include "shell/language.h"
#include "shell/trouble_window.h"
#include "sound/alsa_player.h"
#include "sound/bell.h"
#include "words/assumption_words.h"

#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QScreen>
#include <QStandardPaths>
#include <QStyleFactory>

#include <iostream>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString defaultLog()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return folder + u"/bench.sqlite"_s;
}

/// What the screen says of itself, where that is believable: a wrong size from the monitor would make every
/// target wrong. 1280 x 800 on 10.1 in is taken otherwise.
double pixelsPerMillimetreOf(const QScreen* screen)
{
    constexpr double usual = 5.87;
    constexpr double least = 3.0;
    constexpr double most = 12.0;
    const double said = screen ? screen->physicalDotsPerInch() / 25.4 : usual;
    return said >= least && said <= most ? said : usual;
}

void show(QWidget& window, const QSize& glass)
{
    if (glass.isEmpty()) {
        window.setGeometry(window.screen()->geometry()); // a bench without a window manager has nobody else to ask
        window.showFullScreen();
        return;
    }
    window.setFixedSize(glass);
    window.show();
}

/// Says on the glass and to the log of the start which assumptions were not taken: the default stands for them.
void tellFaults(const Faults& faults, Screen& screen, const Words& words)
{
    if (faults.empty())
        return;
    const AssumptionWords say(words);
    for (const Fault& each : faults)
        std::cerr << "assumptions.json: " << say.fault(each).toStdString() << '\n';
    screen.showTrouble(say.fault(faults.front()),
                       QCoreApplication::translate("Assumptions",
                                                   "%n assumption(s) not taken from the file: the default "
                                                   "stands.",
                                                   nullptr, static_cast<int>(faults.size())));
}

/// What a run of the bench is made of; passed from one to the next.
struct Start {
    const BenchArguments& arguments;
    const SettingsFile& settingsFile;
    Settings settings;
    Language& language;
    double ppmm;
    QString path;
    std::deque<EventDraft> waiting = {}; ///< acts that the log did not take before
};

/// How a run ends.
struct End {
    int status = 0;
    bool again = false;
};

TroubleWindow::Way askWhatToDo(const LogFailure& failure, const Start& start)
{
    TroubleWindow trouble(failure, start.path, start.settings, start.ppmm);
    show(trouble, start.arguments.glass);
    QCoreApplication::exec();
    return trouble.chosen();
}

/// A copy as it is stays beside a log that is brought up to this program's version.
Logged<void> keepOlder(const QString& path, int version)
{
    const QString stamp = QDateTime::currentDateTimeUtc().toString(u"yyyyMMdd-HHmmss"_s);
    return backupLog(path, u"%1.version-%2-%3.sqlite"_s.arg(path, QString::number(version), stamp))
        .map([](const VerifyReport&) {});
}

/// OlderVersion of a log that is to be brought up first; a log that is not there, or not readable, is none.
std::optional<LogFailure> olderVersion(const QString& path)
{
    const auto version = logVersion(path);
    if (!version || *version == 0 || *version >= programLogVersion())
        return std::nullopt;
    return LogFailure{LogTrouble::OlderVersion, QString::number(*version)};
}

/// Opens the log to write it; where that cannot be, asks what to do. Empty: the person has closed the program, or
/// (again is set) put a backup in its place.
std::optional<BenchBook> openLog(Recorder& recorder, const Clock& clock, Start& start, bool& again)
{
    const QString from = lotsFromDay(clock.now());
    std::optional<LogFailure> trouble = olderVersion(start.path);
    for (;;) {
        if (!trouble) {
            auto opened = recorder.open(from);
            if (opened)
                return *std::move(opened);
            trouble = opened.error();
        }
        const LogFailure failure = *std::exchange(trouble, std::nullopt);
        switch (askWhatToDo(failure, start)) {
        case TroubleWindow::Way::Close:
            return std::nullopt;
        case TroubleWindow::Way::Again:
            trouble = olderVersion(start.path);
            break;
        case TroubleWindow::Way::Look: {
            auto looking = recorder.openToLook(from, failure.trouble);
            if (looking)
                return *std::move(looking);
            trouble = looking.error();
            break;
        }
        case TroubleWindow::Way::BringUp:
            if (const auto kept = keepOlder(start.path, failure.detail.toInt()); !kept)
                trouble = kept.error();
            break;
        case TroubleWindow::Way::Restore:
            again = true;
            return std::nullopt;
        }
    }
}

/// Tells the faults of the command line; the exit status to leave with.
int refuse(const std::vector<Fault>& faults)
{
    const Words words(UnitSystem::Metric, QLocale::c());
    for (const Fault& each : faults)
        std::cerr << words.fault(each, FieldNames::AsInput).toStdString() << '\n';
    return 2;
}

constexpr int beginAgain = 1000; ///< what an event loop ends with when the bench is to begin anew

/// One run of the bench on the log as it lies there. restoring: only to put a backup in its place.
End runOnce(Start& start, bool restoring, bool& restoreNext)
{
    const SystemClock clock;
    const CureEngine engine;
    Recorder recorder(start.path);
    std::unique_ptr<WriterLock> lock; // the recorder takes its own when it opens the log
    std::optional<BenchBook> book = BenchBook{};
    if (restoring) {
        auto held = WriterLock::take(start.path);
        if (!held) {
            askWhatToDo(inUseBy(held.error()), start);
            return {0, true};
        }
        lock = *std::move(held);
    } else {
        book = openLog(recorder, clock, start, restoreNext);
    }
    if (!book)
        return {0, restoreNext};
    PinDoor door(pinPathOf(start.path), clock);
    Bench bench({recorder,
                 clock,
                 {builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, engine},
                 Worker::Runs::InThread,
                 &door});
    AssumptionsFile assumptionsFile = AssumptionsFile::besideLog(start.path);
    const ReadAssumptions assumptions = assumptionsFile.load();
    bench.setAssumptions(assumptions.book);
    if (const auto fault = bench.load(*book)) {
        recorder.closeForWriting({LogTrouble::Damaged, fault->field + u": "_s + fault->value});
        const auto way = askWhatToDo({LogTrouble::Damaged, fault->field + u": "_s + fault->value}, start);
        restoreNext = way == TroubleWindow::Way::Restore;
        return {0, restoreNext};
    }
    const std::size_t lost = restoring ? 0 : bench.goOnWith(std::exchange(start.waiting, {}));
    AlsaPlayer player;
    Bell bell(&player);
    CameraFeed cameras;
    Instruments instruments(clock);
    Keeper keeper(start.path, clock, Worker::Runs::InThread);
    PracticeFlow practice(bench, PracticeFile::besideLog(start.path));
    BenchWindow window({bench, start.settingsFile, start.settings, start.ppmm,
                        [&start](const QString& wanted) { start.language.speak(wanted); },
                        [&](const AssumptionBook& kept) { return !recorder.looksOnly() && assumptionsFile.save(kept); },
                        &player, &cameras, &instruments, &bell, recorder.looksOnly() ? nullptr : &keeper,
                        [] { QCoreApplication::exit(beginAgain); }, restoring, restoring ? nullptr : &practice});
    show(window, start.arguments.glass);
    tellFaults(assumptions.faults, *window.screen(), Words(start.settings.units, QLocale(start.settings.language)));
    if (lost > 0)
        window.screen()->showTrouble(
            QCoreApplication::translate("Keeping", "%n act(s) do not follow on the restored log.", nullptr, int(lost)),
            QCoreApplication::translate("Keeping", "Note them in the repair by hand."));
    const int status = QCoreApplication::exec();
    start.settings = window.settings();
    if (!restoring)
        start.waiting = bench.waiting();
    return {status == beginAgain ? 0 : status, status == beginAgain};
}

} // namespace

int runBench(int argc, char** argv)
{
    QCoreApplication::setApplicationName(u"strandbench"_s);
    QCoreApplication::setApplicationVersion(QStringLiteral(STRANDBENCH_VERSION));
    QGuiApplication::setDesktopFileName(u"org.strandbench.Strandbench"_s); // a Wayland session finds the icon by it
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    QApplication application(argc, argv);
    const BenchArguments arguments = readBenchArguments(QCoreApplication::arguments());
    const QString path = arguments.log.isEmpty() ? defaultLog() : arguments.log;
    const SettingsFile settingsFile(QFileInfo(path).absoluteDir().filePath(u"bench.ini"_s));
    const SettingsFile::Loaded loaded = settingsFile.load();
    Language language;
    language.speak(loaded.settings.language);
    for (const QString& odd : loaded.odd)
        std::cerr
            << QCoreApplication::translate("Settings", "bench.ini: not allowed and left out: %1").arg(odd).toStdString()
            << '\n';
    if (!arguments.faults.empty())
        return refuse(arguments.faults);
    Start start{arguments, settingsFile, loaded.settings, language, pixelsPerMillimetreOf(application.primaryScreen()),
                path};
    bool restoring = false;
    for (;;) {
        bool restoreNext = false;
        const End end = runOnce(start, restoring, restoreNext);
        if (!end.again)
            return end.status;
        restoring = restoreNext;
    }
}

} // namespace strandbench
