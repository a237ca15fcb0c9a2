// SPDX-License-Identifier: GPL-3.0-or-later
// A camera's motion JPEG frame as a JPEG that stands alone.
#pragma once

#include <QByteArray>

namespace strandbench {

/// The frame as it is, when it brings Huffman tables. Cameras often leave out those that everybody is taken to know
/// (ITU-T T.81, K.3.3); they are put in before the scan then, so that any reader can open what is kept.
[[nodiscard]] QByteArray withHuffmanTables(const QByteArray& frame);

} // namespace strandbench
