// SPDX-License-Identifier: GPL-3.0-or-later
// A repair on one time axis: what was planned above what was done, each part by its own hatch, and marks below:
// readings as diamonds, photos as squares, deviations as triangles.
#pragma once

#include "theme/theme.h"

#include <QString>
#include <QWidget>

#include <functional>
#include <vector>

namespace strandbench {

/// A part of the work, in minutes from the beginning of the axis.
struct TimeBar {
    int look = 0; ///< its hatch: the same number is the same part
    double from = 0;
    double to = 0;
};
enum class TimeMarkShape { Diamond, Square, Triangle };
struct TimeMark {
    TimeMarkShape shape = TimeMarkShape::Diamond;
    double at = 0;
};

/// What is drawn, in the person's words.
struct TimePicture {
    double from = 0; ///< minutes that are shown
    double to = 1;
    std::vector<TimeBar> planned;
    std::vector<TimeBar> actual;
    std::vector<TimeBar> parked; ///< drawn as a line over the actual ones
    std::vector<TimeMark> marks;
    QString plannedName; ///< at the left of the lanes
    QString actualName;
    QString marksName;
    std::vector<QString> looks;                  ///< names of the parts, by look: the legend
    std::vector<QString> markNames;              ///< of the three shapes, in their order
    std::function<QString(double minute)> clock; ///< a tick of the axis
};

class TimelinePicture final : public QWidget {
    Q_OBJECT
public:
    static constexpr int looks = 7; ///< different hatches

    TimelinePicture(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setPicture(TimePicture picture);
    [[nodiscard]] const TimePicture& picture() const { return m_picture; }
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    TimePicture m_picture;
};

} // namespace strandbench
