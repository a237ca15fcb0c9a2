// SPDX-License-Identifier: GPL-3.0-or-later
// The margin of the panel over the dew point against the time of day, with the least that is allowed. A reading below
// that is a triangle in the hatched field, one within it a ring above.
#pragma once

#include "theme/theme.h"

#include <QString>
#include <QWidget>

#include <functional>
#include <vector>

namespace strandbench {

struct DewMark {
    double minute = 0; ///< of the day, local
    double margin = 0; ///< in the degrees that are shown
    bool below = false;
};

/// What is drawn, in the person's degrees and words.
struct DewDay {
    std::vector<DewMark> marks; ///< in the order of time
    double least = 0;           ///< that is allowed
    QString leastName;          ///< stands on its line: "limit 3.0 °C"
    QString belowName;          ///< stands in the field below it
    std::function<QString(double)> degrees;
    std::function<QString(int)> minute; ///< of a whole minute of the day: "08:00"
};

class DewPicture final : public QWidget {
    Q_OBJECT
public:
    DewPicture(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setDay(DewDay day);
    [[nodiscard]] const DewDay& day() const { return m_day; }
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    DewDay m_day;
};

} // namespace strandbench
