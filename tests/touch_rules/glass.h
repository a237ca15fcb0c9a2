// SPDX-License-Identifier: GPL-3.0-or-later
// The four glasses on which every screen is checked.
#pragma once

#include <QSize>
#include <QString>

#include <vector>

namespace strandbench::rules {

struct Glass {
    QString name;
    QSize pixels;
    double widthMm;
    [[nodiscard]] double pixelsPerMillimetre() const { return pixels.width() / widthMm; }
    [[nodiscard]] bool upright() const { return pixels.height() > pixels.width(); }
};

/// 1024 x 600 (222 mm wide), 1280 x 800 (217), 1920 x 1080 (344), upright 800 x 1280 (136).
[[nodiscard]] const std::vector<Glass>& glasses();

} // namespace strandbench::rules
