// SPDX-License-Identifier: GPL-3.0-or-later
// One figure of the supervisor's, computed from the digests of many repairs: made beside the glass.
#pragma once

#include "quantity/codes.h"
#include "review/figures.h"

#include <map>
#include <optional>

namespace strandbench {

/// The questions that are asked of many repairs.
enum class FigureKind {
    Gel,        ///< of one lot
    Material,   ///< mixed against needed
    Right,      ///< the first time
    Times,      ///< planned against actual
    Deviations, ///< which come most often
};
template <> struct Codes<FigureKind> {
    static constexpr std::array<std::pair<FigureKind, const char*>, 5> table{{
        {FigureKind::Gel, "gel"},
        {FigureKind::Material, "material"},
        {FigureKind::Right, "right"},
        {FigureKind::Times, "times"},
        {FigureKind::Deviations, "deviations"},
    }};
};

/// How far back repairs are looked at, up to today.
enum class FigurePeriod { Month, Quarter, Year };
/// 30, 90 or 365, today included.
[[nodiscard]] int daysOf(FigurePeriod period);

/// What is asked.
struct FigureAsked {
    FigureKind kind = FigureKind::Gel;
    GelLot lot; ///< of Gel alone
    FigurePeriod period = FigurePeriod::Month;
};

/// What core computed of it: of the kind that was asked alone.
struct FigureFound {
    int repairs = 0;               ///< that could be read
    int unreadable = 0;            ///< that are counted nowhere
    int gels = 0;                  ///< of the lot
    std::optional<GelDrift> drift; ///< empty while there are fewer than two gels
    std::map<QUuid, QString> jobs; ///< of the gels' repairs
    std::vector<MaterialUsed> material;
    std::vector<FirstTimeRight> right;
    FirstTimeRight rightOfAll; ///< of all substrates; judged 0: none
    std::vector<PartTimes> times;
    std::vector<DeviationShare> deviations;
};
[[nodiscard]] FigureFound findFigure(const FigureAsked& asked, const std::vector<RepairDigest>& repairs);

} // namespace strandbench
