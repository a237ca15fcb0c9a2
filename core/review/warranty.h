// SPDX-License-Identifier: GPL-3.0-or-later
// What a record must hold to stand up later, and what of that it lacks: listed before it is signed.
#pragma once

#include "review/job_record.h"

namespace strandbench {

/// A thing that the record lacks.
enum class RecordGap {
    SubstrateNotIdentified, ///< not answered, or 'unknown'
    SubstrateProofLacking,  ///< answered, but not what told it
    PhotoLacking,           ///< code of the moment
    FillerLotLacking,       ///< batch
    HardenerLotLacking,     ///< batch
    ReadingLacking,         ///< none before the first hardener
    ReadingKeyedIn,         ///< every reading was keyed in: no instrument gave it
    HardenerNotWeighed,     ///< batch: as planned or by the bead, not by the scale
    EdgesNotTold,           ///< batch
    SandsNotTold,           ///< batch: nail and paper test
    TestsLacking,           ///< how many tests of the handing over
    PersonLacking,          ///< how many acts without a name
    OverrideNameless,       ///< code of the stop: nobody is named who allowed it
};
template <> struct Codes<RecordGap> {
    static constexpr std::array<std::pair<RecordGap, const char*>, 13> table{{
        {RecordGap::SubstrateNotIdentified, "substrate_not_identified"},
        {RecordGap::SubstrateProofLacking, "substrate_proof_lacking"},
        {RecordGap::PhotoLacking, "photo_lacking"},
        {RecordGap::FillerLotLacking, "filler_lot_lacking"},
        {RecordGap::HardenerLotLacking, "hardener_lot_lacking"},
        {RecordGap::ReadingLacking, "reading_lacking"},
        {RecordGap::ReadingKeyedIn, "reading_keyed_in"},
        {RecordGap::HardenerNotWeighed, "hardener_not_weighed"},
        {RecordGap::EdgesNotTold, "edges_not_told"},
        {RecordGap::SandsNotTold, "sands_not_told"},
        {RecordGap::TestsLacking, "tests_lacking"},
        {RecordGap::PersonLacking, "person_lacking"},
        {RecordGap::OverrideNameless, "override_nameless"},
    }};
};

struct Lacking {
    RecordGap gap = RecordGap::ReadingLacking;
    std::vector<Argument> arguments; ///< in the order that the gap's comment gives, but for the batch
    std::optional<BatchRef> batch;
    bool operator==(const Lacking&) const = default;
};

/// What a record lacks, in the order of the job. What it must hold is common practice, no source; the vehicle maker and
/// whoever gives the warranty may ask for more.
[[nodiscard]] std::vector<Lacking> lackingOf(const JobRecord& record);

} // namespace strandbench
