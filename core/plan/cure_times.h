// SPDX-License-Identifier: GPL-3.0-or-later
// Where gel and sand times come from: one call, behind which the sheet's own times stand now and the
// cure engine later.
#pragma once

#include "plan/repair_plan.h"

namespace strandbench {

/// One batch on one layer: what its times depend on.
struct CureQuestion {
    const ProductSheet& sheet;
    Temperature air;
    Temperature panel;
    Fraction hardener;
    Length layer; ///< as laid, built proud included
    Length puddleHeight;
};

class CureTimes {
public:
    CureTimes() = default;
    CureTimes(const CureTimes&) = delete;
    CureTimes& operator=(const CureTimes&) = delete;
    virtual ~CureTimes() = default;

    [[nodiscard]] virtual BatchTimes times(const CureQuestion& question) const = 0;
    [[nodiscard]] virtual QString name() const = 0; ///< stored with every plan
};

/// The sheet's own times, scaled to the temperature and the hardener by A(T) and phi(c) of the cure model:
/// t = t_sheet / ( A(T) phi(c) ), A(T) = exp( -E/R (1/T - 1/T_ref) ), phi(c) = (c/c_ref)^p. The board at the
/// air's temperature, the layer at the panel's.
class SheetTimes final : public CureTimes {
public:
    [[nodiscard]] BatchTimes times(const CureQuestion& question) const override;
    [[nodiscard]] QString name() const override;
};

/// The factor by which a rate at this temperature and hardener exceeds the sheet's reference.
[[nodiscard]] double rateFactor(const ProductSheet& sheet, Temperature temperature, Fraction hardener);

} // namespace strandbench
