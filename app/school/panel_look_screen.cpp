// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/panel_look_screen.h"

#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t perPage = 6;

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
    showPage(0);
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

void PanelLookScreen::showPage(std::size_t first)
{
    delete m_page;
    m_page = new QWidget(this);
    content()->addWidget(m_page, around().upright ? 1 : 2);
    auto* grid = new QGridLayout(m_page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const auto& all = Codes<PanelTry>::table;
    const int columns = 3;
    const std::size_t last = std::min(all.size(), first + perPage - 1);
    int place = 0;
    const auto add = [&](TapButton* key) {
        grid->addWidget(key, place / columns, place % columns);
        ++place;
    };
    for (std::size_t i = first; i < last; ++i) {
        auto* key =
            new TapButton(theme(), u"try_"_s + QString::fromLatin1(all[i].second), TapButton::Kind::Choice, m_page);
        key->setCheckable(true);
        key->setTitle(tryName(all[i].first));
        key->setChecked(std::ranges::find(m_tried, all[i].first) != m_tried.end());
        connect(key, &TapButton::clicked, this, [this, key, what = all[i].first] {
            key->setChecked(true); // what was tried stays tried
            tryOne(what);
        });
        add(key);
    }
    auto* more = new TapButton(theme(), u"more_tries"_s, TapButton::Kind::Quiet, m_page);
    more->setTitle(tr("More"));
    const std::size_t pages = (all.size() + perPage - 2) / (perPage - 1);
    more->setSecondLine(tr("%1 of %2").arg(first / (perPage - 1) + 1).arg(pages));
    connect(more, &TapButton::clicked, this, [this, next = last < all.size() ? last : 0] {
        QMetaObject::invokeMethod(
            this, [this, next] { showPage(next); }, Qt::QueuedConnection); // the tap's own key goes
    });
    add(more);
    for (int row = 0; row < static_cast<int>(perPage) / columns; ++row)
        grid->setRowStretch(row, 1);
    for (int column = 0; column < columns; ++column)
        grid->setColumnStretch(column, 1);
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
