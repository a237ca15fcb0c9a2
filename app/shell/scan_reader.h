// SPDX-License-Identifier: GPL-3.0-or-later
// A scanner plugs in as a keyboard: it types a code within a blink and ends with Enter. Told apart here from a foot
// switch and from a person who types, by the pace.
#pragma once

#include "clock/clock.h"

#include <QKeyEvent>
#include <QObject>
#include <QTimer>

#include <vector>

namespace strandbench {

/// Gathers characters that come at a scanner's pace. Pure: what is done with a press is its caller's business.
class ScanReader {
public:
    enum class Take {
        PassOn, ///< means itself, once what is held has been let go
        Held,   ///< may begin or go on with a scan: kept back
        Scan    ///< Enter, and what was held is a scan: take text(), then release()
    };
    /// One press of a key, repeats and modifiers included.
    [[nodiscard]] Take take(const QKeyEvent& press, const Instant& now);

    struct Kept {
        int key;
        Qt::KeyboardModifiers modifiers;
        QString text;
    };
    [[nodiscard]] bool holding() const { return !m_held.empty(); }
    /// True when the next character would come too late to belong to what is held.
    [[nodiscard]] bool rested(const Instant& now) const;
    /// What is held, as one text; control characters as they came.
    [[nodiscard]] QString text() const;
    /// True when what is held was typed by a machine that never sent its Enter: no person typed it.
    [[nodiscard]] bool cutShort() const;
    /// Lets go of what is held, in order.
    [[nodiscard]] std::vector<Kept> release();

    /// The longest rest between two characters of one scan: also how long a printable key of a foot switch waits.
    static constexpr int longestRestMs = 80;

private:
    std::vector<Kept> m_held;
    Instant m_first;
    Instant m_last;
};

/// Stands before every key press of a window: scans come out as one text, all else goes where it was sent.
class ScanGate final : public QObject {
    Q_OBJECT
public:
    ScanGate(QWidget& window, const Clock& clock);

    /// True while a key is kept back because a scan may have begun with it.
    [[nodiscard]] bool holding() const { return m_reader.holding(); }

Q_SIGNALS:
    void scanned(const QString& text);
    void cutShort(const QString& text); ///< a scan without its Enter: nothing is done with it

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void letGo();
    void onTimeout();

    QWidget& m_window;
    const Clock& m_clock;
    ScanReader m_reader;
    QTimer m_rest;
    bool m_lastCall = false;
    bool m_typing = false; ///< what was held is being typed again
};

} // namespace strandbench
