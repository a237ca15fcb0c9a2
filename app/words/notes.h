// SPDX-License-Identifier: GPL-3.0-or-later
// What is recorded beside the steps, in words: photos, remarks, and why and where a job is parked.
#pragma once

#include "repair/event.h"

#include <QString>

#include <vector>

namespace strandbench {

/// "As found", as it stands alone.
[[nodiscard]] QString photoMomentName(PhotoMoment moment);
/// "as found", as it stands in a list.
[[nodiscard]] QString photoMomentInList(PhotoMoment moment);

/// The remarks offered for a tap, by code, in the order shown.
[[nodiscard]] const std::vector<QString>& commonNotes();
/// A remark as it is read: a common one's sentence, or the text as keyed in.
[[nodiscard]] QString noteText(const Noted& note);

/// Why a job may be parked by choice, by code, in the order shown.
[[nodiscard]] const std::vector<QString>& parkReasons();
/// "waits for a part"; empty for none.
[[nodiscard]] QString parkReason(const QString& code);
/// The places where a job parked for this reason may go, by code; the most likely one first.
[[nodiscard]] std::vector<QString> parkPlaces(const QString& reason);
/// Where a parked job is: "to the welding shop", "to Ada", or that it stays at the bench. Takes Parked::to, which
/// holds the code of a place or a person's name.
[[nodiscard]] QString parkedWhere(const QString& to);

} // namespace strandbench
