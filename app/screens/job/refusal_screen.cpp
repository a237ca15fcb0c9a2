// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/refusal_screen.h"

#include "screens/frame/sign_widget.h"
#include "theme/sizes.h"
#include "touch/hold_button.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t mostOthers = 2; ///< more refusals than these do not fit, and do not help

} // namespace

std::vector<Stop> refusing(const std::vector<Stop>& stops)
{
    std::vector<Stop> kept;
    for (const Stop& each : stops)
        if (each.reason.code != notAssessedCode)
            kept.push_back(each);
    return kept;
}

RefusalScreen::RefusalScreen(const Surroundings& around, const Repair& repair, const std::vector<Stop>& given,
                             bool overridable, QWidget* parent)
    : Screen(around, u"screen_refusal"_s, parent), m_overridable(overridable && !around.bench.looksOnly())
{
    const std::vector<Stop> refused = refusing(given);
    const std::vector<Stop>& stops = refused.empty() ? given : refused;
    const StopText first = words().stop(stops.front());
    buildFrame(contextOf(repair, words()), first.headline);
    sentence()->setRole(Role::Stop);

    auto* box = card(u"refusal_card"_s);
    box->setEdge(Role::Stop);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(px(3), px(2.5), px(3), px(2.5));
    row->setSpacing(px(4));
    for (const Stop& each : stops)
        m_because.push_back(each.reason.code);
    buildSide(box, row);
    buildWords(row, stops);
    content()->addWidget(box, 1);

    answers()->setWayOn(first.park);
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, to = stops.front().parkTo] {
        Q_EMIT acts({Parked{to, m_because}});
    });
}

void RefusalScreen::buildSide(QWidget* card, QBoxLayout* row)
{
    auto* side = new QVBoxLayout;
    side->addWidget(new SignWidget(theme(), Pictogram::StopHand, tr("Stop"), card), 1);
    auto* again = new HoldButton(theme(), u"assess_again"_s, TapButton::Kind::Plain, card);
    again->setTitle(tr("Assess again"));
    again->setSecondLine(tr("hold 1 s"));
    again->setLeastSize(m_overridable ? 30 : 34, 20);
    connect(again, &HoldButton::held, this, [this] { Q_EMIT acts({AssessAgain{}}); });
    if (!m_overridable) {
        side->addWidget(again);
        row->addLayout(side, 1);
        return;
    }
    // Beside each other: one below the other leaves the sign no room on a low glass.
    auto* keys = new QHBoxLayout;
    keys->setSpacing(px(sizes::gap));
    keys->addWidget(again, 1);
    keys->addWidget(makeOverrideKey(card), 1);
    side->addLayout(keys);
    row->addLayout(side, 2);
}

QWidget* RefusalScreen::makeOverrideKey(QWidget* card)
{
    auto* key = new HoldButton(theme(), u"override_stop"_s, TapButton::Kind::Stop, card);
    key->setTitle(tr("Override"));
    key->setSecondLine(tr("supervisor: hold 1 s"));
    key->setLeastSize(30, 20);
    connect(key, &HoldButton::held, this, [this] { Q_EMIT overrideWanted(m_because); });
    return key;
}

void RefusalScreen::buildWords(QBoxLayout* row, const std::vector<Stop>& stops)
{
    const StopText first = words().stop(stops.front());
    auto* column = new QVBoxLayout;
    column->setSpacing(px(0.5));
    column->addWidget(label(u"stop_wrong"_s, TextRole::Title, first.wrong, Role::Ink, true));
    column->addWidget(label(u"stop_why"_s, TextRole::Body, first.why));
    if (stops.size() > 1) {
        QStringList others;
        for (std::size_t i = 1; i < std::min(stops.size(), mostOthers + 1); ++i)
            others << words().reason(stops[i].reason);
        if (stops.size() > mostOthers + 1)
            others << tr("and %n more", nullptr, static_cast<int>(stops.size() - mostOthers - 1));
        column->addWidget(label(u"stop_others"_s, TextRole::Body, tr("Also: %1").arg(others.join(u' ')), Role::Stop));
    }
    column->addWidget(label(u"stop_instead_caption"_s, TextRole::Small, tr("What to do instead"), Role::MutedInk));
    column->addWidget(label(u"stop_instead"_s, TextRole::Body, first.instead, Role::Ink, true));
    if (!first.insteadDetail.isEmpty())
        column->addWidget(label(u"stop_instead_detail"_s, TextRole::Body, first.insteadDetail));
    const bool nothingToPlan = !m_overridable && stops.front().overridable == Override::Supervisor;
    const QString who = nothingToPlan ? tr("There is nothing to plan here, whoever decides.") : first.overridable;
    column->addWidget(label(u"stop_override"_s, TextRole::Small, who + u" "_s + first.precedence, Role::MutedInk));
    row->addLayout(column, 3);
}

} // namespace strandbench
