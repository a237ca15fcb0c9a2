// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/step_screen.h"

#include "pictures/step_picture.h"
#include "screens/sign_widget.h"
#include "theme/sizes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double cautionSignMm = 9;

QWidget* cautionSign(const Theme& theme, QWidget* parent)
{
    auto* sign =
        new SignWidget(theme, Pictogram::Caution, QCoreApplication::translate("StepScreen", "Caution"), parent);
    sign->setFixedSize(theme.px(cautionSignMm), theme.px(cautionSignMm));
    return sign;
}

} // namespace

QWidget* cautionsWidget(const std::vector<CautionText>& cautions, const Theme& theme, QWidget* parent,
                        CautionStyle style)
{
    const bool strip = style == CautionStyle::Strip;
    auto* widget = new QWidget(parent);
    auto* all = new QBoxLayout(strip ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, widget);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(theme.px(strip ? 3 : 1));
    for (std::size_t i = 0; i < cautions.size(); ++i) {
        auto* row = new QHBoxLayout;
        row->setSpacing(theme.px(2));
        row->addWidget(cautionSign(theme, widget), 0, Qt::AlignVCenter);
        auto* words = new QVBoxLayout;
        words->setSpacing(0);
        auto* lead = new FitLabel(theme, u"caution_%1"_s.arg(i), TextRole::Body, widget);
        lead->setBold(true);
        lead->setAlignment(Qt::AlignLeft | (strip ? Qt::AlignVCenter : Qt::AlignBottom));
        lead->setText(cautions[i].lead);
        words->addWidget(lead);
        if (!strip) {
            auto* rest = new FitLabel(theme, u"caution_%1_why"_s.arg(i), TextRole::Small, widget);
            rest->setRole(Role::MutedInk);
            rest->setAlignment(Qt::AlignLeft | Qt::AlignTop);
            rest->setText(cautions[i].rest);
            words->addWidget(rest);
        }
        row->addLayout(words, 1);
        // A longer caution gets more of the strip.
        all->addLayout(row, strip ? 10 + static_cast<int>(cautions[i].lead.size()) : 0);
    }
    return widget;
}

StepScreen::StepScreen(const Surroundings& around, const Repair& repair, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent)
{
    buildFrame(spec.context, spec.text.sentence);
    auto* box = card(u"step_card"_s);
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(px(3), px(2), px(3), px(2));
    auto* picture = new StepPicture(theme(), u"step_picture"_s, box);
    picture->setStep(spec.stepCode, SectionDrawing::of(repair.assessment));
    picture->setAccessibleName(spec.text.sentence);
    inside->addWidget(picture, 1);
    if (!spec.text.detail.isEmpty())
        inside->addWidget(label(u"detail"_s, TextRole::Body, spec.text.detail));
    content()->addWidget(box, 2);

    if (!spec.text.cautions.empty()) {
        auto* side = card(u"caution_card"_s);
        auto* column = new QVBoxLayout(side);
        column->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
        column->addWidget(cautionsWidget(spec.text.cautions, theme(), side), 1);
        content()->addWidget(side, 1);
    }
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
