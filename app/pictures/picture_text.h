// SPDX-License-Identifier: GPL-3.0-or-later
// One line of text in a picture: as large as its role prefers, shrunk to the role's least size before it is
// ever clipped, and honest when even that is too large.
#pragma once

#include "theme/theme.h"

#include <QPainter>
#include <QRectF>
#include <QString>

#include <functional>

namespace strandbench {

struct PictureText {
    QString text;
    QRectF place; ///< where it is drawn
    QFont font;
    Qt::Alignment alignment = Qt::AlignCenter;
    double emMm = 0;  ///< em height as drawn; 0 when there is no text
    bool fits = true; ///< whole within its place
    [[nodiscard]] bool empty() const { return text.isEmpty(); }
};

/// The text at the largest size of its role that fits the place's width and height.
[[nodiscard]] PictureText fitLine(const Theme& theme, const QString& text, const QRectF& place, TextRole role,
                                  bool bold = false, Qt::Alignment alignment = Qt::AlignCenter);
/// Which part of a text that is too long stays.
enum class PartKept { Beginning, End };
/// The text; where it does not fit as much of one part as does, with "…" for the rest: "…000417-M84". Six characters
/// stay even if they do not fit.
[[nodiscard]] QString shortened(const QString& text, PartKept kept, const std::function<bool(const QString&)>& fits);
/// Width and height of a line at an em height in millimetres, in pixels.
[[nodiscard]] QSizeF lineSize(const Theme& theme, const QString& text, double emMm, bool bold = false);
/// The ink as drawn by the text's own alignment: a rectangle around it, within or beyond its place.
[[nodiscard]] QRectF inkOf(const PictureText& text);

void drawText(QPainter& painter, const PictureText& text, const QColor& ink);

/// Of the theme's dark and light ink, the one that reads better upon a ground (WCAG 2.1 contrast ratio).
[[nodiscard]] QColor inkUpon(const Theme& theme, const QColor& ground);
/// Contrast ratio of two colours, 1 to 21, by WCAG 2.1, definition of 'contrast ratio'.
[[nodiscard]] double contrastRatio(const QColor& one, const QColor& other);

/// The least em height among texts, 0 when none has any text; and whether all of them fit.
struct TextReport {
    double smallestMm = 0;
    bool fits = true;
    void add(const PictureText& text);
};

} // namespace strandbench
