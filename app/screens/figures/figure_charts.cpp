// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figure_charts.h"

#include "pictures/axis_step.h"
#include "words/figure_words.h"
#include "words/stock_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int ticks = 4;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(FigureChart)
};

/// Masses in the unit that suits the largest of them.
class MassScale {
public:
    MassScale(Mass most, const Words& words) : m_words(words), m_us(words.units() == UnitSystem::UsCustomary)
    {
        m_large = m_us ? inPounds(most) >= 1 : inGrams(most) >= 1000;
    }
    [[nodiscard]] double of(Mass mass) const
    {
        if (m_us)
            return m_large ? inPounds(mass) : inOunces(mass);
        return m_large ? inGrams(mass) / 1000 : inGrams(mass);
    }
    [[nodiscard]] QString tick(double at) const
    {
        const bool whole = std::abs(at - std::round(at)) < 1e-6;
        const QString unit = m_us ? (m_large ? u"lb"_s : u"oz"_s) : (m_large ? u"kg"_s : u"g"_s);
        return m_words.number(at, whole ? 0 : 1) + QChar(QChar::Nbsp) + unit;
    }

private:
    Words m_words;
    bool m_us;
    bool m_large;
};

QString percentTick(double percent, const Words& words) { return words.percent(Fraction::ofHundred(percent)); }

QString whole(Fraction share, const Words& words)
{
    return words.percent(Fraction::ofHundred(std::round(share.percent())));
}

BarFigure materialFigure(const FigureFound& found, const Words& words, const Catalogue& catalogue)
{
    Mass most = grams(1);
    for (const MaterialUsed& each : found.material)
        most = std::max({most, each.planned, each.mixed});
    const MassScale scale(most, words);
    BarFigure figure;
    figure.sets = {Says::tr("planned"), Says::tr("mixed")};
    figure.axis = FigureAxis::upTo(scale.of(most), [scale](double at) { return scale.tick(at); });
    for (const MaterialUsed& each : found.material)
        figure.bars.push_back({stockProductName(each.sheetId, catalogue),
                               {scale.of(each.planned), scale.of(each.mixed)},
                               {},
                               {},
                               //: %1 is a share of what was mixed
                               Says::tr("%1 too much").arg(whole(wasteOf(each), words))});
    return figure;
}

BarFigure rightFigure(const FigureFound& found, const Words& words)
{
    BarFigure figure;
    figure.point = Says::tr("share, and where the true one may lie");
    figure.axis = {0, 100 * FigureAxis::marksRoom, 25, [words](double at) { return percentTick(at, words); }};
    for (const FirstTimeRight& each : found.right)
        figure.bars.push_back(
            {each.substrate ? Words::title(words.substrate(*each.substrate)) : Says::tr("Not identified"),
             {},
             {},
             BarFigure::Whisker{each.interval.low.percent(), 100.0 * each.right / each.judged,
                                each.interval.high.percent()},
             //: "9 of 12"
             Says::tr("%1 of %2").arg(each.right).arg(each.judged)});
    return figure;
}

BarFigure timesFigure(const FigureFound& found, const Words& words)
{
    Duration most = minutes(1);
    for (const PartTimes& each : found.times)
        most = std::max({most, each.planned, each.actual});
    const bool hours = inMinutes(most) > 240;
    const double unit = hours ? 60 : 1;
    BarFigure figure;
    figure.sets = {Says::tr("planned"), Says::tr("took")};
    figure.axis = FigureAxis::upTo(inMinutes(most) / unit, [hours, words](double at) {
        const bool isWhole = std::abs(at - std::round(at)) < 1e-6;
        return words.number(at, isWhole ? 0 : 1) + QChar(QChar::Nbsp) + (hours ? u"h"_s : u"min"_s);
    });
    for (const PartTimes& each : found.times)
        figure.bars.push_back({jobPartName(each.part),
                               {inMinutes(each.planned) / unit, inMinutes(each.actual) / unit},
                               {},
                               {},
                               words.longDuration(each.actual)});
    return figure;
}

BarFigure deviationFigure(const FigureFound& found)
{
    int all = 0;
    for (const DeviationShare& each : found.deviations)
        all += each.count;
    BarFigure figure;
    figure.sets = {Says::tr("how often")};
    figure.line = Says::tr("share up to here");
    // As high as all of them together: the line begins where the first bar ends.
    figure.axis = {0, all * FigureAxis::marksRoom, std::max(1.0, niceStep(all, ticks)),
                   [](double at) { return QString::number(at); }};
    for (const DeviationShare& each : found.deviations)
        figure.bars.push_back({deviationName(each.kind) + u':' + QChar(QChar::Nbsp) + QString::number(each.count),
                               {double(each.count)},
                               each.upTo.percent(),
                               {},
                               {}});
    return figure;
}

QString spokenName(const FigureAsked& asked, DriftChart::Shows shows)
{
    if (asked.kind == FigureKind::Gel && shows == DriftChart::Shows::Ranges)
        return Says::tr("Step from each gel to the next, with its limit");
    if (asked.kind == FigureKind::Gel)
        return Says::tr("Gel times over those of the sheet, one after the other, with mean, limits and moving mean");
    return figureQuestion(asked.kind);
}

} // namespace

BarFigure barFigure(FigureKind kind, const FigureFound& found, const Words& words, const Catalogue& catalogue)
{
    BarFigure figure = kind == FigureKind::Material ? materialFigure(found, words, catalogue)
                       : kind == FigureKind::Right  ? rightFigure(found, words)
                       : kind == FigureKind::Times  ? timesFigure(found, words)
                                                    : deviationFigure(found);
    figure.more = [](int left) { return Says::tr("+%n in the table", nullptr, left); };
    return figure;
}

DriftChart::Names driftNames(const Words& words)
{
    DriftChart::Names names;
    names.mean = Says::tr("mean");
    names.upper = Says::tr("upper limit");
    names.lower = Says::tr("lower limit");
    names.average = Says::tr("moving mean");
    names.averageLimit = Says::tr("its limit");
    names.gel = Says::tr("gel");
    names.marked = Says::tr("not by chance alone");
    names.percent = [words](double ratio) { return percentTick(std::round(ratio * 1000) / 10, words); };
    return names;
}

FigureChart* makeFigureChart(const Theme& theme, const FigureAsked& asked, const FigureFound& found,
                             DriftChart::Shows shows, const Words& words, const Catalogue& catalogue, QWidget* parent)
{
    FigureChart* chart = nullptr;
    if (asked.kind == FigureKind::Gel)
        chart = new DriftChart(theme, u"figure_chart"_s, *found.drift, shows, driftNames(words), parent);
    else
        chart = new BarChart(theme, u"figure_chart"_s, barFigure(asked.kind, found, words, catalogue), parent);
    chart->setAccessibleName(spokenName(asked, shows));
    chart->setAccessibleDescription(tellFigure(asked, found, words, catalogue).reading);
    return chart;
}

} // namespace strandbench
