// SPDX-License-Identifier: GPL-3.0-or-later
// The stock of filler and hardener in words.
#pragma once

#include "material/catalogue.h"
#include "stock/stock_notes.h"

#include <QString>

namespace strandbench {

class Words;

/// "Demo mixed strand", "Hardener"; of a sheet that is not loaded its id.
[[nodiscard]] QString stockProductName(const QString& product, const Catalogue& catalogue);
/// "Demo mixed strand · lot F-77"
[[nodiscard]] QString stockLotName(const StockLot& lot, const Catalogue& catalogue);
/// Why a package ends: "Skin on it".
[[nodiscard]] QString stockEndText(StockEnd end);
/// Why an amount was put right: "Spilled".
[[nodiscard]] QString stockChangeText(StockChange change);
/// What a movement was: "batch of job 4421", "counted", "thrown away: skin on it".
[[nodiscard]] QString stockMoveText(const StockMovement& movement);
/// What is to be told of a lot, by the codes of notesOf(): one sentence.
[[nodiscard]] QString stockNoteText(const Reason& reason, const Words& words);
/// "1.2 kg" from a kilogram on, else as filler is told: "620 g".
[[nodiscard]] QString stockMass(Mass mass, const Words& words);
/// A day as it is written in the language.
[[nodiscard]] QString stockDay(const QDate& day, const Words& words);

} // namespace strandbench
