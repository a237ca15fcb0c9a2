// SPDX-License-Identifier: GPL-3.0-or-later
// A whole repair within every limit, of which a test changes one thing at a time.
#pragma once

#include "repair_script.h"
#include "review/deviations.h"

#include <functional>

namespace strandbench::test {

/// The events of a whole repair without a deviation: every act named, every lot told, a fresh reading before each
/// hardener, edges before gel, sanded when predicted, a picture of each moment.
[[nodiscard]] std::vector<Event> cleanRepair();

/// Its catalogue: one sheet that is no demo sheet, one that is.
[[nodiscard]] Catalogue reviewCatalogue();

/// The payload of the first event of type T, to change.
template <class T> T& firstOf(std::vector<Event>& events)
{
    for (Event& each : events)
        if (T* found = std::get_if<T>(&each.payload))
            return *found;
    throw std::logic_error("no such event");
}

/// Moves every event from `seq` on by so many milliseconds, by both clocks.
void delayFrom(std::vector<Event>& events, qint64 seq, qint64 ms);
/// The seq of the first event that the test picks.
[[nodiscard]] qint64 seqOf(const std::vector<Event>& events, const std::function<bool(const Event&)>& picks);
/// Puts an event behind the one of this seq; those that follow are numbered on.
void insertAfter(std::vector<Event>& events, qint64 seq, const Payload& payload);

[[nodiscard]] JobRecord recordOf(const std::vector<Event>& events);
[[nodiscard]] std::vector<Deviation> deviationsOf(const std::vector<Event>& events);
/// The codes of what deviates, in order.
[[nodiscard]] QStringList codesOf(const std::vector<Event>& events);

} // namespace strandbench::test
