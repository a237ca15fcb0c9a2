// SPDX-License-Identifier: GPL-3.0-or-later
// What a review of many repairs needs of one: made from its record once, so that a day or a year is looked at without
// reading every event again.
#pragma once

#include "review/deviations.h"

#include <QDate>

namespace strandbench {

/// A batch as figures count it.
struct DigestBatch {
    BatchRef batch;
    QString sheetId;
    QString lot;         ///< of the filler; empty: not told
    QString hardenerLot; ///< empty: not told
    Mass planned;        ///< filler, as the plan asked for it, what stays on the board included
    Mass mixed;          ///< filler
    Mass hardener;
    Duration predictedGel;               ///< on the panel, by the sheet alone
    std::optional<Duration> observedGel; ///< empty: not told
    qint64 utcMs = 0;                    ///< when the hardener went in
    bool operator==(const DigestBatch&) const = default;
};

/// The parts of the job that a plan gives a time to.
enum class JobPart { Prepare, Lay, Wait, Sand, Finish };
template <> struct Codes<JobPart> {
    static constexpr std::array<std::pair<JobPart, const char*>, 5> table{{
        {JobPart::Prepare, "prepare"}, ///< from the accepted plan to the first hardener
        {JobPart::Lay, "lay"},         ///< from 'hardener in' to clear edges, all batches
        {JobPart::Wait, "wait"},       ///< from clear edges to 'it sands', all layers
        {JobPart::Sand, "sand"},       ///< from 'it sands' to sanded, all layers
        {JobPart::Finish, "finish"},   ///< from the last sanding to the handing over
    }};
};

struct PartTime {
    JobPart part = JobPart::Prepare;
    Duration planned; ///< by the first plan
    Duration actual;
    bool operator==(const PartTime&) const = default;
};

/// How a repair stands with the supervisor.
enum class Standing { AtWork, ToLookThrough, SignedOff, Returned };
template <> struct Codes<Standing> {
    static constexpr std::array<std::pair<Standing, const char*>, 4> table{{
        {Standing::AtWork, "at_work"},
        {Standing::ToLookThrough, "to_look_through"}, ///< handed over, neither signed off nor returned
        {Standing::SignedOff, "signed_off"},
        {Standing::Returned, "returned"},
    }};
};

struct RepairDigest {
    QUuid repair;
    QString bench; ///< origin of its events
    QString job;
    QString panel;
    std::optional<Substrate> substrate; ///< empty: not answered
    Station station = Station::Assess;
    Standing standing = Standing::AtWork;
    QStringList people;
    qint64 takenInUtcMs = 0;
    QString handedOverDay;                 ///< local, "YYYY-MM-DD"; empty: not handed over
    QUuid reworkOf;                        ///< null: none
    std::vector<DeviationKind> deviations; ///< in the order of the acts
    std::vector<DigestBatch> batches;
    std::vector<PartTime> parts; ///< of a repair that was handed over: those that have both times
    bool readable = true;        ///< false: its events do not fold; then only repair and bench are known
    bool operator==(const RepairDigest&) const = default;
};

/// From a record and its deviations.
[[nodiscard]] RepairDigest digestOf(const JobRecord& record, const std::vector<Deviation>& deviations);
/// From its events: unreadable where they do not fold. events: at least one.
[[nodiscard]] RepairDigest digestOf(const std::vector<Event>& events, const Catalogue& catalogue,
                                    const DeviationLimits& limits);

/// Says by which limits and sheets digests are made: two marks are equal only where both are.
[[nodiscard]] QString digestMark(const Catalogue& catalogue, const DeviationLimits& limits);

} // namespace strandbench
