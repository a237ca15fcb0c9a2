// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/run_bench.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "shell/bench_window.h"
#include "shell/language.h"
#include "shell/trouble_window.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QScreen>
#include <QStandardPaths>
#include <QStyleFactory>

#include <algorithm>
#include <cstdio>
#include <iostream>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

struct Arguments {
    QString log;
    QSize glass; ///< empty: the full screen
};

/// The arguments, or the exit status to leave with.
tl::expected<Arguments, int> readArguments(const QStringList& given)
{
    QCommandLineParser parser;
    parser.addOption({u"log"_s, {}, u"file"_s});
    parser.addOption({u"glass"_s, {}, u"WxH"_s});
    parser.addHelpOption();
    parser.addVersionOption();
    if (!parser.parse(given)) {
        std::cerr << parser.errorText().toStdString() << '\n';
        return tl::unexpected(2);
    }
    Arguments arguments;
    arguments.log = parser.value(u"log"_s);
    if (parser.isSet(u"glass"_s)) {
        static const QRegularExpression form(u"^(\\d{3,5})x(\\d{3,5})$"_s);
        const auto match = form.match(parser.value(u"glass"_s));
        if (!match.hasMatch()) {
            std::cerr << "--glass: " << parser.value(u"glass"_s).toStdString()
                      << ": allowed is WIDTHxHEIGHT, like 1280x800\n";
            return tl::unexpected(2);
        }
        arguments.glass = {match.captured(1).toInt(), match.captured(2).toInt()};
    }
    if (!parser.positionalArguments().isEmpty()) {
        std::cerr << "unknown argument: " << parser.positionalArguments().first().toStdString() << '\n';
        return tl::unexpected(2);
    }
    return arguments;
}

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
        window.showFullScreen();
        return;
    }
    window.setFixedSize(glass);
    window.show();
}

} // namespace

int runBench(int argc, char** argv)
{
    QCoreApplication::setApplicationName(u"strandbench"_s);
    QCoreApplication::setApplicationVersion(QStringLiteral(STRANDBENCH_VERSION));
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    QApplication application(argc, argv);
    const auto arguments = readArguments(QCoreApplication::arguments());
    if (!arguments)
        return arguments.error();

    const QString path = arguments->log.isEmpty() ? defaultLog() : arguments->log;
    const SettingsFile settingsFile(QFileInfo(path).absoluteDir().filePath(u"bench.ini"_s));
    const SettingsFile::Loaded loaded = settingsFile.load();
    for (const QString& odd : loaded.odd)
        std::cerr << "bench.ini: not allowed and left out: " << odd.toStdString() << '\n';
    Language language;
    language.speak(loaded.settings.language);

    const double ppmm = pixelsPerMillimetreOf(application.primaryScreen());
    const SystemClock clock;
    const SheetTimes times;
    Recorder recorder(path);
    auto opened = recorder.open();
    Bench bench({recorder, clock, {builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, times}});
    std::optional<LogFailure> failure;
    if (!opened)
        failure = opened.error();
    else if (const auto fault = bench.load(*opened))
        failure = LogFailure{LogTrouble::Damaged, fault->field + u": "_s + fault->value};
    if (failure) {
        TroubleWindow trouble(*failure, path, loaded.settings, ppmm);
        show(trouble, arguments->glass);
        return application.exec();
    }
    BenchWindow window(
        {bench, settingsFile, loaded.settings, ppmm, [&language](const QString& wanted) { language.speak(wanted); }});
    show(window, arguments->glass);
    return application.exec();
}

} // namespace strandbench
