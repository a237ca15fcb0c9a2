// SPDX-License-Identifier: GPL-3.0-or-later
// What is in the hand at this bench: product and lots, as the settings remember them.
#pragma once

#include "bench/settings.h"
#include "quantity/fault.h"
#include "repair/mixing.h"
#include "screens/frame/scan_text.h"

namespace strandbench {

struct Surroundings;

namespace inhand {

/// The lot in use of a sheet or of hardenerKey; empty: not told.
[[nodiscard]] QString lotInUse(const Settings& settings, const QString& key);
/// The batch that is mixed next with the product that the bench uses for its class.
[[nodiscard]] BatchInHand batchInUse(const Repair& repair, BatchRef ref, const Surroundings& around);

/// What is believed of the batch's product with the hardener in use.
[[nodiscard]] LotBelief lotBelief(const BatchInHand& batch, const Surroundings& around);

/// The lots that are offered of a sheet or of hardenerKey: those that the settings remember, then those on the shelf
/// that have not ended, the one that is to be used next in front.
[[nodiscard]] QStringList lotsAtHand(const QString& key, const Surroundings& around);

/// Puts a lot in front, once; the list keeps the newest few.
void useLot(Settings& settings, const QString& key, const QString& lot);
void removeLot(Settings& settings, const QString& key, const QString& lot);

/// What a lot that is kept already is of, for a batch of this class: the sheet's id or hardenerKey; of the planned
/// class's products the one in use first. Empty: nobody told.
[[nodiscard]] QString knownAs(const QString& lot, const BatchInHand& batch, const Surroundings& around);

/// The product as the shop calls it where there are several of its class, else the class.
[[nodiscard]] QString productName(const BatchInHand& batch, const Repair& repair, const Surroundings& around);

/// A lot as shown: a long one may be broken in its middle.
[[nodiscard]] QString shownLot(const QString& lot);

} // namespace inhand
} // namespace strandbench
