// SPDX-License-Identifier: GPL-3.0-or-later
// What the control chart of a lot's gels says.
#include "screens/figures/drift_chart.h"
#include "screens/figures/figure_told.h"
#include "words/figure_words.h"
#include "words/stock_words.h"

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int roughBelow = 20; ///< gels: the usual advice is to trust limits of about that many; our assumption

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(GelTold)
};

QString percentOf(double ratio, const Words& words)
{
    return words.percent(Fraction::ofHundred(std::round(ratio * 100)));
}

/// The newest of what the run rules found, and how many gels are marked.
QString runsTold(const GelDrift& drift)
{
    const auto marked = static_cast<int>(DriftChart::markedOf(drift, DriftChart::Shows::Values).size());
    //: %1 is what is unusual with the newest of them: "gel 31 lies outside the limits"
    return Says::tr("%n gel(s) marked, the newest: %1.", nullptr, marked).arg(runText(drift.runs.back()));
}

/// Where the moving mean is, about the sheet.
QString averageTold(const EwmaChart& ewma)
{
    const std::vector<double>& all = ewma.averages;
    const auto outside = [&ewma](double each) { return !ewma.limits.holds(each); };
    const auto last = std::find_if(all.rbegin(), all.rend(), outside);
    if (last == all.rend())
        return {};
    if (last != all.rbegin())
        //: %1 is the number of a gel
        return Says::tr("The moving mean was outside its limits until gel %1 and has come back.")
            .arg(all.rend() - last - 1);
    const auto since = std::find_if_not(all.rbegin(), all.rend(), outside);
    const auto from = all.rend() - since; // the first of those that are out without a break
    return (all.back() > 1 ? Says::tr("The moving mean is above its limits since gel %1: slower than the sheet.")
                           : Says::tr("The moving mean is below its limits since gel %1: faster than the sheet."))
        .arg(from);
}

QString readingOf(const GelDrift& drift, const Words& words)
{
    const auto gels = static_cast<int>(drift.points.size());
    //: %1: "12 % slower than the sheet"
    QStringList said{
        Says::tr("%n gel(s), on average %1.", nullptr, gels).arg(againstSheet(drift.chart.limits.centre, words))};
    const QString average = averageTold(drift.ewma);
    if (drift.runs.empty() && average.isEmpty())
        said << Says::tr("Nothing says that it drifts.");
    if (!average.isEmpty())
        said << average;
    if (!drift.runs.empty())
        said << runsTold(drift);
    if (gels < roughBelow)
        said << Says::tr("With so few the limits are rough.");
    return said.join(u' ');
}

FigureRow rowOf(const GelDrift& drift, std::size_t at, const QString& job, const Words& words)
{
    const GelPoint& point = drift.points[at];
    FigureRow row;
    row.lead = QStringList{Says::tr("Gel %1").arg(at + 1),
                           stockDay(QDateTime::fromMSecsSinceEpoch(point.utcMs).date(), words), words.jobLabel(job)}
                   .join(u" · "_s);
    QStringList rest{Says::tr("%1 of the sheet’s time").arg(percentOf(point.ratio, words)),
                     Says::tr("moving mean %1").arg(percentOf(drift.ewma.averages[at + 1], words))};
    if (at > 0)
        rest << Says::tr("step %1").arg(percentOf(drift.chart.movingRanges[at - 1], words));
    const auto found = std::ranges::equal_range(drift.runs, at, {}, &RunSignal::at); // they stand by value
    for (const RunSignal& each : found)
        rest << runText(each);
    row.marked = !found.empty();
    row.rest = rest.join(u" · "_s);
    return row;
}

} // namespace

FigureTold tellGels(const FigureFound& found, const Words& words)
{
    if (!found.drift)
        return {Says::tr("A control chart needs two gels of a lot; in these days %n was seen.", nullptr, found.gels),
                {}};
    FigureTold told{readingOf(*found.drift, words), {}};
    for (std::size_t at = found.drift->points.size(); at-- > 0;) {
        const auto job = found.jobs.find(found.drift->points[at].repair);
        told.rows.push_back(rowOf(*found.drift, at, job == found.jobs.end() ? QString() : job->second, words));
    }
    return told;
}

} // namespace strandbench
