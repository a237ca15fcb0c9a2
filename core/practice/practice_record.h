// SPDX-License-Identifier: GPL-3.0-or-later
// What became of each panel that was practised: one line each, in a file of its own, never in the shop's record.
#pragma once

#include "practice/marking.h"

namespace strandbench {

struct PracticeEntry {
    qint64 utcMs = 0; ///< when it was ended
    QString person;   ///< empty: not told
    QString panel;    ///< its id, or what a made one was made from
    bool passed = false;
    bool filledAStop = false;
    struct Answer {
        DecisionPoint decision = DecisionPoint::SubstrateFound;
        bool right = false;
        bool operator==(const Answer&) const = default;
    };
    std::vector<Answer> answers; ///< those that were reached, in the order of the work
    bool operator==(const PracticeEntry&) const = default;
};

[[nodiscard]] PracticeEntry entryOf(const QString& panel, const QString& person, qint64 utcMs, const Marking& marking);

/// One entry as a line of JSON (RFC 8259), with its end.
[[nodiscard]] QByteArray writeEntry(const PracticeEntry& entry);
/// Reads lines back. A line that does not read is a fault "line N: field", and is left out; the others stay.
struct ReadEntries {
    std::vector<PracticeEntry> entries;
    Faults faults;
};
[[nodiscard]] ReadEntries readEntries(const QByteArray& lines);

} // namespace strandbench
