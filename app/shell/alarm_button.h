// SPDX-License-Identifier: GPL-3.0-or-later
// One alarm on the bar: sign, what to do, where. It is answered by a tap, but never by one that was meant for what lay
// there before.
#pragma once

#include "clock/alarm.h"
#include "clock/clock.h"
#include "touch/shown_text.h"
#include "touch/tap_layout.h"

#include <QAbstractButton>
#include <QTimer>

namespace strandbench {

struct AlarmShown {
    AlarmKind kind = AlarmKind::EdgesSoon;
    QString headline; ///< "Hands off: it gels"; always whole
    QString second;   ///< where; also which alarm it is, while the headline counts down
    bool operator==(const AlarmShown&) const = default;
};

/// The ground and the ink of an alarm in full colour.
struct AlarmColors {
    Role ground;
    Role ink;
};
[[nodiscard]] AlarmColors colorsOf(AlarmKind kind);

class AlarmButton final : public QAbstractButton, public ShowsText {
    Q_OBJECT
public:
    AlarmButton(const Theme& theme, const QString& name, QWidget* parent = nullptr);

    /// True when it is another alarm than before: then it takes no tap at first.
    bool setAlarm(const AlarmShown& alarm, const Instant& now);
    void forget(); ///< no alarm here: the next one is another
    void setInverted(bool inverted);
    /// Takes no tap for a moment.
    void rest(const Instant& now);
    void tick(const Instant& now);
    [[nodiscard]] QString spoken() const; ///< headline and second line, whole
    [[nodiscard]] std::vector<ShownText> shownTexts() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    [[nodiscard]] bool hitButton(const QPoint& at) const override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override; ///< a second press, never a meaning of its own
    void keyPressEvent(QKeyEvent* event) override;           ///< Space acts; Enter is the window's
    void keyReleaseEvent(QKeyEvent* event) override;

private:
    struct Arranged {
        TapLayout layout;
        QString second; ///< as much as there is room for
    };
    [[nodiscard]] Arranged arranged() const;
    void letGoOfOlder();
    void paintFace(QPainter& painter, const QColor& face, const QColor& ink) const;

    const Theme& m_theme;
    AlarmShown m_alarm;
    bool m_shown = false;
    bool m_inverted = false;
    Instant m_restsFrom;
    QTimer m_rests;   ///< the same by the glass's own time: seconds may pass between two ticks
    int m_alarms = 0; ///< how many it has shown
    int m_pressedAt = 0;
};

} // namespace strandbench
