// SPDX-License-Identifier: GPL-3.0-or-later
// Whole lines from what a serial instrument sends: slow, torn, noisy or without an end.
#pragma once

#include "quantity/quantity.h"

#include <QByteArray>

#include <vector>

namespace strandbench {

/// Takes bytes as they come and gives the lines that are whole beyond doubt. What stood before the first end of a line,
/// or before a pause within a line, may lack its beginning ("2.34 g" of "12.34 g"): it is no line. Neither is what is
/// longer than `longest` or holds a byte that no plain line has.
class LineReader {
public:
    static constexpr qsizetype longest = 120; ///< bytes; a weight line has some 20 (common practice, no source)
    /// A line at the slowest usual rate, 1200 bit/s, takes a second for all its 120 bytes; between two of them nothing
    /// like this passes. An assumption.
    [[nodiscard]] static Duration longestPause() { return seconds(0.5); }

    /// now: of a clock that never goes back. The lines are without their ends (CR, LF or both) and never empty.
    [[nodiscard]] std::vector<QByteArray> take(const QByteArray& bytes, Duration now);
    /// What was read so far is no line, nor what comes before the next end: the port was opened anew, say.
    void restart();
    [[nodiscard]] int dropped() const { return m_dropped; } ///< lines that were not whole, since the start

private:
    void end(std::vector<QByteArray>& lines);

    QByteArray m_line;
    bool m_whole = false; ///< what is being read began after the end of another
    Duration m_last = seconds(0);
    int m_dropped = 0;
};

} // namespace strandbench
