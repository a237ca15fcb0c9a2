// SPDX-License-Identifier: GPL-3.0-or-later
// A sign as large as its place.
#pragma once

#include "pictures/pictogram.h"
#include "theme/theme.h"

#include <QWidget>

namespace strandbench {

class SignWidget final : public QWidget {
    Q_OBJECT
public:
    SignWidget(const Theme& theme, Pictogram sign, const QString& accessibleName, QWidget* parent = nullptr);
    [[nodiscard]] Pictogram sign() const { return m_sign; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    Pictogram m_sign;
};

} // namespace strandbench
