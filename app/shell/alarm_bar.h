// SPDX-License-Identifier: GPL-3.0-or-later
// The alarm as it is seen: it takes the ribbon's place over the whole width and flashes until it is answered.
#pragma once

#include "shell/alarm_button.h"

#include <array>
#include <optional>

namespace strandbench {

class AlarmBar final : public QWidget {
    Q_OBJECT
public:
    explicit AlarmBar(const Theme& theme, QWidget* parent = nullptr);

    /// Most urgent first. One takes the whole width; of more the first two stand beside each other, whichever hand.
    void setAlarms(const std::vector<AlarmShown>& alarms, const Instant& now);
    /// Flashes, and takes taps again; called about every second.
    void tick(const Instant& now);
    /// What a screen reader says of the whole.
    [[nodiscard]] QString spoken() const;

Q_SIGNALS:
    void answered(std::size_t index);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void placeButtons();
    void setInverted(bool inverted, const Instant& now);

    const Theme& m_theme;
    std::array<AlarmButton*, 2> m_buttons{};
    std::vector<AlarmKind> m_kinds; ///< of those shown
    bool m_inverted = false;
    Instant m_swapped; ///< the colours
    Instant m_now;     ///< as last told
};

} // namespace strandbench
