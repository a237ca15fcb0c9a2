// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/curve_screen.h"

#include "cure/solve.h"
#include "screens/job/cure_chart.h"
#include "screens/job/mix_screen.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Mean conversion at a moment, on the straight line between the curve's points.
Fraction meanAt(const CureResult& result, Duration at)
{
    const auto next =
        std::find_if(result.curve.begin(), result.curve.end(), [&](const CurvePoint& point) { return point.at >= at; });
    if (next == result.curve.begin())
        return next->mean;
    if (next == result.curve.end())
        return result.curve.back().mean;
    const CurvePoint& before = *std::prev(next);
    const double share = (at - before.at) / (next->at - before.at);
    return Fraction::ofOne(before.mean.value() + share * (next->mean.value() - before.mean.value()));
}

} // namespace

CurveScreen::CurveScreen(const Surroundings& around, const Repair& repair, const BatchRun& run, QWidget* parent)
    : Screen(around, u"screen_curve"_s, parent), m_run(run)
{
    buildFrame(contextOf(repair, words()) + u" · "_s + batchContext(repair, run.batch, words()),
               tr("What goes on inside this layer"));
    if (const CureOutcome outcome = solveCure(*run.cureCase()))
        m_result = *outcome;
    buildChart(repair.plan->peakLimit);
    buildFigures(repair.plan->peakLimit);
    answers()->setBackNote(tr("clock runs on"));
    answers()->setWayOn(tr("Back to the clock"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
    tick();
}

void CurveScreen::buildChart(const std::optional<Temperature>& limit)
{
    auto* box = card(u"curve_card"_s);
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(px(1), px(1), px(1), px(1));
    m_chart =
        new CureChart(theme(), words(),
                      {tr("hottest"), tr("face"), tr("cured"), tr("gel"), tr("sands"), tr("limit"), tr("now")}, box);
    m_chart->setObjectName(u"curve"_s);
    m_chart->setAccessibleName(tr("Temperatures and cure of this layer against time"));
    if (m_result)
        m_chart->setResult(*m_result, limit);
    inside->addWidget(m_chart);
    content()->addWidget(box, 3);
}

void CurveScreen::buildFigures(const std::optional<Temperature>& limit)
{
    auto* box = card(u"curve_figures"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1), px(3), px(1));
    const auto figure = [&](const QString& name, const QString& caption, const QString& value) {
        FitLabel* shown = label(name, TextRole::Title, value, Role::Ink, true);
        lines->addRow({label(name + u"_caption"_s, TextRole::Small, caption, Role::MutedInk), shown}, nullptr, 0,
                      px(0.5));
        return shown;
    };
    const QString dash = u"–"_s;
    const auto mark = [&](const std::optional<Duration>& at) { return at ? words().duration(*at) : dash; };
    figure(u"curve_gel"_s, tr("Gels after"), m_result ? mark(m_result->gel) : dash);
    figure(u"curve_sand"_s, tr("Sands after"), m_result ? mark(m_result->sand) : dash);
    const QString hottest = limit ? tr("Hottest, limit %1").arg(words().temperature(*limit)) : tr("Hottest");
    figure(u"curve_peak"_s, hottest, m_result ? words().temperature(m_result->peak) : dash);
    m_cured = figure(u"curve_cured"_s, tr("Cured by now"), dash);
    content()->addWidget(box, 1);
}

Duration CurveScreen::sinceHardener() const { return elapsed(m_run.hardenerIn, around().bench.clock().now()); }

void CurveScreen::tick()
{
    if (!m_result)
        return;
    const Duration now = sinceHardener();
    m_chart->setNow(now);
    m_cured->setText(words().percent(Fraction::ofHundred(std::round(meanAt(*m_result, now).percent()))));
}

} // namespace strandbench
