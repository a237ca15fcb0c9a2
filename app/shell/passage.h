// SPDX-License-Identifier: GPL-3.0-or-later
// How one screen follows another: it comes in from where the work leads, a few millimetres, while it already answers.
#pragma once

#include "shell/place.h"

#include <QPointer>
#include <QVariantAnimation>
#include <QWidget>

namespace strandbench {

class Theme;

/// Where the work leads with a screen.
enum class Heading {
    None, ///< it stands where one stood: the same place, as it is now
    On,   ///< comes from the right
    Back, ///< from the left
    Into, ///< help over what is shown: from below
    Out,  ///< and away again: from above
};
/// From one place to another; `back`: by a tap on 'back'. `same`: the screen has the name of the one before.
[[nodiscard]] Heading headingTo(Place from, Place to, bool back, bool same);

/// Moves what is shown. A screen that moves is where it is seen, so a tap meets what the finger aims at: it never waits
/// for the motion, and a motion never waits for it. Under reduced motion each screen stands at once.
class Passage final : public QObject {
    Q_OBJECT
public:
    static constexpr double shiftMm = 4; ///< a fifth of the least key: a thumb that aims at its middle still meets it
    static constexpr int lastsMs = 150;

    explicit Passage(QObject* parent = nullptr);

    /// Brings in a screen that is laid out. The one that moved before stands at once.
    void begin(QWidget* screen, Heading heading, const Theme& theme);
    void stand();               ///< the screen stands where it belongs, at once
    void setLasting(int forMs); ///< 0: no screen moves, as for pictures of screens that stand
    [[nodiscard]] Heading heading() const { return m_heading; } ///< of the screen that is shown
    [[nodiscard]] bool isMoving() const { return m_motion.state() == QAbstractAnimation::Running; }

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    QVariantAnimation m_motion;
    QPointer<QWidget> m_screen;
    QPoint m_place; ///< where the screen belongs
    Heading m_heading = Heading::None;
};

} // namespace strandbench
