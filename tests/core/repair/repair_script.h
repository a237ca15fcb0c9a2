// SPDX-License-Identifier: GPL-3.0-or-later
// A repair that a test walks through event by event.
#pragma once

#include "repair/repair.h"

namespace strandbench::test {

/// A plan with everything in it that orders the steps: three steps of preparing; in front two lifts, the first
/// in two batches; behind one lift; two finishing coats; two steps of finishing.
[[nodiscard]] RepairPlan samplePlan();

/// The answers of a through hole in SMC, in the order asked.
[[nodiscard]] std::vector<Answered> sampleAnswers();

/// What a technician does at the step that is due. At 'decide' the sample plan is accepted.
[[nodiscard]] Payload actAt(const Repair& repair);

/// A moment, in seconds after an arbitrary one.
[[nodiscard]] Instant moment(int seconds);

class RepairScript {
public:
    RepairScript();

    /// Adds an event and folds it. The fault, if any, and then nothing is added.
    std::optional<Fault> put(const Payload& payload);
    /// Takes in, answers and accepts, up to the first step of preparing.
    void toPlan();
    /// Does what is due until the station is due (or the repair is done).
    void walkTo(Station station);

    [[nodiscard]] const Repair& repair() const { return m_repair; }
    [[nodiscard]] const std::vector<Event>& events() const { return m_events; }
    [[nodiscard]] NextStep next() const { return nextStep(m_repair); }
    /// The event that would come next with this payload.
    [[nodiscard]] Event eventOf(const Payload& payload) const;

private:
    QUuid m_id;
    Repair m_repair;
    std::vector<Event> m_events;
};

} // namespace strandbench::test
