// SPDX-License-Identifier: GPL-3.0-or-later
// A repair as it was planned and as it went, on one time axis.
#pragma once

#include "review/deviations.h"

namespace strandbench {

enum class SpanKind { Assess, Prepare, Lay, Wait, Sand, Turn, Finish, Parked };
template <> struct Codes<SpanKind> {
    static constexpr std::array<std::pair<SpanKind, const char*>, 8> table{{
        {SpanKind::Assess, "assess"},   ///< from taking in to the first plan
        {SpanKind::Prepare, "prepare"}, ///< to the first hardener
        {SpanKind::Lay, "lay"},         ///< a batch, from 'hardener in' to clear edges
        {SpanKind::Wait, "wait"},       ///< to 'it sands'
        {SpanKind::Sand, "sand"},       ///< to sanded
        {SpanKind::Turn, "turn"},       ///< of the panel
        {SpanKind::Finish, "finish"},   ///< from the last sanding to the handing over
        {SpanKind::Parked, "parked"},
    }};
};

/// The part of the job that an entry of a plan's timeline is of, by its code; empty of what waits for the primer.
[[nodiscard]] std::optional<SpanKind> spanKindOf(const QString& code);

/// From taking in.
struct JobSpan {
    SpanKind kind = SpanKind::Assess;
    Duration from;
    Duration to;
    bool operator==(const JobSpan&) const = default;
};

template <class T> struct JobMark {
    T what;
    Duration at; ///< from taking in
};

struct JobTimeline {
    std::vector<JobSpan> planned; ///< by the first plan, from the moment it was accepted
    std::vector<JobSpan> actual;  ///< in the order of their beginning; parked spans overlay the others
    std::vector<JobMark<ReadingRecord>> readings;
    std::vector<JobMark<PhotoMoment>> photos;
    std::vector<JobMark<DeviationKind>> deviations;
    Duration length;     ///< from taking in to the last of all that
    Duration firstMix;   ///< the first hardener; without one 0
    Duration lastSanded; ///< without one the length
};

[[nodiscard]] JobTimeline timelineOf(const JobRecord& record, const std::vector<Deviation>& deviations);

} // namespace strandbench
