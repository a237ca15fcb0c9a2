// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/replan_screen.h"

#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "words/plan_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString stepNames(const std::vector<QString>& codes)
{
    QStringList names;
    for (const QString& each : codes)
        names << words::stepName(each);
    names.removeDuplicates();
    return names.isEmpty() ? ReplanScreen::tr("none") : Words::title(names.join(u", "_s));
}

} // namespace

ReplanScreen::ReplanScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, const Ways& ways,
                           QWidget* parent)
    : Screen(around, u"screen_replan"_s, parent)
{
    buildFrame(contextOf(repair, words()), tr("An answer changed: this is the plan now"));
    const PlanDifference difference = planDifference(*repair.plan, plan, planProgressOf(repair));
    buildFigures(difference);
    buildSide(difference, ways);
    answers()->setWayOn(tr("Right: go on with it"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, repair, plan] {
        Q_EMIT acts({PlanAccepted{repair.assessment, plan}});
    });
}

void ReplanScreen::buildFigures(const PlanDifference& difference)
{
    auto* box = card(u"change_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1), px(3), px(1));
    for (const PlanChange& each : difference.figures) {
        const QString was = each.before ? words::planFigure(*each.before, words()) : tr("none");
        const QString is = each.now ? words::planFigure(*each.now, words()) : tr("none");
        lines->addRow({label(u"change_%1_caption"_s.arg(each.code), TextRole::Small, words::planChangeName(each.code),
                             Role::MutedInk),
                       //: what it was, and what it is now
                       label(u"change_"_s + each.code, TextRole::Title, tr("%1 → %2").arg(was, is), Role::Ink, true)},
                      nullptr, 0, px(1));
    }
    if (difference.figures.empty())
        lines->addRow({label(u"change_none"_s, TextRole::Title, tr("No figure changes."), Role::Ink, true)}, nullptr, 0,
                      px(1));
    content()->addWidget(box, 3);
}

QWidget* ReplanScreen::buildSteps(const PlanDifference& difference)
{
    auto* box = card(u"steps_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1), px(3), px(1));
    const auto row = [&](const QString& name, const QString& caption, const QString& text) {
        lines->addRow({label(name + u"_caption"_s, TextRole::Small, caption, Role::MutedInk),
                       label(name, TextRole::Body, text, Role::Ink, true)},
                      nullptr, 0, px(1));
    };
    row(u"steps_opened"_s, tr("Preparing to do, or to do again"), stepNames(difference.opened));
    if (!difference.dropped.empty())
        row(u"steps_dropped"_s, tr("No longer to do"), stepNames(difference.dropped));
    if (difference.kept > 0)
        row(u"batches_kept"_s, tr("Stays as it is laid"), words().batches(difference.kept));
    return box;
}

void ReplanScreen::buildSide(const PlanDifference& difference, const Ways& ways)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    column->addWidget(buildSteps(difference), 1);
    auto* keys = new QHBoxLayout;
    keys->setSpacing(px(sizes::gap));
    const auto key = [&](const QString& name, const QString& title, const std::function<void()>& tapped) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
        made->setTitle(title);
        made->setLeastSize(30, 20);
        connect(made, &TapButton::clicked, this, tapped);
        keys->addWidget(made, 1);
    };
    key(u"why"_s, tr("Why this plan"), ways.why);
    key(u"answers"_s, tr("What was answered"), ways.answers);
    column->addLayout(keys);
    content()->addLayout(column, 2);
}

} // namespace strandbench
