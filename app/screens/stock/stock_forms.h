// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked when the stock changes: which product and lot, how much, why, until when, how warm.
#pragma once

#include "screens/job/lot_keys.h"
#include "stock/ledger.h"

namespace strandbench {

/// Which product came in: every sheet of the bench, and the hardener.
[[nodiscard]] Screen* makeStockProductScreen(const Surroundings& around,
                                             const std::function<void(const QString& product)>& chosen,
                                             QWidget* parent);

/// Which lot is printed on it: keyed in or scanned.
class StockLotNumberScreen final : public Screen {
    Q_OBJECT
public:
    /// typed: what is known of it already.
    StockLotNumberScreen(const Surroundings& around, const QString& product, const QString& typed,
                         QWidget* parent = nullptr);
    bool scanned(const QString& text) override;

Q_SIGNALS:
    void given(const QString& lot);

private:
    void give(const QString& text);

    LotKeys* m_keys = nullptr;
};

/// How many packages came in, and how much is in each.
[[nodiscard]] Screen* makeBookInScreen(const Surroundings& around, const StockLot& lot,
                                       const std::function<void(int packages, Mass each)>& done,
                                       std::function<void()> changeUnits, QWidget* parent);
/// Whether a date is printed on them. printed: the date is asked for next.
[[nodiscard]] Screen* makeDatedScreen(const Surroundings& around, const StockLot& lot,
                                      const std::function<void()>& printed, const std::function<void()>& notPrinted,
                                      QWidget* parent);
/// The date that is printed.
[[nodiscard]] Screen* makeBestBeforeScreen(const Surroundings& around, const StockLot& lot,
                                           const std::function<void(const QDate& day)>& done, QWidget* parent);
/// Stock-take: how much of the lot is there.
[[nodiscard]] Screen* makeCountScreen(const Surroundings& around, const StockLot& lot,
                                      const std::function<void(Mass there)>& done, std::function<void()> changeUnits,
                                      QWidget* parent);
/// Why there is more or less of it, and then how much.
[[nodiscard]] Screen* makeChangeWhyScreen(const Surroundings& around, const StockLot& lot,
                                          const std::function<void(StockChange reason, bool less)>& chosen,
                                          QWidget* parent);
[[nodiscard]] Screen* makeChangeByScreen(const Surroundings& around, const StockLot& lot, StockChange reason, bool less,
                                         const std::function<void(Mass by)>& done, std::function<void()> changeUnits,
                                         QWidget* parent);
/// Why the open package ends, and then how much is thrown away with it.
[[nodiscard]] Screen* makeEndWhyScreen(const Surroundings& around, const StockLot& lot,
                                       const std::function<void(StockEnd reason)>& chosen, QWidget* parent);
[[nodiscard]] Screen* makeThrownAwayScreen(const Surroundings& around, const StockLot& lot, StockEnd reason,
                                           const std::function<void(Mass thrownAway)>& done,
                                           std::function<void()> changeUnits, QWidget* parent);
/// How cold or hot the place was that it came from; or what a probe in its middle reads.
[[nodiscard]] Screen* makeStockTemperatureScreen(const Surroundings& around, const StockLot& lot, bool probe,
                                                 const std::function<void(Temperature)>& done,
                                                 std::function<void()> changeUnits, QWidget* parent);
/// Below how much of a product it is reordered; nothing: never.
[[nodiscard]] Screen* makeReorderLevelScreen(const Surroundings& around, const QString& product,
                                             const std::function<void(Mass level)>& done,
                                             std::function<void()> changeUnits, QWidget* parent);

} // namespace strandbench
