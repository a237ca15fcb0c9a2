// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/fit_column.h"

#include <QWidget>

#include <algorithm>

namespace strandbench {

namespace {

constexpr int shrinkSteps = 16;

bool shown(const FitLabel* text) { return !text->isHidden() && !text->text().isEmpty(); }

} // namespace

FitColumn::~FitColumn() = default;

void FitColumn::addRow(const std::vector<FitLabel*>& texts, QWidget* sign, int signGap, int rowGap)
{
    const auto add = [this](QWidget* widget) {
        addChildWidget(widget);
        addItem(new QWidgetItem(widget));
    };
    if (sign)
        add(sign);
    for (FitLabel* each : texts)
        add(each);
    m_rows.push_back({texts, sign, signGap, m_rows.empty() ? 0 : rowGap});
    invalidate();
}

void FitColumn::addItem(QLayoutItem* item) { m_items.emplace_back(item); }

QLayoutItem* FitColumn::itemAt(int index) const
{
    return index < 0 || index >= count() ? nullptr : m_items[static_cast<std::size_t>(index)].get();
}

QLayoutItem* FitColumn::takeAt(int index)
{
    if (index < 0 || index >= count())
        return nullptr;
    QLayoutItem* taken = m_items[static_cast<std::size_t>(index)].release();
    m_items.erase(m_items.begin() + index);
    for (Row& row : m_rows) {
        std::erase(row.texts, taken->widget());
        if (row.sign == taken->widget())
            row.sign = nullptr;
    }
    return taken;
}

bool FitColumn::Row::shown() const { return std::any_of(texts.begin(), texts.end(), strandbench::shown); }

int FitColumn::Row::inset() const { return sign ? sign->minimumSize().width() + signGap : 0; }

int FitColumn::Row::textHeight(int width, double shrink) const
{
    int height = 0;
    for (const FitLabel* each : texts)
        height += strandbench::shown(each) ? each->heightAt(width - inset(), shrink) : 0;
    return height;
}

int FitColumn::Row::height(int width, double shrink) const
{
    return std::max(textHeight(width, shrink), sign ? sign->minimumSize().height() : 0);
}

void FitColumn::Row::place(const QRect& where, double shrink) const
{
    if (sign) {
        const QSize size = sign->minimumSize();
        sign->setGeometry({{where.left(), where.top() + (where.height() - size.height()) / 2}, size});
    }
    int y = where.top() + (where.height() - textHeight(where.width(), shrink)) / 2;
    for (FitLabel* each : texts) {
        const int width = where.width() - inset();
        const int height = strandbench::shown(each) ? each->heightAt(width, shrink) : 0;
        each->setGeometry(where.left() + inset(), y, width, height);
        y += height;
    }
}

int FitColumn::heightAt(int width, double shrink) const
{
    int height = 0;
    for (const Row& row : m_rows)
        height += row.shown() ? row.rowGap + row.height(width, shrink) : 0;
    return height;
}

QSize FitColumn::sizeHint() const
{
    int width = 0;
    for (const Row& row : m_rows)
        for (const FitLabel* each : row.texts)
            width = std::max(width, row.inset() + each->sizeHint().width());
    const QMargins margins = contentsMargins();
    return QSize(width, heightAt(width, 0)).grownBy(margins);
}

int FitColumn::heightForWidth(int width) const
{
    const QMargins margins = contentsMargins();
    return heightAt(width - margins.left() - margins.right(), 0) + margins.top() + margins.bottom();
}

QSize FitColumn::minimumSize() const
{
    int width = 0;
    int height = 0;
    for (const Row& row : m_rows) {
        for (const FitLabel* each : row.texts) {
            width = std::max(width, row.inset() + each->minimumSizeHint().width());
            height += strandbench::shown(each) ? each->minimumSizeHint().height() : 0;
        }
    }
    return QSize(width, height).grownBy(contentsMargins());
}

void FitColumn::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    const QRect room = rect.marginsRemoved(contentsMargins());
    int step = 0;
    while (step < shrinkSteps && heightAt(room.width(), static_cast<double>(step) / shrinkSteps) > room.height())
        ++step;
    const double shrink = static_cast<double>(step) / shrinkSteps;
    int y = room.top() + std::max(0, room.height() - heightAt(room.width(), shrink)) / 2;
    for (const Row& row : m_rows) {
        if (!row.shown())
            continue;
        y += row.rowGap;
        const int height = row.height(room.width(), shrink);
        row.place({room.left(), y, room.width(), height}, shrink);
        y += height;
    }
}

} // namespace strandbench
