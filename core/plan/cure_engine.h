// SPDX-License-Identifier: GPL-3.0-or-later
// Where gel, sand and peak come from: the cure model, solved for this batch on this panel.
#pragma once

#include "cure/solve.h"
#include "learning/log_rate.h"
#include "plan/assumptions.h"
#include "plan/repair_plan.h"

#include <tl/expected.hpp>

#include <map>
#include <memory>

namespace strandbench {

/// A layer as it will be laid: of which filler, where, how thick.
struct LayerQuestion {
    const ProductSheet& sheet;
    Reading reading; ///< filler and hardener start by the air's temperature, the stack at the panel's
    Fraction hardener;
    Length laid; ///< built proud included
    std::vector<StackLayer> stack;
};

/// What becomes of a layer, counted from 'hardener in'.
struct LayerCure {
    Duration gel;
    Duration sand;
    Temperature peak;
    CureCase cureCase; ///< that these come from
};

/// An answer, or the stop that stands in its place: sheet_times_unfit (the sheet's two times fit no law of cure; the
/// sanding times that would), never_sands (within a day), cure_unsolved.
template <class T> using CureAnswer = tl::expected<T, Reason>;

/// How much faster than its sheet a product cures, by the sheet's version; what is not named cures as its sheet says.
using CureRates = std::map<SheetVersion, LogRate>;

/// Solves the cure model for plans and clocks. Keeps each sheet's calibration; may be asked from several threads.
/// A copy shares the calibrations, which hang on no assumption.
class CureEngine {
public:
    explicit CureEngine(Assumptions assumptions = {});
    /// The same engine under other assumptions.
    [[nodiscard]] CureEngine with(const Assumptions& assumptions) const;
    /// The same engine for products that cure faster or slower than their sheets.
    [[nodiscard]] CureEngine with(const CureRates& rates) const;
    [[nodiscard]] const CureRates& rates() const { return m_rates; }

    /// The case of a layer, and of the puddle on the board.
    [[nodiscard]] CureAnswer<CureCase> layerCase(const LayerQuestion& question) const;
    [[nodiscard]] CureAnswer<CureCase> boardCase(const ProductSheet& sheet, Temperature air, Fraction hardener,
                                                 Length puddleHeight) const;

    [[nodiscard]] CureAnswer<LayerCure> layer(const LayerQuestion& question) const;
    /// How a layer's case turns out; for a case that was stored, or one that was changed.
    [[nodiscard]] CureAnswer<LayerCure> solve(const CureCase& cureCase, CureUntil until = CureUntil::Horizon) const;
    /// When the puddle of a case has gelled.
    [[nodiscard]] CureAnswer<Duration> solveBoard(const CureCase& puddle) const;
    /// When the puddle on the board has gelled: the pot life.
    [[nodiscard]] CureAnswer<Duration> boardGel(const ProductSheet& sheet, Temperature air, Fraction hardener,
                                                Length puddleHeight) const;
    /// The greatest lift whose peak stays under the limit, up to the question's own laid thickness.
    [[nodiscard]] CureAnswer<std::optional<Length>> greatestLift(const LayerQuestion& question,
                                                                 Temperature limit) const;
    /// What filler and hardener begin with in air of this temperature.
    [[nodiscard]] Temperature fillerStart(Temperature air) const;
    /// Stored with every plan.
    [[nodiscard]] static QString name();

    /// A sheet's law of cure, calibrated once.
    [[nodiscard]] CureAnswer<CureKinetics> kineticsOf(const ProductSheet& sheet) const;

private:
    struct Calibrations;

    Assumptions m_assumptions;
    CureRates m_rates;
    std::shared_ptr<Calibrations> m_calibrations;
};

/// The times of a batch from those of its layer and its puddle.
[[nodiscard]] BatchTimes batchTimes(const LayerCure& layer, Duration boardGel, const ProductSheet& sheet);

} // namespace strandbench
