// SPDX-License-Identifier: GPL-3.0-or-later
// What a day is narrowed to, and why a repair is returned.
#pragma once

#include "review/day_review.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

/// By what the day's repairs are told apart.
[[nodiscard]] Screen* makeNarrowByScreen(const Surroundings& around, const QString& context,
                                         const std::function<void(NarrowBy)>& chosen, QWidget* parent);

/// The values that the day's repairs have, and how many have each; a tap chooses one.
class NarrowValueScreen final : public Screen {
    Q_OBJECT
public:
    /// ownBench: the origin of this bench; empty while it is not known.
    NarrowValueScreen(const Surroundings& around, const QString& context, NarrowBy by,
                      const std::vector<RepairDigest>& repairs, const QString& ownBench, QWidget* parent = nullptr);

Q_SIGNALS:
    void chosen(const strandbench::Narrowing& narrowing, const QString& inWords);
};

/// Why a repair that was handed over is returned; 'other' asks for words.
[[nodiscard]] Screen* makeReturnWhyScreen(const Surroundings& around, const QString& context,
                                          const std::function<void(const QString& reason)>& chosen, QWidget* parent);

} // namespace strandbench
