// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the demo bench: the county bus depot in the middle of a morning. The working day before is finished and handed
// over; today one panel is parked and three are in progress. All of it is tapped through the real window, each act at
// the time that it takes.
#include "walk/every_job.h"
#include "walk/paced_walk.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDateTime>
#include <QFileInfo>
#include <QStyleFactory>
#include <QTemporaryDir>

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

const DemoJob& walkNamed(const QString& name)
{
    const auto& all = everyWalk();
    return std::find_if(all.begin(), all.end(), [&](const WalkedJob& each) { return each.name == name; })->job;
}

DemoJob by(const QString& person, DemoJob job)
{
    job.person = person;
    return job;
}

/// Half past six on the working day before.
Instant dayBefore(const Instant& now)
{
    const qint64 local = now.utcMs + qint64(now.utcOffsetSeconds) * 1000;
    QDate day = QDateTime::fromMSecsSinceEpoch(local, Qt::UTC).date().addDays(-1);
    while (day.dayOfWeek() > Qt::Friday)
        day = day.addDays(-1);
    const qint64 begin =
        QDateTime(day, QTime(6, 30), Qt::UTC).toMSecsSinceEpoch() - qint64(now.utcOffsetSeconds) * 1000;
    return before(now, seconds(double(now.utcMs - begin) / 1000.0));
}

std::vector<Shift> dayOf(const Instant& from)
{
    const auto done = [](const QString& person, const QString& name) {
        return Stretch{by(person, walkNamed(name)), Station::Done};
    };
    return {
        {{done(u"Ada"_s, u"dent_steel"_s), done(u"Ada"_s, u"hole_smc_with_dam"_s), done(u"Ada"_s, u"bond_seam_smc"_s)},
         from},
        {{done(u"Ravi"_s, u"weld_seam_steel"_s), done(u"Ravi"_s, u"crack_frp"_s), done(u"Ravi"_s, u"dent_aluminium"_s)},
         from}};
}

/// Ada has a panel drying and one under the spreader, Ravi waits for his; a spot-welded seam is parked.
std::vector<Shift> morningOf(const Instant& ada, const Instant& ravi)
{
    constexpr int drying = 6; // the step of preparing where the bumper is left
    return {{{{by(u"Ada"_s, wheelArch()), Station::Parked},
              {by(u"Ada"_s, walkNamed(u"hole_frp_one_face"_s)), Station::Prepare, drying},
              {by(u"Ada"_s, skirtPanel()), Station::Spread}},
             ada},
            {{{by(u"Ravi"_s, roofCap()), Station::Wait}}, ravi}};
}

/// Opens the log and works; when each shift ended, or nothing, and then it has said why.
std::optional<std::vector<Instant>> work(const QString& log, const Instant& open, const std::vector<Shift>& shifts)
{
    ScriptedBench bench({log, open, demoSettings(), {1280, 800}, 5.87, {}});
    if (bench.trouble()) {
        std::cerr << log.toStdString() << ": " << bench.trouble()->detail.toStdString() << '\n';
        return std::nullopt;
    }
    PacedBench paced(bench);
    const auto ends = paced.work(shifts);
    if (!ends)
        std::cerr << paced.why().toStdString() << '\n';
    return ends;
}

/// A morning takes as long as it takes: it is worked once for its length, and then so that it ends now.
std::optional<std::vector<Shift>> morningEnding(const Instant& now)
{
    const QTemporaryDir scratch;
    const Instant from = before(now, minutes(300));
    const auto ends = work(scratch.filePath(u"bench.sqlite"_s), from, morningOf(from, from));
    if (!ends)
        return std::nullopt;
    // The roof cap's edges were clear two minutes ago, so that both clocks run.
    const Duration ada = elapsed(from, ends->at(0));
    const Duration ravi = elapsed(from, ends->at(1));
    return morningOf(before(now, ada + seconds(30)), before(now, ravi + minutes(2)));
}

bool writeBench(const QString& log)
{
    const Instant now = SystemClock().now();
    const Instant yesterday = dayBefore(now);
    if (!work(log, yesterday, dayOf(yesterday)))
        return false;
    const auto morning = morningEnding(now);
    if (!morning)
        return false;
    const Instant& first = std::min(morning->at(0).from, morning->at(1).from,
                                    [](const Instant& a, const Instant& b) { return a.utcMs < b.utcMs; });
    return work(log, first, *morning).has_value();
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    const QApplication application(argc, argv);
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addPositionalArgument(u"log"_s, u"A file that is not there yet."_s);
    parser.process(application);
    const QStringList given = parser.positionalArguments();
    if (given.size() != 1 || QFileInfo::exists(given[0])) {
        std::cerr << "Usage: strandbench_demo_bench LOG, a file that is not there yet\n";
        return 2;
    }
    return writeBench(given[0]) ? 0 : 1;
}
