// SPDX-License-Identifier: GPL-3.0-or-later
// The largest text that fits a rectangle: wrapped at word boundaries only, shrunk from the preferred to the
// least em height. A word too long for its line shrinks the text instead of being broken.
#pragma once

#include "theme/theme.h"

#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <vector>

class QPainter;

namespace strandbench {

/// One text of a stack; sizes are em heights in millimetres.
struct TextItem {
    QString text;
    TextSize size{4.6, 3.4};
    bool bold = false;
    int lines = 99; ///< at most; 1 never wraps
    bool operator==(const TextItem& other) const;
};

/// A text as it will be drawn; lengths in pixels.
struct FittedText {
    QStringList lines;
    QFont font;
    double emMm = 0; ///< as drawn; never below the least size
    double lineHeight = 0;
    double baseline = 0; ///< below the top of a line
    double width = 0;    ///< of the widest line
    bool fits = false;   ///< false: drawn at the least size, and it does not fit
    [[nodiscard]] double height() const { return lineHeight * static_cast<double>(lines.size()); }
};

/// Texts below each other in one rectangle.
struct FittedStack {
    std::vector<FittedText> texts;
    double gap = 0; ///< between two texts, in pixels
    double width = 0;
    double height = 0;
    bool fits = false;
    double shrink = 0; ///< 0: all at their preferred size; 1: all at their least size
};

/// The stack at the largest sizes that fit `room` (pixels); all texts shrink in step. A first text that would
/// take two lines is set on one when it need not shrink far for it. Answers are kept in a cache by text, sizes
/// and room, so asking in every paint event is cheap. GUI thread only.
[[nodiscard]] FittedStack fitStack(const Theme& theme, const std::vector<TextItem>& items, QSizeF room, double gap);

/// One text alone.
[[nodiscard]] FittedText fitText(const Theme& theme, const TextItem& item, QSizeF room);
[[nodiscard]] FittedText fitText(const Theme& theme, const QString& text, TextRole role, QSizeF room, bool bold = false,
                                 int lines = 99);

/// The text at an em height in millimetres, wrapped at `width` pixels; fits says whether no line is wider.
[[nodiscard]] FittedText wrapText(const Theme& theme, const TextItem& item, double emMillimetres, double width);

/// Draws in `ink`, placed in the rectangle by `alignment`.
void drawFitted(QPainter& painter, const QRectF& rect, const FittedText& text, Qt::Alignment alignment,
                const QColor& ink);

} // namespace strandbench
