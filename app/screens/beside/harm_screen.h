// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt at a step: each material's label, gloves, mask, first aid and waste, by whole pages; and the key to it.
#pragma once

#include "harm/harm.h"
#include "screens/frame/side_key.h"

namespace strandbench {

/// What is met at a step or station of a repair: whose panel, and which product is in the hand.
struct HarmHere {
    QString place;   ///< code of resources/harm
    QString product; ///< as the shop calls it; empty: none that states hazards
    std::vector<HarmShown> met;
};

/// place: a step's code, or that of a station; batch: whose product is, or was, mixed.
[[nodiscard]] HarmHere harmHere(const Surroundings& around, const Repair& repair, const QString& place,
                                const std::optional<BatchRef>& batch);
/// The place of the repair's present step, with its batch; empty where nothing is met.
[[nodiscard]] HarmHere harmHere(const Surroundings& around, const Repair& repair, const std::optional<Look>& look);

/// 'Hazards', with the pictograms; empty where nothing is met.
[[nodiscard]] std::optional<SideKey> harmKey(const HarmHere& here, const Ways& ways);
/// As large as a side key unless its layout makes it larger.
[[nodiscard]] TapButton* makeHarmKey(const Theme& theme, const HarmHere& here, const Ways& ways, QWidget* parent);

class HarmScreen final : public Screen {
    Q_OBJECT
public:
    HarmScreen(const Surroundings& around, const Repair& repair, const HarmHere& here, QWidget* parent = nullptr);

private:
    /// Each makes one page; from: the first statement on it.
    [[nodiscard]] QWidget* overviewPage(QWidget* parent);
    [[nodiscard]] QWidget* labelPage(const HarmShown& shown, std::size_t from, QWidget* parent);
    [[nodiscard]] QWidget* doPage(const HarmShown& shown, QWidget* parent);
    [[nodiscard]] QWidget* precautionsPage(const HarmShown& shown, std::size_t from, QWidget* parent);

    HarmHere m_here;
};

} // namespace strandbench
