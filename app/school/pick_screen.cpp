// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/pick_screen.h"

#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

PickScreen::PickScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent), m_spec(std::move(spec))
{
    buildFrame(m_spec.context, m_spec.sentence);
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { m_spec.done(m_picked); });
    showPage(0);
    if (m_spec.side)
        content()->addWidget(makeSideKey(theme(), *m_spec.side, this));
}

void PickScreen::showPage(std::size_t first)
{
    delete m_page;
    m_keys.clear();
    m_page = new QWidget(this);
    content()->insertWidget(0, m_page, 1);
    auto* grid = new QGridLayout(m_page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const std::size_t all = m_spec.items.size();
    const std::size_t room = all > perPage ? perPage - 1 : perPage;
    const std::size_t last = std::min(all, first + room);
    for (std::size_t i = first; i < last; ++i)
        addKey(m_spec.items[i], static_cast<int>(i - first), *grid);
    if (all > perPage) {
        auto* more = new TapButton(theme(), u"more"_s, TapButton::Kind::Quiet, m_page);
        more->setTitle(tr("More"));
        more->setSecondLine(tr("%1 of %2").arg(first / room + 1).arg((all + room - 1) / room));
        connect(more, &TapButton::clicked, this, [this, next = last < all ? last : 0] {
            QMetaObject::invokeMethod(
                this, [this, next] { showPage(next); }, Qt::QueuedConnection); // the tap's own key goes
        });
        grid->addWidget(more, static_cast<int>(perPage - 1) / columns(), static_cast<int>(perPage - 1) % columns());
    }
    for (int row = 0; row < static_cast<int>(perPage) / columns(); ++row)
        grid->setRowStretch(row, 1);
    for (int column = 0; column < columns(); ++column)
        grid->setColumnStretch(column, 1);
    showPicked();
}

void PickScreen::addKey(const Item& item, int place, QGridLayout& grid)
{
    auto* key = new TapButton(theme(), u"pick_"_s + item.code, TapButton::Kind::Choice, m_page);
    key->setCheckable(true);
    key->setTitle(item.title);
    connect(key, &TapButton::clicked, this, [this, code = item.code] { pick(code); });
    grid.addWidget(key, place / columns(), place % columns());
    m_keys.emplace_back(item.code, key);
}

void PickScreen::pick(const QString& code)
{
    const auto before = std::ranges::find(m_picked, code);
    if (before == m_picked.end())
        m_picked.push_back(code);
    else
        m_picked.erase(before);
    showPicked();
}

void PickScreen::showPicked()
{
    for (const auto& [code, key] : m_keys) {
        const auto at = std::ranges::find(m_picked, code);
        key->setChecked(at != m_picked.end());
        if (m_spec.inOrder)
            key->setSecondLine(at == m_picked.end() ? QString() : tr("number %1").arg(at - m_picked.begin() + 1));
    }
    const bool open = m_spec.mayBeNone || !m_picked.empty();
    answers()->setWayOn(open ? m_spec.wayOn : QString());
}

} // namespace strandbench
