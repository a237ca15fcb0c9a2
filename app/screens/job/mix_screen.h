// SPDX-License-Identifier: GPL-3.0-or-later
// Puddle and bead at true size, or weighed, of the product in the hand; 'Hardener in' starts the clock, unless the
// batch comes too hot, or the hands are wanted elsewhere.
#pragma once

#include "repair/mixing.h"
#include "screens/frame/screen.h"
#include "screens/job/station_screens.h"

namespace strandbench {

class MixScreen final : public Screen {
    Q_OBJECT
public:
    MixScreen(const Surroundings& around, const Repair& repair, BatchRef batch, const Ways& ways,
              QWidget* parent = nullptr);

    void tick() override;
    /// A known lot is taken in hand; of an unknown one it is asked what it is of.
    bool scanned(const QString& text) override;

private:
    void forecast();
    void buildNotice();
    void buildCards();
    [[nodiscard]] QWidget* puddleCard();
    [[nodiscard]] QWidget* figuresCard();
    [[nodiscard]] QLayout* keys();
    [[nodiscard]] TapButton* productKey();
    [[nodiscard]] TapButton* beadKey();
    [[nodiscard]] bool isLow() const;
    [[nodiscard]] TapButton* weighKey();
    void showScale();
    [[nodiscard]] QWidget* waysOut();
    void showHands();
    void showNotice(const QString& text, bool offers);
    void act();

    Repair m_repair;
    Ways m_ways; ///< copied: the window makes them anew for every screen
    BatchInHand m_batch;
    std::optional<BatchForecast> m_forecast; ///< as planned, with the newest reading
    std::optional<Reason> m_hold;            ///< why the hardener stays out
    QUuid m_other;                           ///< the repair that wants the hands
    QWidget* m_notice = nullptr;             ///< in the place of the sentence
    FitLabel* m_noticeText = nullptr;
    QWidget* m_waysOut = nullptr; ///< what is offered with the notice
    QWidget* m_more = nullptr;    ///< what gives way to it: the scale, and what can hurt
    TapButton* m_weigh = nullptr; ///< what the scale says; a tap takes it over as the filler
    TapButton* m_holdBack = nullptr;
};

/// The act of putting the hardener in, with the lots in use.
[[nodiscard]] HardenerIn hardenerIn(const Repair& repair, const BatchInHand& batch, Mass hardener,
                                    const std::optional<BatchForecast>& forecast, const Settings& settings);

/// "batch 1 of 2 · front face · mixed strand"
[[nodiscard]] QString batchContext(const Repair& repair, BatchRef ref, const Words& words);

} // namespace strandbench
