// SPDX-License-Identifier: GPL-3.0-or-later
// The questions that many repairs together answer, and the lots whose gels were seen.
#pragma once

#include "screens/frame/paged_rows.h"
#include "screens/figures/repairs_screen.h"

namespace strandbench {

class FigureListScreen final : public Screen {
    Q_OBJECT
public:
    explicit FigureListScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void figureTapped(strandbench::FigureKind kind);
};

/// Lots of hardener, each with the product that it was mixed with: the one whose gel was seen last first.
class FigureLotScreen final : public RepairsScreen {
    Q_OBJECT
public:
    FigureLotScreen(const Surroundings& around, FigurePeriod period, QWidget* parent = nullptr);

Q_SIGNALS:
    void lotTapped(const strandbench::GelLot& lot);

protected:
    [[nodiscard]] Worker::Work workOn(const Repairs& repairs) override;

private:
    void show(const std::vector<GelLotSeen>& lots);
    [[nodiscard]] PagedRows::MakeRow rowOf(const GelLotSeen& seen, std::size_t index);

    PagedRows* m_rows = nullptr;
    FitLabel* m_none = nullptr;
};

} // namespace strandbench
