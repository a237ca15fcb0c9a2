// SPDX-License-Identifier: GPL-3.0-or-later
// The three answers, always in the same three places: back, 'Stop and ask', the one way on. Mirrored for
// left-handed people.
#pragma once

#include "touch/tap_button.h"

namespace strandbench {

class AnswerBar final : public QWidget {
    Q_OBJECT
public:
    AnswerBar(const Theme& theme, QWidget* parent = nullptr);

    /// The way on, named by what it records. kind Way or Go. Enabled unless told otherwise. Without a title there
    /// is none to be seen, and its place stays empty.
    void setWayOn(const QString& title, TapButton::Kind kind = TapButton::Kind::Way);
    void setWayOnEnabled(bool enabled);
    void setBackNote(const QString& secondLine);               ///< "clock runs on"
    [[nodiscard]] TapButton* back() const { return m_back; }   ///< object name answer_back
    [[nodiscard]] TapButton* stop() const { return m_stop; }   ///< answer_stop
    [[nodiscard]] TapButton* wayOn() const { return m_wayOn; } ///< answer_way_on

Q_SIGNALS:
    void backTapped();
    void stopTapped();
    void wayOnTapped();

private:
    TapButton* m_back;
    TapButton* m_stop;
    TapButton* m_wayOn;
};

} // namespace strandbench
