// SPDX-License-Identifier: GPL-3.0-or-later
// Walks one whole repair and one refusal off-screen and leaves every screen as a picture in a folder; with --all
// every walk and every refusal, and on request one page of all of them reduced. With --drawings one page of all fixed
// drawings, and no walk.
#include "repair/run_clock.h"
#include "drawing_sheet.h"
#include "every_album.h"
#include "walk/demo_jobs.h"
#include "walk/pictures.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QStyleFactory>
#include <QTemporaryDir>

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

struct Wanted {
    QString folder;
    Settings settings = demoSettings();
    QSize glass{1280, 800};
    double pixelsPerMillimetre = 5.87;
    bool everything = false;
    QString only;
    QString sheet;
    bool drawings = false;
    QString also; ///< a folder with folders of pictures, for the page
};

/// Stops the clock in the middle of each phase of a mix, and keeps what the glass shows.
bool keepPhases(ScriptedBench& bench, Pictures& pictures, const QString& job)
{
    const Repair* repair = bench.repair(job);
    const NextStep next = nextStep(*repair);
    if (next.station != Station::Spread && next.station != Station::Wait)
        return true;
    const BatchRun run = *repair->run(*next.batch);
    for (const PhaseSpan& span : phasesOf(run, bench.bench().assumptionsOf(run))) {
        const bool spreading = span.phase < Phase::HandsOff;
        const Duration middle = span.from + (span.to - span.from) * 0.5;
        const Duration gone = elapsed(run.hardenerIn, bench.clock().now());
        if (spreading != (next.station == Station::Spread) || middle < gone)
            continue;
        bench.clock().advance(middle - gone);
        bench.thumb().settle();
        if (!pictures.keep(bench.window(), u"clock_"_s + codeOf(span.phase)))
            return false;
    }
    return true;
}

/// Looks at what is one hop away from a screen and comes back.
bool keepAside(ScriptedBench& bench, Pictures& pictures, const QString& control)
{
    Thumb thumb = bench.thumb();
    return thumb.tap(control) && pictures.keepScreen(bench.window()) && thumb.tap(u"answer_back"_s);
}

/// The rail while the mix of a job runs, and back to it.
bool keepRail(ScriptedBench& bench, Pictures& pictures, const QString& job)
{
    bench.window().showHome();
    bench.thumb().settle();
    const bool kept = pictures.keep(bench.window(), u"home_running"_s);
    bench.window().showRepair(bench.repair(job)->id);
    bench.thumb().settle();
    return kept;
}

bool walk(ScriptedBench& bench, Pictures& pictures, const DemoJob& job)
{
    Walk walk(bench, job);
    QSet<QString> aside;
    while (true) {
        const QString screen = bench.window().screen()->objectName();
        if (!pictures.keepScreen(bench.window()))
            return false;
        if (!aside.contains(screen)) {
            aside.insert(screen);
            if (screen == u"screen_plan"_s && !keepAside(bench, pictures, u"why"_s))
                return false;
            if (screen == u"screen_mix"_s && !keepAside(bench, pictures, u"answer_stop"_s))
                return false;
            if (screen == u"screen_mix"_s && !keepAside(bench, pictures, u"bead_as_laid"_s))
                return false;
            if (screen == u"screen_spread"_s && !keepRail(bench, pictures, job.job))
                return false;
            if (screen == u"screen_wait"_s && !keepAside(bench, pictures, u"curve_key"_s))
                return false;
            if (screen == u"screen_assess_damage_kind"_s && !keepAside(bench, pictures, u"answer_way_on"_s))
                return false;
        }
        if ((screen == u"screen_spread"_s || screen == u"screen_wait"_s) && !keepPhases(bench, pictures, job.job))
            return false;
        if (!walk.next())
            return true;
        if (!walk.step()) {
            std::cerr << "the walk stops: " << walk.why().toStdString() << '\n';
            return false;
        }
    }
}

bool walkAll(const Wanted& wanted)
{
    const QTemporaryDir bench;
    if (!bench.isValid()) {
        std::cerr << "no folder for the log: " << bench.errorString().toStdString() << '\n';
        return false;
    }
    ScriptedBench scripted({bench.filePath(u"bench.sqlite"_s),
                            workingMorning(),
                            wanted.settings,
                            wanted.glass,
                            wanted.pixelsPerMillimetre,
                            {}});
    if (scripted.trouble()) {
        std::cerr << "the log does not open: " << scripted.trouble()->detail.toStdString() << '\n';
        return false;
    }
    Pictures pictures(wanted.folder);
    if (!walk(scripted, pictures, wheelArch()))
        return false;
    scripted.window().showHome();
    Walk other(scripted, roofCap());
    if (!other.walkTo(Station::Wait)) {
        std::cerr << "the walk stops: " << other.why().toStdString() << '\n';
        return false;
    }
    scripted.window().showHome();
    scripted.thumb().settle();
    if (!walk(scripted, pictures, skirtPanel()))
        return false;
    scripted.window().showHome();
    scripted.thumb().settle();
    return pictures.keep(scripted.window(), u"home_after"_s) && keepAside(scripted, pictures, u"set_up"_s);
}

/// What the page of a run is called: "en, metric, day, 1280 x 800".
QString titleOf(const Wanted& wanted)
{
    return u"%1, %2, %3, %4 x %5"_s.arg(wanted.settings.language,
                                        wanted.settings.units == UnitSystem::Metric ? u"metric"_s : u"US customary"_s,
                                        wanted.settings.dayNight == DayNight::Night ? u"night"_s : u"day"_s,
                                        QString::number(wanted.glass.width()), QString::number(wanted.glass.height()));
}

bool keepDrawings(const Wanted& wanted)
{
    const Theme theme(Metrics(wanted.pixelsPerMillimetre), wanted.settings.dayNight, wanted.settings.hand);
    return writeDrawingSheet(QDir(wanted.folder).filePath(u"drawings.png"_s), theme);
}

bool walkEverything(const Wanted& wanted)
{
    ContactSheet sheet;
    const bool all =
        keepEveryScreen(wanted.folder, {wanted.settings, wanted.glass, wanted.pixelsPerMillimetre, wanted.only}, sheet);
    if (wanted.sheet.isEmpty())
        return all;
    if (!wanted.also.isEmpty())
        addPictures(wanted.also, u"%1x%2"_s.arg(wanted.glass.width()).arg(wanted.glass.height()), sheet);
    if (!sheet.write(wanted.sheet, titleOf(wanted))) {
        std::cerr << "the page cannot be written: " << wanted.sheet.toStdString() << '\n';
        return false;
    }
    return all;
}

Wanted readWanted(const QCoreApplication& application)
{
    QCommandLineParser parser;
    parser.addPositionalArgument(u"folder"_s, u"Where the pictures go."_s);
    parser.addOptions(
        {{u"language"_s, u"en, es, fr or de."_s, u"code"_s, u"en"_s},
         {u"glass"_s, u"Pixels."_s, u"WxH"_s, u"1280x800"_s},
         {u"width-mm"_s, u"Width of the glass."_s, u"mm"_s, u"217"_s},
         {u"night"_s, u"The night colours."_s},
         {u"us"_s, u"US customary units."_s},
         {u"left"_s, u"For the left hand."_s},
         {u"all"_s, u"Every walk and every refusal, a folder each."_s},
         {u"only"_s, u"Of all, this walk or this stop alone."_s, u"name"_s},
         {u"sheet"_s, u"With --all: one page of all screens reduced."_s, u"file"_s},
         {u"also"_s, u"With --sheet: pictures of this glass from the folders of a folder."_s, u"folder"_s},
         {u"drawings"_s, u"No walk: one page of all drawings, drawings.png."_s}});
    parser.addHelpOption();
    parser.process(application);
    Wanted wanted;
    wanted.folder = parser.positionalArguments().value(0);
    wanted.settings.language = parser.value(u"language"_s);
    wanted.glass = {parser.value(u"glass"_s).section(u'x', 0, 0).toInt(),
                    parser.value(u"glass"_s).section(u'x', 1, 1).toInt()};
    wanted.pixelsPerMillimetre = wanted.glass.width() / parser.value(u"width-mm"_s).toDouble();
    if (parser.isSet(u"night"_s))
        wanted.settings.dayNight = DayNight::Night;
    if (parser.isSet(u"us"_s))
        wanted.settings.units = UnitSystem::UsCustomary;
    if (parser.isSet(u"left"_s))
        wanted.settings.hand = Hand::Left;
    wanted.everything = parser.isSet(u"all"_s);
    wanted.only = parser.value(u"only"_s);
    wanted.sheet = parser.value(u"sheet"_s);
    wanted.drawings = parser.isSet(u"drawings"_s);
    wanted.also = parser.value(u"also"_s);
    return wanted;
}

} // namespace

int main(int argc, char** argv)
{
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    const QApplication application(argc, argv);
    const Wanted wanted = readWanted(application);
    if (wanted.folder.isEmpty() || !QDir(wanted.folder).exists() || wanted.glass.isEmpty()) {
        std::cerr << "Usage: strandbench_demo_walk FOLDER, a folder that is there\n";
        return 2;
    }
    if (wanted.drawings)
        return keepDrawings(wanted) ? 0 : 1;
    return (wanted.everything ? walkEverything(wanted) : walkAll(wanted)) ? 0 : 1;
}
