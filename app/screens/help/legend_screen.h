// SPDX-License-Identifier: GPL-3.0-or-later
// What hatches and signs stand for: each drawn as in the pictures, with its word.
#pragma once

#include "pictures/hatch.h"
#include "screens/frame/screen.h"

#include <functional>

namespace strandbench {

/// A row of the legend.
struct LegendEntry {
    QString name; ///< object name
    QString word;
    QString told; ///< what it looks like, or means
    std::function<void(QPainter&, const QRectF&, const Theme&)> draw;
};

/// Every hatch, then every sign that has a meaning of its own, in the order they are shown.
[[nodiscard]] std::vector<LegendEntry> legend(const Words& words);

/// A piece of a material as a section shows it, or a sign.
class Swatch final : public QWidget {
    Q_OBJECT
public:
    /// sizeMm: width and height.
    Swatch(const Theme& theme, const LegendEntry& entry, QSizeF sizeMm, QWidget* parent);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    LegendEntry m_entry;
};

class LegendScreen final : public Screen {
    Q_OBJECT
public:
    explicit LegendScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void jobWanted();
};

} // namespace strandbench
