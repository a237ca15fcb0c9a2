// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/step_screen.h"

#include "pictures/step_picture.h"
#include "screens/job/caution_list.h"
#include "theme/sizes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {

StepScreen::StepScreen(const Surroundings& around, const Repair& repair, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent)
{
    buildFrame(spec.context, spec.text.sentence);
    auto* box = card(u"step_card"_s);
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(px(3), px(2), px(3), px(2));
    auto* picture = new StepPicture(theme(), u"step_picture"_s, box);
    picture->setStep(spec.stepCode,
                     repair.plan ? SectionDrawing::of(repair.assessment, *repair.plan, around.bench.assumptions())
                                 : SectionDrawing::of(repair.assessment));
    picture->setAccessibleName(spec.text.sentence);
    inside->addWidget(picture, 1);
    if (!spec.text.detail.isEmpty())
        inside->addWidget(label(u"detail"_s, TextRole::Body, spec.text.detail));
    content()->addWidget(box, 4);

    auto* aside = new QBoxLayout(around.upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    aside->setSpacing(px(sizes::gap));
    if (!spec.text.cautions.empty()) {
        auto* side = card(u"caution_card"_s);
        auto* column = new QVBoxLayout(side);
        column->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
        column->addWidget(cautionList(spec.text.cautions, theme(), side), 1);
        aside->addWidget(side, 2);
    } else if (!spec.side.empty()) {
        aside->addStretch(1);
    }
    if (!spec.side.empty()) {
        auto* keys = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
        keys->setSpacing(px(sizes::gap));
        for (const SideKey& each : spec.side)
            keys->addWidget(makeSideKey(theme(), each, this), 1);
        aside->addLayout(keys, around.upright ? 1 : 0);
    }
    if (aside->isEmpty())
        delete aside;
    else
        content()->addLayout(aside, spec.side.empty() ? 2 : spec.text.cautions.size() > 1 ? 4 : 3);
    answers()->setWayOn(spec.looking ? QCoreApplication::translate("StepScreen", "To the present step")
                                     : spec.text.wayOn);
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, looking = spec.looking, done = spec.done] {
        if (looking)
            Q_EMIT presentWanted();
        else
            done();
    });
}

} // namespace strandbench
