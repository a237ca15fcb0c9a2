// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/paged_keys.h"

#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

namespace strandbench {

PagedKeys::PagedKeys(const Surroundings& around, const QString& moreName, int columns, QWidget* parent)
    : QWidget(parent), m_theme(around.theme), m_moreName(moreName), m_columns(columns)
{
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
}

void PagedKeys::setKeys(std::vector<Make> keys)
{
    m_keys = std::move(keys);
    showPage(0);
}

TapButton* PagedKeys::makeMore(std::size_t first, std::size_t room, QWidget* parent)
{
    auto* more = new TapButton(m_theme, m_moreName, TapButton::Kind::Quiet, parent);
    more->setTitle(tr("More"));
    more->setSecondLine(tr("%1 of %2").arg(first / room + 1).arg((m_keys.size() + room - 1) / room));
    connect(more, &TapButton::clicked, this, [this, next = first + room < m_keys.size() ? first + room : 0] {
        QMetaObject::invokeMethod(
            this, [this, next] { showPage(next); }, Qt::QueuedConnection); // the tap's own key goes
    });
    return more;
}

void PagedKeys::showPage(std::size_t first)
{
    delete m_page;
    m_page = new QWidget(this);
    layout()->addWidget(m_page);
    auto* grid = new QGridLayout(m_page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(m_theme.px(sizes::gap));
    int place = 0;
    const auto add = [&](TapButton* key) {
        grid->addWidget(key, place / m_columns, place % m_columns);
        ++place;
    };
    const bool paged = m_keys.size() > perPage;
    const std::size_t room = paged ? perPage - 1 : perPage;
    for (std::size_t i = first; i < std::min(m_keys.size(), first + room); ++i)
        add(m_keys[i](m_page));
    if (paged) {
        place = static_cast<int>(perPage) - 1; // always the last place
        add(makeMore(first, room, m_page));
    }
    for (int row = 0; row < static_cast<int>(perPage) / m_columns; ++row)
        grid->setRowStretch(row, 1);
    for (int column = 0; column < m_columns; ++column)
        grid->setColumnStretch(column, 1);
    Q_EMIT pageShown();
}

} // namespace strandbench
