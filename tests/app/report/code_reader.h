// SPDX-License-Identifier: GPL-3.0-or-later
// Reads QR codes from what was printed, with programs that know nothing of ours: poppler draws the page, zbar reads it.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QStringList>

namespace strandbench::test {

/// Every code in a picture; throws std::runtime_error when zbarimg (zbar-tools) is not there or takes no picture.
[[nodiscard]] QStringList codesIn(const QImage& picture);
/// Every code on every page of a PDF, drawn at so many dots to the inch.
[[nodiscard]] QStringList codesIn(const QByteArray& pdf, int dotsPerInch = 150);

} // namespace strandbench::test
