// SPDX-License-Identifier: GPL-3.0-or-later
// Measuring what was painted.
#pragma once

#include "theme/theme.h"

#include <QImage>
#include <QWidget>

#include <functional>
#include <vector>

namespace strandbench::pixels {

/// The widget as painted upon the theme's card.
[[nodiscard]] QImage grab(QWidget& widget, const Theme& theme, Role ground = Role::Card);
[[nodiscard]] QImage paint(QSize size, const Theme& theme, const std::function<void(QPainter&)>& draw);

/// True when a pixel is close to a colour (each channel within `off`).
[[nodiscard]] bool near(QRgb pixel, const QColor& color, int off = 24);

/// From the first to the last pixel of a row (column) that is close to a colour, both counted; 0 without one.
[[nodiscard]] int spanInRow(const QImage& image, int y, const QColor& color);
[[nodiscard]] int spanInColumn(const QImage& image, int x, const QColor& color);
/// The same of every pixel that is not close to a colour.
[[nodiscard]] int spanOfOthersInRow(const QImage& image, int y, const QColor& ground);
[[nodiscard]] int spanOfOthersInColumn(const QImage& image, int x, const QColor& ground);

/// The middles of the runs of pixels close to a colour, down a column.
[[nodiscard]] std::vector<double> linesDown(const QImage& image, int x, const QColor& color);
/// Share of pixels that differ, 0 to 1.
[[nodiscard]] double difference(const QImage& one, const QImage& other);

} // namespace strandbench::pixels
