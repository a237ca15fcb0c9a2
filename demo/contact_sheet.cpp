// SPDX-License-Identifier: GPL-3.0-or-later
#include "contact_sheet.h"

#include <QPainter>

#include <algorithm>

namespace strandbench {
namespace {

constexpr int acrossPx = 320; ///< a reduced screen: its sentence can still be read
constexpr int gapPx = 10;
constexpr int nameRowPx = 20;
constexpr int headingRowPx = 40;
constexpr std::size_t most = 14; ///< screens side by side

int rowsOf(std::size_t screens) { return static_cast<int>((screens + most - 1) / most); }

void write(QPainter& painter, const QRect& place, int pixels, const QString& text)
{
    QFont font = painter.font();
    font.setPixelSize(pixels);
    painter.setFont(font);
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, text);
}

} // namespace

void ContactSheet::begin(const QString& heading) { m_rows.push_back({heading, {}}); }

void ContactSheet::add(const QString& name, const QImage& screen)
{
    if (m_rows.empty())
        begin({});
    m_rows.back().screens.push_back({name, screen.scaledToWidth(acrossPx, Qt::SmoothTransformation)});
}

bool ContactSheet::write(const QString& file, const QString& title) const
{
    int high = 0;
    std::size_t widest = 0;
    for (const Row& row : m_rows) {
        widest = std::max(widest, row.screens.size());
        for (const Screen& each : row.screens)
            high = std::max(high, each.reduced.height());
    }
    if (widest == 0)
        return false;
    const int cell = high + nameRowPx + gapPx;
    int height = headingRowPx + gapPx;
    for (const Row& row : m_rows)
        height += headingRowPx + rowsOf(row.screens.size()) * cell;
    const int width = gapPx + static_cast<int>(std::min(widest, most)) * (acrossPx + gapPx);
    QImage page(width, height, QImage::Format_RGB32);
    page.fill(Qt::white);
    QPainter painter(&page);
    strandbench::write(painter, {gapPx, 0, width, headingRowPx}, 26, title);
    int top = headingRowPx;
    for (const Row& row : m_rows) {
        strandbench::write(painter, {gapPx, top, width, headingRowPx}, 22, row.heading);
        top += headingRowPx;
        for (std::size_t i = 0; i < row.screens.size(); ++i) {
            const QPoint at(gapPx + static_cast<int>(i % most) * (acrossPx + gapPx),
                            top + static_cast<int>(i / most) * cell);
            painter.drawImage(at, row.screens[i].reduced);
            strandbench::write(painter, {at.x(), at.y() + high, acrossPx, nameRowPx}, 14, row.screens[i].name);
        }
        top += rowsOf(row.screens.size()) * cell;
    }
    painter.end();
    return page.save(file);
}

} // namespace strandbench
