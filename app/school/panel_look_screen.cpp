// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/panel_look_screen.h"

#include "school/paged_keys.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

std::optional<PanelSide> sideOf(PanelTry what)
{
    switch (what) {
    case PanelTry::Front:
        return PanelSide::Front;
    case PanelTry::Back:
        return PanelSide::Back;
    case PanelTry::Edge:
        return PanelSide::Edge;
    default:
        return std::nullopt;
    }
}

} // namespace

PanelLookScreen::PanelLookScreen(const Surroundings& around, const PracticePanel& panel, std::vector<PanelTry>& tried,
                                 const QString& wayOn, QWidget* parent)
    : Screen(around, u"screen_panel_look"_s, parent), m_panel(panel), m_tried(tried)
{
    buildFrame(tr("Practice panel"), tr("Look at it, and try what you need"));
    answers()->stop()->hide();
    answers()->setWayOn(wayOn);
    connect(answers(), &AnswerBar::wayOnTapped, this, &PanelLookScreen::wayOnTapped);
    buildLook();
    buildKeys();
    tryOne(m_tried.empty() ? PanelTry::Front : m_tried.back());
}

void PanelLookScreen::buildLook()
{
    Card* box = card(u"look_card"_s);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(px(2), px(2), px(2), px(2));
    m_view = new PanelView(theme(), u"panel_view"_s, box);
    m_finds = label(u"panel_finds"_s, TextRole::Body);
    column->addWidget(m_view, 3);
    column->addWidget(m_finds, 2);
    content()->addWidget(box, 1);
}

void PanelLookScreen::buildKeys()
{
    auto* keys = new PagedKeys(around(), u"more_tries"_s, 3, this);
    content()->addWidget(keys, around().upright ? 1 : 2);
    std::vector<PagedKeys::Make> all;
    for (const auto& entry : Codes<PanelTry>::table)
        all.push_back([this, what = entry.first, name = QString::fromLatin1(entry.second)](QWidget* page) {
            auto* key = new TapButton(theme(), u"try_"_s + name, TapButton::Kind::Choice, page);
            key->setCheckable(true);
            key->setTitle(tryName(what));
            key->setChecked(std::ranges::find(m_tried, what) != m_tried.end());
            connect(key, &TapButton::clicked, this, [this, key, what] {
                key->setChecked(true); // what was tried stays tried
                tryOne(what);
            });
            return key;
        });
    keys->setKeys(std::move(all));
}

void PanelLookScreen::tryOne(PanelTry what)
{
    std::erase(m_tried, what);
    m_tried.push_back(what);
    if (const auto side = sideOf(what))
        m_view->setShown(*side, m_panel.shown);
    const QString finds = tryFinds(what, m_panel, words());
    //: %1 is what was tried, %2 what it finds: "Magnet: no pull."
    m_finds->setText(tr("%1: %2").arg(tryName(what), finds));
    m_view->setAccessibleName(
        m_view->side() == PanelSide::Front
            ? tryFinds(PanelTry::Front, m_panel, words())
            : tryFinds(m_view->side() == PanelSide::Back ? PanelTry::Back : PanelTry::Edge, m_panel, words()));
}

} // namespace strandbench
