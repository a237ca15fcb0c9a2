// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: the product sheets that the bench plans with, the shop's own before the demo sheets, and the ways to another
// one: typed, or from a file.
#pragma once

#include "screens/set_up/set_up_screen.h"

namespace strandbench {

class SetUpSheetsScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpSheetsScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);

private:
    TapButton* tile(const ProductSheet& sheet);
    TapButton* way(const QString& name, const QString& title, ProductWish::What what);
};

/// The mark of a demo sheet where there is no room for words: a hatched frame.
void paintDemoMark(QPainter& painter, const QRectF& rect, const Theme& theme);

} // namespace strandbench
