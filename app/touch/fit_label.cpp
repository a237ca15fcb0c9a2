// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/fit_label.h"

#include "touch/accessible.h"
#include "touch/fit_text.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {

namespace {

constexpr double endless = 1e6;      // px: a line that never wraps
constexpr double widestHintMm = 120; // of a long text; a layout may give more

int whole(double pixels) { return static_cast<int>(std::ceil(pixels - 0.01)); }

} // namespace

FitLabel::FitLabel(const Theme& theme, const QString& name, TextRole role, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_textRole(role)
{
    installAccessibility();
    setObjectName(name);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    remeasure();
}

void FitLabel::setText(const QString& text)
{
    if (text == m_text)
        return;
    m_text = text;
    setAccessibleName(text);
    remeasure();
    update();
}

void FitLabel::setBold(bool bold)
{
    m_bold = bold;
    remeasure();
    update();
}

void FitLabel::setLines(int atMost)
{
    m_lines = std::max(1, atMost);
    remeasure();
    update();
}

void FitLabel::setLeavesOut(const QString& between)
{
    m_between = between;
    update();
}

// A layout is asked again only when the room wanted changes: a running figure keeps its width.
void FitLabel::remeasure()
{
    const TextSize size = Theme::size(m_textRole);
    const TextItem item{m_text, size, m_bold, m_lines};
    const FittedText single = wrapText(m_theme, item, size.preferredMm, endless);
    const double widest = m_lines == 1 ? endless : m_theme.px(widestHintMm);
    const FittedText wrapped = wrapText(m_theme, item, size.preferredMm, std::min(single.width, widest));
    // At one pixel's width every word has a line: the widest is the longest word.
    const FittedText least = fitText(m_theme, {m_text, {size.leastMm, size.leastMm}, m_bold, m_lines}, {1, endless});
    const QSize hint(whole(wrapped.width), whole(std::max(wrapped.height(), wrapped.lineHeight)));
    const QSize leastHint(whole(least.width), whole(least.lineHeight));
    if (hint == m_hint && leastHint == m_leastHint)
        return;
    m_hint = hint;
    m_leastHint = leastHint;
    updateGeometry();
}

FittedText FitLabel::fitted() const
{
    const auto fit = [this](const QString& text) {
        return fitText(m_theme, text, m_textRole, QSizeF(contentsRect().size()), m_bold, m_lines);
    };
    FittedText shown = fit(m_text);
    if (shown.fits || m_between.isEmpty())
        return shown;
    const QStringList parts = m_text.split(m_between);
    for (qsizetype from = 2; !shown.fits && from < parts.size(); ++from)
        shown = fit((QStringList{parts.first(), u"…"_s} + parts.mid(from)).join(m_between));
    return shown;
}

bool FitLabel::textFits() const { return m_text.isEmpty() || fitted().fits; }

double FitLabel::smallestTextMm() const
{
    return m_text.isEmpty() ? Theme::size(m_textRole).preferredMm : fitted().emMm;
}

std::vector<ShownText> FitLabel::shownTexts() const
{
    if (m_text.isEmpty())
        return {};
    const FittedText text = fitted();
    const QRectF room(contentsRect());
    QRectF where(room.left(), room.top(), text.width, text.height());
    if (m_alignment & Qt::AlignHCenter)
        where.moveLeft(room.center().x() - text.width / 2);
    else if (m_alignment & Qt::AlignRight)
        where.moveRight(room.right());
    if (m_alignment & Qt::AlignVCenter)
        where.moveTop(room.center().y() - text.height() / 2);
    else if (m_alignment & Qt::AlignBottom)
        where.moveBottom(room.bottom());
    return {{m_text, where, text.emMm, text.fits}};
}

QSize FitLabel::sizeHint() const
{
    const QMargins margins = contentsMargins();
    return m_hint + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

QSize FitLabel::minimumSizeHint() const
{
    const QMargins margins = contentsMargins();
    return m_leastHint + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

int FitLabel::heightAt(int width, double shrink) const
{
    const TextSize size = Theme::size(m_textRole);
    const QMargins margins = contentsMargins();
    const double room = width - margins.left() - margins.right();
    const double largest = size.preferredMm + shrink * (size.leastMm - size.preferredMm);
    const FittedText text = fitText(m_theme, {m_text, {largest, size.leastMm}, m_bold, m_lines}, {room, endless});
    return whole(std::max(text.height(), text.lineHeight)) + margins.top() + margins.bottom();
}

void FitLabel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    drawFitted(painter, QRectF(contentsRect()), fitted(), m_alignment, m_theme.color(m_ink));
}

} // namespace strandbench
