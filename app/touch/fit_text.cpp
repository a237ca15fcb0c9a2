// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/fit_text.h"

#include <QCache>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <optional>

namespace strandbench {

namespace {

constexpr double hairPx = 0.01;       // rounding of advances, far below what an eye sees
constexpr double rounding = 1e-6;     // of products of sizes
constexpr double lineShare = 1.24;    // em: room for accents above capitals and for descenders, no more
constexpr double belowShare = 0.265;  // em: the deepest descender of B612
constexpr double oneLineShrink = 0.5; // of the way to the least size
constexpr int cachedStacks = 1024;

struct StackKey {
    std::vector<TextItem> items;
    QSizeF room;
    double gap;
    double ppmm;
    bool operator==(const StackKey&) const = default;
};

size_t qHash(const StackKey& key, size_t seed)
{
    for (const TextItem& item : key.items)
        seed = qHashMulti(seed, item.text, item.size.preferredMm, item.size.leastMm, item.bold, item.lines);
    return qHashMulti(seed, key.room.width(), key.room.height(), key.gap, key.ppmm);
}

struct PixelRange {
    int preferred;
    int least;
};

// The least size is rounded up, so that a whole pixel size never falls below it.
PixelRange pixelRange(const Theme& theme, TextSize size)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const int least = std::max(1, static_cast<int>(std::ceil(size.leastMm * ppmm - rounding)));
    return {std::max(least, static_cast<int>(std::floor(size.preferredMm * ppmm + rounding))), least};
}

// The font's own line is loose: it is trimmed below the descenders first, then above the accents.
void setLine(FittedText& text, int pixels)
{
    const QFontMetricsF metrics(text.font);
    text.lineHeight = std::min(metrics.height(), lineShare * pixels);
    const double cut = metrics.height() - text.lineHeight;
    const double below = std::max(0.0, metrics.descent() - belowShare * pixels);
    text.baseline = metrics.ascent() - std::max(0.0, cut - below);
}

FittedText wrapAtPixels(const Theme& theme, const TextItem& item, int pixels, double width)
{
    FittedText out;
    out.emMm = theme.metrics().mm(pixels);
    out.font = theme.font(out.emMm, item.bold);
    out.font.setPixelSize(pixels);
    setLine(out, pixels);
    if (item.text.isEmpty()) {
        out.fits = true;
        return out;
    }
    QString text = item.text;
    text.replace(QLatin1Char('\n'), QChar(QChar::LineSeparator));
    QTextOption option;
    option.setWrapMode(item.lines == 1 ? QTextOption::NoWrap : QTextOption::WordWrap);
    QTextLayout layout(text, out.font);
    layout.setTextOption(option);
    layout.setCacheEnabled(true);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(1.0, width));
        out.width = std::max(out.width, line.naturalTextWidth());
        QString words = text.mid(line.textStart(), line.textLength());
        words.remove(QChar(QChar::LineSeparator));
        out.lines << words.trimmed();
    }
    layout.endLayout();
    out.fits = out.width <= width + hairPx && out.lines.size() <= item.lines;
    return out;
}

// A stack that does not fit is not shaped to its end, unless it is the last: each size more that is tried loads a font.
FittedStack stackAt(const Theme& theme, const StackKey& key, int step, int steps)
{
    FittedStack out;
    out.gap = key.gap;
    out.fits = true;
    out.shrink = steps == 0 ? 0 : static_cast<double>(step) / steps;
    int shown = 0;
    for (const TextItem& item : key.items) {
        const PixelRange range = pixelRange(theme, item.size);
        const int pixels = range.preferred - static_cast<int>(std::ceil((range.preferred - range.least) * out.shrink));
        FittedText text = wrapAtPixels(theme, item, std::max(range.least, pixels), key.room.width());
        out.fits = out.fits && text.fits;
        out.width = std::max(out.width, text.width);
        out.height += text.height();
        shown += text.lines.isEmpty() ? 0 : 1;
        out.texts.push_back(std::move(text));
        if (step < steps && (!out.fits || out.height > key.room.height() + hairPx)) {
            out.fits = false;
            return out;
        }
    }
    out.height += key.gap * std::max(0, shown - 1);
    out.fits = out.fits && out.height <= key.room.height() + hairPx;
    return out;
}

// Two lines where a somewhat smaller one would do leave an orphan word: the smaller one is taken.
std::optional<FittedStack> onOneLine(const Theme& theme, const StackKey& key, int from, int steps)
{
    for (int step = from; step <= oneLineShrink * steps; ++step) {
        FittedStack stack = stackAt(theme, key, step, steps);
        if (stack.fits && stack.texts.front().lines.size() <= 1)
            return stack;
    }
    return std::nullopt;
}

FittedStack largestStack(const Theme& theme, const StackKey& key)
{
    int steps = 0;
    for (const TextItem& item : key.items) {
        const PixelRange range = pixelRange(theme, item.size);
        steps = std::max(steps, range.preferred - range.least);
    }
    // Wrapped height is not monotonic in size by proof, so every size is tried, largest first.
    for (int step = 0; step < steps; ++step) {
        FittedStack stack = stackAt(theme, key, step, steps);
        if (!stack.fits)
            continue;
        if (stack.texts.front().lines.size() == 2)
            return onOneLine(theme, key, step + 1, steps).value_or(std::move(stack));
        return stack;
    }
    FittedStack least = stackAt(theme, key, steps, steps);
    for (FittedText& text : least.texts)
        text.fits = least.fits;
    return least;
}

} // namespace

bool TextItem::operator==(const TextItem& other) const
{
    return text == other.text && bold == other.bold && lines == other.lines &&
           std::is_eq(size.preferredMm <=> other.size.preferredMm) && std::is_eq(size.leastMm <=> other.size.leastMm);
}

FittedStack fitStack(const Theme& theme, const std::vector<TextItem>& items, QSizeF room, double gap)
{
    static QCache<StackKey, FittedStack> cache(cachedStacks);
    StackKey key{items, room, gap, theme.metrics().pixelsPerMillimetre()};
    if (const FittedStack* known = cache.object(key))
        return *known;
    FittedStack stack = largestStack(theme, key);
    cache.insert(std::move(key), new FittedStack(stack));
    return stack;
}

FittedText fitText(const Theme& theme, const TextItem& item, QSizeF room)
{
    return fitStack(theme, {item}, room, 0).texts.front();
}

FittedText fitText(const Theme& theme, const QString& text, TextRole role, QSizeF room, bool bold, int lines)
{
    return fitText(theme, TextItem{text, Theme::size(role), bold, lines}, room);
}

FittedText wrapText(const Theme& theme, const TextItem& item, double emMillimetres, double width)
{
    return wrapAtPixels(theme, item, std::max(1, theme.px(emMillimetres)), width);
}

void drawFitted(QPainter& painter, const QRectF& rect, const FittedText& text, Qt::Alignment alignment,
                const QColor& ink)
{
    double y = rect.top();
    if (alignment & Qt::AlignVCenter)
        y += (rect.height() - text.height()) / 2;
    else if (alignment & Qt::AlignBottom)
        y += rect.height() - text.height();
    painter.save();
    painter.setPen(ink);
    painter.setFont(text.font);
    const QFontMetricsF metrics(text.font);
    for (const QString& line : text.lines) {
        const double spare = rect.width() - metrics.horizontalAdvance(line);
        double x = rect.left();
        if (alignment & Qt::AlignHCenter)
            x += spare / 2;
        else if (alignment & Qt::AlignRight)
            x += spare;
        painter.drawText(QPointF(x, y + text.baseline), line);
        y += text.lineHeight;
    }
    painter.restore();
}

} // namespace strandbench
