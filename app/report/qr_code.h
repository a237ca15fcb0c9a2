// SPDX-License-Identifier: GPL-3.0-or-later
// A text as a QR code (ISO/IEC 18004), for a reader of the years to come: made by libqrencode, drawn as one shape.
#pragma once

#include <QPainter>
#include <QString>

#include <optional>
#include <vector>

namespace strandbench {

class QrCode {
public:
    /// The code of a text as UTF-8, at the smallest size that corrects about 15 % of it (level M). A text beyond ASCII
    /// says so within the code (ECI 26), since a reader otherwise takes Latin 1. Empty of an empty text, and of one
    /// that is longer than any code holds (about 2 300 bytes).
    [[nodiscard]] static std::optional<QrCode> of(const QString& text);

    [[nodiscard]] int side() const { return m_side; } ///< in modules: 21 to 177
    [[nodiscard]] bool dark(int column, int row) const
    {
        return m_dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(m_side) +
                      static_cast<std::size_t>(column)];
    }
    /// Modules left light on each side, as the standard asks for.
    static constexpr int quietZone = 4;
    /// Draws it, quiet zone included, as the largest square at the left top of the room.
    void paint(QPainter& painter, const QRectF& room) const;

private:
    QrCode(int side, std::vector<bool> dark) : m_side(side), m_dark(std::move(dark)) {}

    int m_side;
    std::vector<bool> m_dark; ///< row by row
};

} // namespace strandbench
