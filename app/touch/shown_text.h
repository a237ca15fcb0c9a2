// SPDX-License-Identifier: GPL-3.0-or-later
// What a control says of the texts that it draws, so that a rule can be checked without a look at pixels.
#pragma once

#include "theme/theme.h"

#include <QRectF>
#include <QString>

#include <vector>

namespace strandbench {

struct ShownText {
    QString text;
    QRectF where; ///< tight box in the widget's pixels
    double emMm = 0;
    bool fits = false; ///< whole, at its least size or larger
};

class ShowsText {
public:
    virtual ~ShowsText() = default;
    [[nodiscard]] virtual std::vector<ShownText> shownTexts() const = 0;
};

} // namespace strandbench
