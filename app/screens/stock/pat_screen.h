// SPDX-License-Identifier: GPL-3.0-or-later
// A test pat of a lot: puddle and bead at true size, then its clock until it is told that it has gelled.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

class PatScreen final : public Screen {
    Q_OBJECT
public:
    PatScreen(const Surroundings& around, const LotOfProduct& lot, QWidget* parent = nullptr);

    void tick() override;

Q_SIGNALS:
    void told(const strandbench::Payload& act);

private:
    void buildMix(const ProductSheet& sheet);
    void buildClock();
    void mixed(const ProductSheet& sheet);

    LotOfProduct m_lot;
    std::optional<RunningPat> m_pat;
    FitLabel* m_figure = nullptr;
    FitLabel* m_until = nullptr;
};

} // namespace strandbench
