// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf of the bench: every lot with what is left of it, those with something to tell first; and what is to be
// reordered.
#pragma once

#include "screens/frame/paged_rows.h"
#include "stock/reorder.h"

namespace strandbench {

class StockListScreen final : public Screen {
    Q_OBJECT
public:
    explicit StockListScreen(const Surroundings& around, QWidget* parent = nullptr);
    bool scanned(const QString& text) override; ///< a lot: its page, or it is booked in

Q_SIGNALS:
    void lotTapped(const strandbench::StockLot& lot);
    void unknownScanned(const QString& lot);
    void bookInWanted();
    void reorderWanted();

private:
    [[nodiscard]] TapButton* reorderKey();
    [[nodiscard]] PagedRows::MakeRow rowOf(const StockState& state, std::size_t index);
};

/// Each product against the level below which it is reordered; a tap sets the level.
class ReorderScreen final : public Screen {
    Q_OBJECT
public:
    explicit ReorderScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void productTapped(const QString& product);

private:
    [[nodiscard]] PagedRows::MakeRow rowOf(const ReorderLine& line, std::size_t index);
};

} // namespace strandbench
