// SPDX-License-Identifier: GPL-3.0-or-later
// Hazard pictograms in a row, as large as their place; read out by name.
#pragma once

#include "pictures/ghs_pictogram.h"
#include "theme/theme.h"

#include <QWidget>

namespace strandbench {

class GhsSign final : public QWidget {
    Q_OBJECT
public:
    /// sizeMm: of the square that holds one; more than four share the room of four, in two rows of smaller ones.
    GhsSign(const Theme& theme, std::vector<GhsPictogram> pictograms, double sizeMm, QWidget* parent);
    [[nodiscard]] const std::vector<GhsPictogram>& pictograms() const { return m_pictograms; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<GhsPictogram> m_pictograms;
};

/// "GHS02 flame, GHS07 exclamation mark", for those who hear the screen.
[[nodiscard]] QString spokenPictograms(const std::vector<GhsPictogram>& pictograms);

} // namespace strandbench
