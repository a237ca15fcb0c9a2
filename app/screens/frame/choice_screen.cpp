// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/choice_screen.h"

#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr TextSize tileTitle{6.0, 3.4}; // mm: a sign beside a long word
constexpr TextSize halfTitle{5.0, 3.4}; // mm: two keys share the place of one

} // namespace

ChoiceScreen::ChoiceScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent), m_spec(std::move(spec))
{
    buildFrame(m_spec.context, m_spec.sentence);
    if (!m_spec.ofARepair)
        answers()->stop()->hide();
    answers()->setWayOn(m_spec.wayOn);
    connect(answers(), &AnswerBar::wayOnTapped, this, &ChoiceScreen::wayOnTapped);
    showPage(0);
}

void ChoiceScreen::addBeside(QWidget* beside, int share) { content()->addWidget(beside, share); }

void ChoiceScreen::setSideKey(const SideKey& key)
{
    m_side = key;
    showPage(0);
}

QWidget* ChoiceScreen::withSideKey(TapButton* more)
{
    if (!m_side)
        return more;
    auto* place = new QWidget(m_page);
    auto* row = new QHBoxLayout(place);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    for (TapButton* each : {more, makeSideKey(theme(), *m_side, place)}) {
        each->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        each->setMinimumWidth(px(sizes::target));
        each->setTitleSize(halfTitle);
        row->addWidget(each, 1);
    }
    return place;
}

std::size_t ChoiceScreen::perPage() const { return 6; }

void ChoiceScreen::showPage(std::size_t first)
{
    delete m_page;
    m_page = new QWidget(this);
    content()->insertWidget(0, m_page, 2);
    const std::size_t all = m_spec.tiles.size();
    const bool paged = all > perPage();
    const std::size_t room = paged ? perPage() - 1 : perPage();
    const std::size_t last = std::min(all, first + room);
    std::vector<QWidget*> tiles;
    for (std::size_t i = first; i < last; ++i)
        tiles.push_back(makeTile(m_spec.tiles[i]));
    if (paged)
        tiles.push_back(withSideKey(makeMoreTile(last < all ? last : 0)));
    else if (m_side)
        tiles.push_back(makeSideKey(theme(), *m_side, m_page));
    lay(tiles);
}

void ChoiceScreen::lay(const std::vector<QWidget*>& tiles)
{
    auto* grid = new QGridLayout(m_page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const int count = static_cast<int>(tiles.size());
    const int columns = around().upright ? (count > 4 ? 2 : 1) : (count == 4 || count <= 2 ? 2 : 3);
    for (int i = 0; i < count; ++i) {
        grid->addWidget(tiles[static_cast<std::size_t>(i)], i / columns, i % columns);
        grid->setRowStretch(i / columns, 1);
        grid->setColumnStretch(i % columns, 1);
    }
}

TapButton* ChoiceScreen::makeTile(const Tile& tile)
{
    auto* button =
        new TapButton(theme(), tile.name, tile.refuses ? TapButton::Kind::Stop : TapButton::Kind::Choice, m_page);
    button->setTitle(tile.title);
    button->setTitleSize(tileTitle);
    button->setSecondLine(tile.second);
    if (tile.picture)
        button->setPicture(tile.picture);
    if (!tile.refuses) {
        button->setCheckable(true);
        button->setChecked(tile.chosen);
    }
    connect(button, &TapButton::clicked, this, [button, tapped = tile.tapped, chosen = tile.chosen] {
        button->setChecked(chosen); // what is chosen is what the log says, not what was tapped last
        tapped();
    });
    return button;
}

TapButton* ChoiceScreen::makeMoreTile(std::size_t next)
{
    auto* more = new TapButton(theme(), u"more_answers"_s, TapButton::Kind::Quiet, m_page);
    more->setTitle(m_spec.moreTitle);
    more->setSign(Pictogram::Question);
    connect(more, &TapButton::clicked, this, [this, next] {
        // The page goes once this tap has been handled.
        QMetaObject::invokeMethod(
            this, [this, next] { showPage(next); }, Qt::QueuedConnection);
    });
    return more;
}

void ChoiceScreen::setWriting(bool writing)
{
    Screen::setWriting(writing);
    m_page->setEnabled(!writing);
}

} // namespace strandbench
