// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/run_bench.h"

#include "bench/assumptions_file.h"
#include "camera/camera_feed.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "shell/bench_arguments.h"
#include "shell/bench_window.h"
#include "shell/language.h"
#include "shell/trouble_window.h"
#include "sound/alsa_player.h"
#include "sound/bell.h"
#include "words/assumption_words.h"

#include <QApplication>
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

/// Opens the log to write it; where another copy of the program has the bench, asks whether to look only. Empty: the
/// person has closed the program.
std::optional<Logged<BenchBook>> openLog(Recorder& recorder, const Clock& clock, const Settings& settings, double ppmm,
                                         const QSize& glass)
{
    const QString from = lotsFromDay(clock.now());
    for (;;) {
        auto opened = recorder.open(from);
        if (opened || opened.error().trouble != LogTrouble::InUse)
            return opened;
        TroubleWindow trouble(opened.error(), recorder.path(), settings, ppmm);
        show(trouble, glass);
        QCoreApplication::exec();
        if (trouble.chosen() == TroubleWindow::Way::Look)
            return recorder.openToLook(from);
        if (trouble.chosen() == TroubleWindow::Way::Close)
            return std::nullopt;
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

} // namespace

int runBench(int argc, char** argv)
{
    QCoreApplication::setApplicationName(u"strandbench"_s);
    QCoreApplication::setApplicationVersion(QStringLiteral(STRANDBENCH_VERSION));
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

    const double ppmm = pixelsPerMillimetreOf(application.primaryScreen());
    const SystemClock clock;
    const CureEngine engine;
    Recorder recorder(path);
    auto asked = openLog(recorder, clock, loaded.settings, ppmm, arguments.glass);
    if (!asked)
        return 0;
    const Logged<BenchBook> opened = *std::move(asked);
    PinDoor door(pinPathOf(path), clock);
    Bench bench({recorder,
                 clock,
                 {builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, engine},
                 Worker::Runs::InThread,
                 &door});
    AssumptionsFile assumptionsFile = AssumptionsFile::besideLog(path);
    const ReadAssumptions assumptions = assumptionsFile.load();
    bench.setAssumptions(assumptions.book);
    std::optional<LogFailure> failure;
    if (!opened)
        failure = opened.error();
    else if (const auto fault = bench.load(*opened))
        failure = LogFailure{LogTrouble::Damaged, fault->field + u": "_s + fault->value};
    if (failure) {
        TroubleWindow trouble(*failure, path, loaded.settings, ppmm);
        show(trouble, arguments.glass);
        return application.exec();
    }
    AlsaPlayer player;
    Bell bell(&player);
    CameraFeed cameras;
    BenchWindow window({bench, settingsFile, loaded.settings, ppmm,
                        [&language](const QString& wanted) { language.speak(wanted); },
                        [&](const AssumptionBook& book) { return !recorder.looksOnly() && assumptionsFile.save(book); },
                        &player, &cameras, &bell});
    show(window, arguments.glass);
    tellFaults(assumptions.faults, *window.screen(), Words(loaded.settings.units, QLocale(loaded.settings.language)));
    return application.exec();
}

} // namespace strandbench
