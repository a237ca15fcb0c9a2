// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/plan_screen.h"

#include "pictures/section_picture.h"
#include "screens/job/picture_labels.h"
#include "screens/stock/stock_told.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"

#include <QCoreApplication>
#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString sentenceOf(const Repair& repair, const RepairPlan& plan, const Words& words)
{
    const Damage& damage = *repair.assessment.damage;
    const QString name = Words::title(words.damage(damage.kind));
    const QString size =
        damage.width.value() > 0 ? words.lengthPair(damage.length, damage.width) : words.length(damage.length);
    const bool both = !plan.lifts.empty() && plan.lifts.back().face == Face::Back;
    return both ? PlanScreen::tr("%1, %2: fill both faces").arg(name, size)
                : PlanScreen::tr("%1, %2: fill it").arg(name, size);
}

std::optional<Temperature> hottestOf(const RepairPlan& plan)
{
    std::optional<Temperature> hottest;
    for (const Lift& each : plan.lifts)
        if (each.peak)
            hottest = std::max(hottest.value_or(*each.peak), *each.peak);
    return hottest;
}

/// Why there are several lifts, when it is for the heat; else how hot it becomes. Empty in plans without heat.
QString heatOf(const RepairPlan& plan, const Words& words)
{
    for (const Reason& each : plan.reasons)
        if (each.code == u"one_go_too_hot"_s)
            return words.reason(each);
    const std::optional<Temperature> hottest = hottestOf(plan);
    if (!hottest || !plan.peakLimit)
        return {};
    return PlanScreen::tr("Hottest as it cures %1, limit %2")
        .arg(words.temperature(*hottest), words.temperature(*plan.peakLimit));
}

} // namespace

PlanScreen::PlanScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, bool accepted,
                       QWidget* parent)
    : Screen(around, u"screen_plan"_s, parent)
{
    buildFrame(contextOf(repair, words()), sentenceOf(repair, plan, words()));
    buildSection(repair, plan);
    buildFigures(repair, plan, repair.planAcceptedAt.value_or(around.bench.clock().now()));
    answers()->setWayOn(accepted ? tr("To the present step") : tr("Right: prepare it"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, accepted, repair, plan] {
        if (accepted)
            Q_EMIT presentWanted();
        else
            Q_EMIT acts({PlanAccepted{repair.assessment, plan}});
    });
}

bool PlanScreen::keepsStock() const { return !around().bench.stock().ledger().all().empty(); }

void PlanScreen::buildSection(const Repair& repair, const RepairPlan& plan)
{
    auto* box = card(u"section_card"_s);
    auto* inside = new QVBoxLayout(box);
    const int margin = px(2);
    inside->setContentsMargins(margin, margin, margin, margin);
    auto* picture = new SectionPicture(theme(), u"section"_s, box);
    SectionDrawing drawing = SectionDrawing::of(repair.assessment, plan, around().bench.assumptions());
    drawing.progress = {true, static_cast<int>(plan.lifts.size()), false, true}; // as it will be, not as found
    picture->setDrawing(drawing, sectionLabels(repair.assessment, plan, words()));
    picture->setAccessibleName(tr("Section of this repair, to scale"));
    inside->addWidget(picture);
    content()->addWidget(box, keepsStock() && !around().upright ? 1 : 2);
}

void PlanScreen::buildFigures(const Repair& repair, const RepairPlan& plan, const Instant& from)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    auto* box = card(u"figures_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1), px(3), px(1));
    const auto figure = [&](const QString& name, const QString& caption, const QString& value) {
        lines->addRow({label(name + u"_caption"_s, TextRole::Small, caption, Role::MutedInk),
                       label(name, TextRole::Title, value, Role::Ink, true)},
                      nullptr, 0, px(1));
    };
    Mass finishing = grams(0);
    for (const Batch& each : plan.finish.batches)
        finishing += each.mix.filler;
    const auto batches = static_cast<int>(plan.batches.size() + plan.finish.batches.size());
    figure(u"plan_mix"_s, tr("Mix of fibre and finishing filler"),
           tr("%1 + %2 in %3").arg(words().mass(plan.fillerTotal), words().mass(finishing), words().batches(batches)));
    figure(u"plan_ready"_s, tr("Ready for primer"), tr("about %1").arg(words().clockTime(from, plan.readyForPrimer)));
    if (const QString heat = heatOf(plan, words()); !heat.isEmpty())
        lines->addRow({label(u"plan_heat"_s, TextRole::Small, heat)}, nullptr, 0, px(0.4));
    column->addWidget(box, 1);

    auto* keys = new QHBoxLayout;
    keys->setSpacing(px(sizes::gap));
    const auto key = [&](const QString& name, const QString& title, const QString& second) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
        made->setTitle(title);
        made->setSecondLine(second);
        made->setTitleSize({5, 4});
        keys->addWidget(made, 1);
        return made;
    };
    connect(key(u"why"_s, words().filler(*plan.filler), tr("why this one?")), &TapButton::clicked, this,
            &PlanScreen::whyWanted);
    connect(key(u"answers"_s, tr("Answers"), tr("look, or change one")), &TapButton::clicked, this,
            &PlanScreen::answersWanted);
    if (keepsStock()) {
        const auto told = static_cast<int>(stocktold::ofPlan(repair, plan, around()).size());
        TapButton* stock =
            key(u"plan_stock"_s, tr("Stock"), told > 0 ? tr("! %n to mind", nullptr, told) : tr("enough"));
        stock->setKind(told > 0 ? TapButton::Kind::Stop : TapButton::Kind::Plain);
        connect(stock, &TapButton::clicked, this, &PlanScreen::stockWanted);
    }
    column->addLayout(keys);
    content()->addLayout(column, 1);
}

WhyScreen::WhyScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, QWidget* parent)
    : Screen(around, u"screen_why"_s, parent)
{
    buildFrame(contextOf(repair, words()), tr("Why %1").arg(words().filler(*plan.filler)));
    auto* box = card(u"why_card"_s);
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(px(3), px(2), px(3), px(2));
    QStringList reasons;
    for (const Reason& each : plan.reasons)
        reasons << words().reason(each);
    QStringList others;
    for (const RejectedFiller& each : plan.rejected)
        others << Words::title(words().filler(each.filler)) + u": "_s + words().reason(each.reason);
    lines->addWidget(label(u"why_reasons"_s, TextRole::Body, reasons.join(u'\n')));
    lines->addWidget(label(u"why_not"_s, TextRole::Body, tr("Why none of the others"), Role::Ink, true));
    lines->addWidget(label(u"why_others"_s, TextRole::Body, others.join(u'\n'), Role::MutedInk));
    lines->addStretch(1);
    content()->addWidget(box, 1);
    answers()->setWayOn(tr("Back to the plan"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
}

} // namespace strandbench
