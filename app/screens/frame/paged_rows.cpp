// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/paged_rows.h"

#include "theme/sizes.h"

#include <QPainterPath>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keyWidth = 26; // mm, beside the rows
constexpr double numberHeight = 7;

void drawArrow(QPainter& painter, const QRectF& room, bool up, const QColor& ink)
{
    const double size = std::min(room.width(), room.height()) * 0.7;
    QRectF box(0, 0, size, size * 0.7);
    box.moveCenter(room.center());
    QPainterPath path;
    path.moveTo(box.center().x(), up ? box.top() : box.bottom());
    path.lineTo(up ? box.bottomRight() : box.topRight());
    path.lineTo(up ? box.bottomLeft() : box.topLeft());
    path.closeSubpath();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillPath(path, ink);
}

} // namespace

PagedRows::PagedRows(const Surroundings& around, double rowHeightMm, QWidget* parent)
    : QWidget(parent), m_around(around), m_rowHeight(rowHeightMm), m_box(new QWidget(this)), m_keys(new QWidget(this))
{
    setObjectName(u"paged_rows"_s);
    const Theme& theme = m_around.theme;
    auto* whole = new QBoxLayout(m_around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(theme.px(sizes::gap));
    whole->addWidget(m_box, 1);
    whole->addWidget(m_keys);
    auto* inside = new QVBoxLayout(m_box);
    inside->setContentsMargins(0, 0, 0, 0);
    m_earlier = arrow(u"rows_before"_s, tr("Before"), true);
    m_later = arrow(u"rows_more"_s, tr("More"), false);
    m_number = new FitLabel(theme, u"rows_page"_s, TextRole::Small, m_keys);
    m_number->setAlignment(Qt::AlignCenter);
    auto* keys = new QBoxLayout(m_around.upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, m_keys);
    keys->setContentsMargins(0, 0, 0, 0);
    keys->setSpacing(theme.px(sizes::gap / 2));
    keys->addWidget(m_earlier, 1);
    keys->addWidget(m_number, m_around.upright ? 1 : 0);
    keys->addWidget(m_later, 1);
    if (m_around.upright)
        m_keys->setFixedHeight(theme.px(sizes::target));
    else {
        m_keys->setFixedWidth(theme.px(keyWidth));
        m_number->setFixedHeight(theme.px(numberHeight));
    }
    connect(m_earlier, &TapButton::clicked, this, [this] { turn(-1); });
    connect(m_later, &TapButton::clicked, this, [this] { turn(1); });
}

TapButton* PagedRows::arrow(const QString& name, const QString& title, bool up)
{
    auto* key = new TapButton(m_around.theme, name, TapButton::Kind::Plain, m_keys);
    key->setTitle(title);
    const Theme& theme = m_around.theme;
    key->setPicture([up, key, &theme](QPainter& painter, const QRectF& room) {
        drawArrow(painter, room, up, theme.color(key->isEnabled() ? Role::Ink : Role::SoftEdge));
    });
    return key;
}

void PagedRows::setRows(std::vector<MakeRow> rows)
{
    m_rows = std::move(rows);
    m_page = 0;
    showPage();
}

int PagedRows::perPage() const
{
    if (m_rowHeight == wholePages)
        return 1;
    const int gap = m_around.theme.px(sizes::gap);
    return std::max(1, (m_box->height() + gap) / (m_around.theme.px(m_rowHeight) + gap));
}

int PagedRows::pages() const { return std::max(1, (int(m_rows.size()) + perPage() - 1) / perPage()); }

void PagedRows::turn(int pages)
{
    m_page = std::clamp(m_page + pages, 0, this->pages() - 1);
    showPage();
}

/// To show the rows may lay out what stands around them anew, and with that give them another height: seen to
/// afterwards, since the rows must not go while they are being shown.
void PagedRows::showPage()
{
    m_showing = true;
    buildPage();
    if (!m_rows.empty() && perPage() != m_shownPerPage)
        buildPage();
    m_showing = false;
}

void PagedRows::buildPage()
{
    delete m_column;
    m_column = new QWidget(m_box);
    m_box->layout()->addWidget(m_column);
    auto* column = new QVBoxLayout(m_column);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(m_around.theme.px(sizes::gap));
    m_shownPerPage = perPage();
    m_page = std::min(m_page, pages() - 1);
    const std::size_t from = std::size_t(m_page) * std::size_t(m_shownPerPage);
    for (std::size_t i = from; i < std::min(m_rows.size(), from + std::size_t(m_shownPerPage)); ++i) {
        QWidget* row = m_rows[i](m_column);
        if (m_rowHeight != wholePages)
            row->setFixedHeight(m_around.theme.px(m_rowHeight));
        column->addWidget(row, m_rowHeight == wholePages ? 1 : 0);
    }
    if (m_rowHeight != wholePages)
        column->addStretch(1);
    m_column->show();
    m_keys->setVisible(pages() > 1);
    m_earlier->setEnabled(m_page > 0);
    m_later->setEnabled(m_page + 1 < pages());
    //: a page of a list: "1 of 3"
    m_number->setText(tr("%1 of %2").arg(m_page + 1).arg(pages()));
}

void PagedRows::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    layout()->activate();
    if (!m_showing && !m_rows.empty() && perPage() != m_shownPerPage)
        showPage();
}

} // namespace strandbench
