// SPDX-License-Identifier: GPL-3.0-or-later
// What many repairs say together: each figure answers one question.
#pragma once

#include "review/control_chart.h"
#include "review/digest.h"
#include "review/proportion.h"

namespace strandbench {

/// One gel that was seen: how long it took over how long the sheet says. 1: as the sheet says; above: slower.
struct GelPoint {
    qint64 utcMs = 0;
    QUuid repair;
    BatchRef batch;
    double ratio = 1;
    bool operator==(const GelPoint&) const = default;
};

/// A product with a lot of hardener: what a gel's time depends on.
struct GelLot {
    QString sheetId;
    QString hardenerLot;
    bool operator==(const GelLot&) const = default;
    bool operator<(const GelLot& other) const
    {
        return std::tie(sheetId, hardenerLot) < std::tie(other.sheetId, other.hardenerLot);
    }
};
/// Every lot with a gel that was seen and how many, the one seen last first.
struct GelLotSeen {
    GelLot lot;
    int gels = 0;
    qint64 lastUtcMs = 0;
};
[[nodiscard]] std::vector<GelLotSeen> gelLots(const std::vector<RepairDigest>& repairs);

/// Is this lot drifting? Chart of individuals and moving ranges, run rules, and EWMA about 1, which is the sheet.
struct GelDrift {
    std::vector<GelPoint> points; ///< oldest first
    IndividualsChart chart;
    std::vector<RunSignal> runs;
    EwmaChart ewma;
};
/// Of a lot's gels, oldest first. The fault of individualsChart(): fewer than two.
[[nodiscard]] Checked<GelDrift> gelDrift(const std::vector<RepairDigest>& repairs, const GelLot& lot);

/// How much was mixed that the plan did not ask for?
struct MaterialUsed {
    QString sheetId;
    int batches = 0;
    Mass planned; ///< filler that the plans asked for
    Mass mixed;
    Mass over;  ///< of the batches that were mixed larger than planned: how much larger
    Mass under; ///< of those mixed smaller
    bool operator==(const MaterialUsed&) const = default;
};
/// By product, the one with most over the plan first.
[[nodiscard]] std::vector<MaterialUsed> materialUsed(const std::vector<RepairDigest>& repairs);

/// How often is a repair right the first time?
struct FirstTimeRight {
    std::optional<Substrate> substrate;
    int judged = 0;              ///< handed over, no rework themselves, and signed off or returned
    int right = 0;               ///< of these: signed off
    ProportionInterval interval; ///< 95 %
};
/// By substrate, in the order of the substrates; those without a judged repair are left out.
[[nodiscard]] std::vector<FirstTimeRight> firstTimeRight(const std::vector<RepairDigest>& repairs);

/// Where does the time go?
struct PartTimes {
    JobPart part = JobPart::Prepare;
    int repairs = 0;
    Duration planned; ///< median
    Duration actual;  ///< median
    Duration slow;    ///< a tenth of the repairs took at least this long (nearest rank)
};
/// In the order of the job, of repairs that were handed over.
[[nodiscard]] std::vector<PartTimes> partTimes(const std::vector<RepairDigest>& repairs);

/// Which deviations come most often?
struct DeviationShare {
    DeviationKind kind = DeviationKind::NoReading;
    int count = 0;
    Fraction upTo; ///< share of all deviations that this one and those before it make up
};
/// The most frequent first; of equal ones in the order of their kinds.
[[nodiscard]] std::vector<DeviationShare> deviationShares(const std::vector<RepairDigest>& repairs);

} // namespace strandbench
