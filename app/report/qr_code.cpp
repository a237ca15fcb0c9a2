// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/qr_code.h"

#include <QPainterPath>

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace strandbench {
namespace {

constexpr unsigned int eciOfUtf8 = 26;

struct FreeInput {
    void operator()(QRinput* input) const { QRinput_free(input); }
};
struct FreeCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

} // namespace

std::optional<QrCode> QrCode::of(const QString& text)
{
    const QByteArray bytes = text.toUtf8();
    const std::unique_ptr<QRinput, FreeInput> input(QRinput_new2(0, QR_ECLEVEL_M));
    if (!input || bytes.isEmpty())
        return std::nullopt;
    const bool ascii = std::all_of(bytes.begin(), bytes.end(), [](char each) { return (each & 0x80) == 0; });
    if (!ascii && QRinput_appendECIheader(input.get(), eciOfUtf8) != 0)
        return std::nullopt;
    const auto* data = reinterpret_cast<const unsigned char*>(bytes.constData());
    if (QRinput_append(input.get(), QR_MODE_8, static_cast<int>(bytes.size()), data) != 0)
        return std::nullopt;
    const std::unique_ptr<QRcode, FreeCode> code(QRcode_encodeInput(input.get()));
    if (!code)
        return std::nullopt;
    std::vector<bool> dark(static_cast<std::size_t>(code->width) * static_cast<std::size_t>(code->width));
    for (std::size_t i = 0; i < dark.size(); ++i)
        dark[i] = (code->data[i] & 1) != 0; // the other bits say what a module is for
    return QrCode(code->width, std::move(dark));
}

void QrCode::paint(QPainter& painter, const QRectF& room) const
{
    const double all = std::min(room.width(), room.height());
    const double module = all / (m_side + 2 * quietZone);
    const QPointF origin = room.topLeft() + QPointF(quietZone, quietZone) * module;
    // One shape, so that no seam shows between modules that touch.
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int row = 0; row < m_side; ++row)
        for (int column = 0; column < m_side; ++column) {
            const int from = column;
            while (column < m_side && dark(column, row))
                ++column;
            if (column > from)
                path.addRect(origin.x() + from * module, origin.y() + row * module, (column - from) * module, module);
        }
    painter.fillRect(QRectF(room.topLeft(), QSizeF(all, all)), Qt::white);
    painter.fillPath(path, Qt::black);
}

} // namespace strandbench
