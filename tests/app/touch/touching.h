// SPDX-License-Identifier: GPL-3.0-or-later
// A gloved thumb for the tests: touches as the panel sends them.
#pragma once

#include "theme/theme.h"

#include <QPointingDevice>
#include <QWidget>

namespace strandbench::touching {

/// A touch screen; one a process.
[[nodiscard]] QPointingDevice* panel();
void press(QWidget* widget, QPoint at);
void release(QWidget* widget, QPoint at);
void tap(QWidget* widget, QPoint at);
/// Shows at this size and waits until it is there; false when it never is.
[[nodiscard]] bool show(QWidget& window, QSize pixels);
/// A theme for a 217 mm wide glass of 1280 pixels.
[[nodiscard]] Theme bench(DayNight dayNight = DayNight::Day, Hand hand = Hand::Right, bool reducedMotion = false);
/// Keeps a picture of the widget when STRANDBENCH_LOOK names a folder.
void keepLook(QWidget& widget, const QString& name);

} // namespace strandbench::touching
