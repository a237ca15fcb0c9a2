// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/picture_text.h"

#include <QFontMetricsF>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double step = 0.1; // mm; finer than a reader sees

double channelLuminance(double share)
{
    return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color)
{
    return 0.2126 * channelLuminance(color.redF()) + 0.7152 * channelLuminance(color.greenF()) +
           0.0722 * channelLuminance(color.blueF());
}

} // namespace

double contrastRatio(const QColor& one, const QColor& other)
{
    const double a = luminance(one) + 0.05;
    const double b = luminance(other) + 0.05;
    return a > b ? a / b : b / a;
}

QColor inkUpon(const Theme& theme, const QColor& ground)
{
    // A light and a dark ink whatever the theme: fillers keep their colours at night.
    const QColor ink = theme.color(Role::Ink);
    const QColor card = theme.color(Role::Card);
    return contrastRatio(ink, ground) >= contrastRatio(card, ground) ? ink : card;
}

QSizeF lineSize(const Theme& theme, const QString& text, double emMm, bool bold)
{
    const QFontMetricsF metrics(theme.font(emMm, bold));
    return {std::ceil(metrics.horizontalAdvance(text)) + 1, std::ceil(metrics.height())};
}

PictureText fitLine(const Theme& theme, const QString& text, const QRectF& place, TextRole role, bool bold,
                    Qt::Alignment alignment)
{
    PictureText fitted{text, place, theme.font(Theme::size(role).leastMm, bold), alignment, 0, true};
    if (text.isEmpty())
        return fitted;
    const TextSize range = Theme::size(role);
    for (double em = range.preferredMm; em > range.leastMm - step / 2; em -= step) {
        const double drawn = std::max(em, range.leastMm);
        const QSizeF size = lineSize(theme, text, drawn, bold);
        fitted.font = theme.font(drawn, bold);
        fitted.emMm = drawn;
        fitted.fits = size.width() <= place.width() && size.height() <= place.height() + 0.5;
        if (fitted.fits)
            break;
    }
    return fitted;
}

QRectF inkOf(const PictureText& text)
{
    const QFontMetricsF metrics(text.font);
    return metrics.boundingRect(text.place, static_cast<int>(text.alignment) | Qt::TextSingleLine, text.text);
}

QString shortened(const QString& text, PartKept kept, const std::function<bool(const QString&)>& fits)
{
    constexpr qsizetype least = 6;
    QString shown = text;
    for (qsizetype left = text.size() - 1; left >= least && !fits(shown); --left)
        shown = kept == PartKept::End ? u"…"_s + text.right(left) : text.left(left) + u"…"_s;
    return shown;
}

void drawText(QPainter& painter, const PictureText& text, const QColor& ink)
{
    if (text.empty())
        return;
    painter.setFont(text.font);
    painter.setPen(ink);
    painter.drawText(text.place, static_cast<int>(text.alignment) | Qt::TextSingleLine | Qt::TextDontClip, text.text);
}

void TextReport::add(const PictureText& text)
{
    if (text.empty())
        return;
    fits = fits && text.fits;
    smallestMm = smallestMm > 0 ? std::min(smallestMm, text.emMm) : text.emMm;
}

} // namespace strandbench
