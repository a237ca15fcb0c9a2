// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/tap_layout.h"

#include <algorithm>

namespace strandbench {

namespace {

// Millimetres, by eye from the drawings of the screens.
constexpr double leastPadding = 1.8;
constexpr double mostPadding = 3;
constexpr double markGap = 2.4;
constexpr double tickSize = 5;
constexpr double tickInset = 1.6;
constexpr double wideEnoughForTickBeside = 40;
// What an arrangement costs, in shares of the way from the preferred to the least size.
constexpr double costOfALine = 0.25;
constexpr double costOfAWrongShape = 0.3;

double toPixels(const Theme& theme, double mm) { return mm * theme.metrics().pixelsPerMillimetre(); }

bool hasText(const TapContent& content) { return !content.title.text.isEmpty() || !content.second.text.isEmpty(); }

QRectF faceOf(const Theme& theme, const QRectF& rect, const TapContent& content)
{
    const double shortSide = std::min(rect.width(), rect.height());
    const double padding = std::clamp(shortSide * 0.09, toPixels(theme, leastPadding), toPixels(theme, mostPadding));
    QRectF face = rect.adjusted(padding, padding, -padding, -padding);
    if (content.tick) {
        const double beside = toPixels(theme, tickSize);
        const bool centred = !content.sign && !content.picture; // keeps both sides free, to stay in the middle
        if (rect.width() >= toPixels(theme, wideEnoughForTickBeside))
            face.adjust(centred ? beside : 0, 0, -beside, 0);
        else
            face.setTop(rect.top() + toPixels(theme, tickSize + tickInset));
    }
    return face;
}

QRectF centred(const QRectF& room, double width, double height)
{
    return {room.center().x() - width / 2, room.center().y() - height / 2, width, height};
}

FittedStack textsIn(const Theme& theme, const TapContent& content, const QRectF& room)
{
    return fitStack(theme, {content.title, content.second}, room.size(), toPixels(theme, 0.6));
}

void placeTexts(TapLayout& layout, const QRectF& room)
{
    const FittedText& title = layout.stack.texts[0];
    const FittedText& second = layout.stack.texts[1];
    const double top = room.top() + (room.height() - layout.stack.height) / 2;
    const double gap = title.lines.isEmpty() || second.lines.isEmpty() ? 0 : layout.stack.gap;
    layout.title = {room.left(), top, room.width(), title.height()};
    layout.second = {room.left(), top + title.height() + gap, room.width(), second.height()};
}

TapLayout beside(const Theme& theme, const QRectF& face, const TapContent& content)
{
    TapLayout layout;
    layout.alignment = Qt::AlignLeft;
    const double gap = toPixels(theme, markGap);
    const double side = std::min({face.height() * 0.55, face.width() * 0.3, toPixels(theme, 18)});
    const double width = content.picture ? face.width() * 0.42 : side;
    const QRectF room = face.adjusted(width + gap, 0, 0, 0);
    layout.stack = textsIn(theme, content, room);
    if (content.picture) {
        layout.mark = QRectF(face.left(), face.top(), width, face.height());
        placeTexts(layout, room);
        return layout;
    }
    // Sign and text stand in the middle as one group.
    const double spare = std::max(0.0, (room.width() - layout.stack.width) / 2);
    layout.mark = QRectF(face.left() + spare, face.center().y() - side / 2, side, side);
    placeTexts(layout, room.translated(spare, 0));
    return layout;
}

TapLayout above(const Theme& theme, const QRectF& face, const TapContent& content)
{
    TapLayout layout;
    const double gap = toPixels(theme, markGap) / 2;
    const double height = face.height() * (content.picture ? 0.5 : 0.4);
    const QRectF room = face.adjusted(0, height + gap, 0, 0);
    layout.stack = textsIn(theme, content, room);
    if (content.picture) {
        layout.mark = QRectF(face.left(), face.top(), face.width(), height);
        placeTexts(layout, room);
        return layout;
    }
    const double side = std::min({height, face.width(), toPixels(theme, 30)});
    const double used = side + gap + layout.stack.height;
    const double top = face.top() + std::max(0.0, (face.height() - used) / 2);
    layout.mark = QRectF(face.center().x() - side / 2, top, side, side);
    placeTexts(layout,
               QRectF(face.left(), top + side + gap, face.width(), std::min(layout.stack.height, room.height())));
    return layout;
}

TapLayout better(const QRectF& face, TapLayout side, TapLayout stacked)
{
    if (side.stack.fits != stacked.stack.fits)
        return side.stack.fits ? side : stacked;
    const auto cost = [](const FittedStack& stack) {
        return stack.shrink + costOfALine * static_cast<double>(stack.texts.front().lines.size());
    };
    const double shape = face.height() > face.width() * 1.1 ? costOfAWrongShape : -costOfAWrongShape;
    return cost(side.stack) + shape <= cost(stacked.stack) ? side : stacked;
}

} // namespace

TapLayout arrangeTap(const Theme& theme, const QRectF& rect, const TapContent& content)
{
    const QRectF face = faceOf(theme, rect, content);
    TapLayout layout;
    if (!content.sign && !content.picture) {
        layout.stack = textsIn(theme, content, face);
        placeTexts(layout, face);
    } else if (!hasText(content)) {
        const double side = std::min({face.width(), face.height(), toPixels(theme, 30)}) * 0.8;
        layout.mark = content.picture ? face : centred(face, side, side);
        layout.stack = textsIn(theme, content, face);
        placeTexts(layout, face);
    } else {
        layout = better(face, beside(theme, face, content), above(theme, face, content));
    }
    const double tick = toPixels(theme, tickSize);
    const double inset = toPixels(theme, tickInset);
    layout.tick = QRectF(rect.right() - inset - tick, rect.top() + inset, tick, tick);
    return layout;
}

} // namespace strandbench
