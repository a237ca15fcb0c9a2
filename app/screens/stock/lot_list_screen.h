// SPDX-License-Identifier: GPL-3.0-or-later
// Every lot that the bench mixed of, the newest first; a tap shows what its batches taught.
#pragma once

#include "screens/frame/paged_rows.h"

namespace strandbench {

class LotListScreen final : public Screen {
    Q_OBJECT
public:
    LotListScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void lotTapped(const strandbench::LotOfProduct& lot);

private:
    [[nodiscard]] PagedRows::MakeRow rowOf(const LotOfProduct& lot, std::size_t index);
};

/// "Demo mixed strand · hardener lot H7"
[[nodiscard]] QString lotTitle(const LotOfProduct& lot, const Surroundings& around);

} // namespace strandbench
