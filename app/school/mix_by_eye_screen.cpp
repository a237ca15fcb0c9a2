// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/mix_by_eye_screen.h"

#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double startMm = 40; // across: neither much nor little
constexpr double startBead = 20;
constexpr double leastMm = 1;
constexpr double mostMm = 400;

} // namespace

MixByEyeScreen::MixByEyeScreen(const Surroundings& around, const QString& context, QWidget* parent)
    : Screen(around, u"screen_mix_by_eye"_s, parent), m_puddle(millimetres(startMm)), m_bead(millimetres(startBead))
{
    buildFrame(context, tr("Lay filler and hardener on the board"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Hardener in — start"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { Q_EMIT mixed(m_puddle, m_bead); });
    m_picture = new PuddlePicture(theme(), u"puddle_by_eye"_s, this);
    m_picture->setAccessibleName(tr("Puddle and bead at true size"));
    content()->addWidget(m_picture, 3);
    auto* keys = new QGridLayout;
    keys->setSpacing(px(sizes::gap));
    keys->addWidget(key(u"puddle_less"_s, tr("Puddle smaller"), &m_puddle, -1), 0, 0);
    keys->addWidget(key(u"puddle_more"_s, tr("Puddle larger"), &m_puddle, 1), 0, 1);
    keys->addWidget(key(u"bead_less"_s, tr("Bead shorter"), &m_bead, -0.5), 1, 0);
    keys->addWidget(key(u"bead_more"_s, tr("Bead longer"), &m_bead, 0.5), 1, 1);
    content()->addLayout(keys, 2);
    showMix();
}

TapButton* MixByEyeScreen::key(const QString& name, const QString& title, Length* what, double byMm)
{
    auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
    made->setTitle(title);
    made->setAutoRepeat(true);
    made->setAutoRepeatDelay(500);
    made->setAutoRepeatInterval(60);
    connect(made, &TapButton::clicked, this, [this, what, byMm] {
        *what = std::clamp(Length(*what + millimetres(byMm)), millimetres(leastMm), millimetres(mostMm));
        showMix();
    });
    return made;
}

void MixByEyeScreen::showMix()
{
    Mix mix;
    mix.puddle = m_puddle;
    mix.bead = m_bead;
    PuddleLabels labels;
    labels.trueSize = tr("True size");
    labels.notTrueSize = tr("not true size");
    labels.ruler = words().units();
    m_picture->setMix(mix, labels);
}

} // namespace strandbench
