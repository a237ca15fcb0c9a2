// SPDX-License-Identifier: GPL-3.0-or-later
// Every running mix as a big block, the one whose next act is due first in front: what the ribbon has no room for.
#pragma once

#include "pictures/mix_block.h"
#include "screens/frame/screen.h"

namespace strandbench {

class MixesScreen final : public Screen {
    Q_OBJECT
public:
    explicit MixesScreen(const Surroundings& around, QWidget* parent = nullptr);

    void tick() override;

Q_SIGNALS:
    void repairTapped(const QUuid& repair);

private:
    [[nodiscard]] int columns() const { return around().upright ? 2 : 3; }
    [[nodiscard]] std::size_t room() const { return around().upright ? 8 : 6; }

    std::vector<MixBlock*> m_blocks;
    std::vector<QUuid> m_shown;
    TapButton* m_more = nullptr;
    std::size_t m_first = 0;
};

} // namespace strandbench
