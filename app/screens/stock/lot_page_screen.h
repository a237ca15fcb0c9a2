// SPDX-License-Identifier: GPL-3.0-or-later
// One lot: its batches with what was predicted and what was told, what each taught and why, and what is believed of
// the next.
#pragma once

#include "repair/mixing.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

class LotPageScreen final : public Screen {
    Q_OBJECT
public:
    LotPageScreen(const Surroundings& around, const LotOfProduct& lot, QWidget* parent = nullptr);

Q_SIGNALS:
    void patWanted();
    void forgetWanted();
    void beadWanted(); ///< to calibrate what its tube lays

private:
    struct Row {
        QString name;
        QString when;
        QString what;
        QString told;
        QString lesson;
    };
    [[nodiscard]] std::vector<Row> rows(const ProductSheet& sheet) const;
    [[nodiscard]] QWidget* makeRow(const Row& row, QWidget* parent);
    void buildBatches(const ProductSheet& sheet);
    [[nodiscard]] TapButton* beadKey();
    void buildBelief(const ProductSheet& sheet);

    LotOfProduct m_lot;
};

/// The key to the page of the lot in the hand: what the batch's product made of the hardener that is open. Not enabled
/// while that was not told.
[[nodiscard]] TapButton* makeLotPageKey(const Surroundings& around, const BatchInHand& batch, QWidget* parent,
                                        const std::function<void(const LotOfProduct&)>& tapped);

/// Why a lot is to be forgotten; a tap tells it.
[[nodiscard]] Screen* makeForgetScreen(const Surroundings& around, const LotOfProduct& lot,
                                       const std::function<void(const LotForgotten&)>& forget, QWidget* parent);

} // namespace strandbench
