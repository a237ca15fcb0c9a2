// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf: looked at, booked in, counted, put right, ended, and what it says of a plan.
#include "screens/job/in_hand.h"
#include "screens/stock/stock_forms.h"
#include "screens/stock/stock_list_screen.h"
#include "screens/stock/stock_told.h"
#include "shell/bench_window.h"

namespace strandbench {

Screen* BenchWindow::makeStock()
{
    switch (m_place) {
    case Place::Stock:
        return makeStockList();
    case Place::StockLotPage:
        return makeStockLot();
    case Place::StockMoves:
        return makeStockMoves();
    case Place::Reorder:
    case Place::ReorderLevel:
        return makeReorder();
    default:
        break;
    }
    Screen* asking = makeBookIn();
    return asking ? asking : makeStockAct();
}

Screen* BenchWindow::makeStockList()
{
    auto* screen = new StockListScreen(*m_around, this);
    connect(screen, &StockListScreen::lotTapped, this, [this](const StockLot& lot) {
        m_stock.lot = lot;
        place(Place::StockLotPage);
    });
    connect(screen, &StockListScreen::unknownScanned, this, [this](const QString& lot) {
        m_stock.typed = lot;
        m_stock.more = false;
        place(Place::StockProduct);
    });
    connect(screen, &StockListScreen::bookInWanted, this, [this] {
        m_stock.typed.clear();
        m_stock.more = false;
        place(Place::StockProduct);
    });
    connect(screen, &StockListScreen::reorderWanted, this, [this] { place(Place::Reorder); });
    return screen;
}

Screen* BenchWindow::makeStockLot()
{
    auto* screen = new StockLotScreen(*m_around, m_stock.lot, this);
    connect(screen, &StockLotScreen::wanted, this, &BenchWindow::wishOfStock);
    return screen;
}

Screen* BenchWindow::makeStockMoves()
{
    auto* screen = new StockMovesScreen(*m_around, m_stock.lot, this);
    connect(screen, &StockMovesScreen::traceWanted, this, [this] { traceLot(m_stock.lot, Place::StockMoves); });
    return screen;
}

void BenchWindow::wishOfStock(StockWish wish)
{
    switch (wish) {
    case StockWish::Open:
        return tellOfStock(StockOpened{m_stock.lot});
    case StockWish::Count:
        return place(Place::StockCount);
    case StockWish::Change:
        return place(Place::StockChangeWhy);
    case StockWish::End:
        return place(Place::StockEndWhy);
    case StockWish::Moved:
        return place(Place::StockMoved);
    case StockWish::Probe:
        return place(Place::StockProbe);
    case StockWish::Movements:
        return place(Place::StockMoves);
    case StockWish::Pat:
        return tryLot();
    case StockWish::MorePackages:
        m_stock.more = true;
        return place(Place::StockBookIn);
    }
}

void BenchWindow::tryLot()
{
    Settings wanted = m_parts.settings;
    const bool hardener = m_stock.lot.product == hardenerProduct;
    inhand::useLot(wanted, m_stock.lot.product, m_stock.lot.lot);
    QString tube = inhand::lotInUse(wanted, hardenerKey);
    const StockState* next = m_parts.bench.stock().ledger().nextOf(hardenerProduct);
    if (tube.isEmpty() && next && !next->ended) {
        tube = next->of.lot;
        inhand::useLot(wanted, hardenerKey, tube);
    }
    const auto& sheets = m_parts.bench.planning().catalogue.sheets();
    if (tube.isEmpty() || sheets.empty())
        return m_screen->showTrouble(tr("No lot of hardener is known."),
                                     tr("Book in the tube that is open, then try."));
    // A tube is tried with the product that is used most: what the bench chose first, else the first sheet.
    const QString product = !hardener                 ? m_stock.lot.product
                            : wanted.products.empty() ? sheets.front().id
                                                      : wanted.products.begin()->second;
    m_lot = {product, tube};
    m_afterLot = Place::StockLotPage;
    remember(wanted, Place::LotPage);
}

QString BenchWindow::draftOwner() const
{
    if (m_place >= Place::StockProduct && m_place <= Place::ReorderLevel)
        return m_stock.lot.product + u'/' + m_stock.lot.lot;
    return m_repair ? m_repair->toString() : QString();
}

void BenchWindow::tellOfStock(const Payload& payload)
{
    write(stockSubject(m_stock.lot), payload, {}, [this] {
        const QString owner = draftOwner() + u'/';
        dropDraft();
        m_drafts.removeIf([&owner](const auto& each) { return each.key().startsWith(owner); });
        place(Place::StockLotPage);
    });
}

Screen* BenchWindow::makeStockNotes(const Repair& repair)
{
    const RepairPlan plan = repair.plan && !repair.replanDue() ? *repair.plan : m_parts.bench.plan(repair);
    auto* screen = new StockNotesScreen(*m_around, repair, plan, this);
    connect(screen, &StockNotesScreen::shelfWanted, this, [this] {
        m_stock = {};
        m_stock.from = Place::StockNotes;
        place(Place::Stock);
    });
    return screen;
}

Screen* BenchWindow::makeBookIn()
{
    const auto came = [this] {
        m_stock.came.of = m_stock.lot;
        tellOfStock(m_stock.came);
    };
    switch (m_place) {
    case Place::StockProduct:
        return makeStockProductScreen(
            *m_around,
            [this](const QString& product) {
                m_stock.lot.product = product;
                place(Place::StockLotNumber);
            },
            this);
    case Place::StockLotNumber: {
        auto* screen = new StockLotNumberScreen(*m_around, m_stock.lot.product, m_stock.typed, this);
        connect(screen, &StockLotNumberScreen::given, this, [this](const QString& lot) {
            m_stock.typed = lot;
            m_stock.lot.lot = lot;
            place(Place::StockBookIn);
        });
        return screen;
    }
    case Place::StockBookIn:
        return makeBookInScreen(
            *m_around, m_stock.lot,
            [this](int packages, Mass each) {
                m_stock.came = {m_stock.lot, packages, each, {}};
                place(Place::StockDated);
            },
            [this] { changeUnits(); }, this);
    case Place::StockDated:
        return makeDatedScreen(
            *m_around, m_stock.lot, [this] { place(Place::StockBestBefore); }, came, this);
    case Place::StockBestBefore:
        return makeBestBeforeScreen(
            *m_around, m_stock.lot,
            [this, came](const QDate& day) {
                m_stock.came.bestBefore = day;
                came();
            },
            this);
    default:
        return nullptr;
    }
}

Screen* BenchWindow::makeStockAct()
{
    const StockLot& lot = m_stock.lot;
    const auto units = [this] { changeUnits(); };
    switch (m_place) {
    case Place::StockCount:
        return makeCountScreen(
            *m_around, lot,
            [this](Mass there) {
                tellOfStock(StockCounted{m_stock.lot, there});
            },
            units, this);
    case Place::StockChangeWhy:
        return makeChangeWhyScreen(
            *m_around, lot,
            [this](StockChange reason, bool less) {
                m_stock.change = reason;
                m_stock.less = less;
                place(Place::StockChangeBy);
            },
            this);
    case Place::StockChangeBy:
        return makeChangeByScreen(
            *m_around, lot, m_stock.change, m_stock.less,
            [this](Mass by) {
                tellOfStock(StockAdjusted{m_stock.lot, by, m_stock.less, m_stock.change});
            },
            units, this);
    case Place::StockEndWhy:
        return makeEndWhyScreen(
            *m_around, lot,
            [this](StockEnd reason) {
                m_stock.end = reason;
                if (reason == StockEnd::UsedUp)
                    return tellOfStock(StockEnded{m_stock.lot, reason, grams(0)});
                place(Place::StockThrownAway);
            },
            this);
    case Place::StockThrownAway:
        return makeThrownAwayScreen(
            *m_around, lot, m_stock.end,
            [this](Mass away) {
                tellOfStock(StockEnded{m_stock.lot, m_stock.end, away});
            },
            units, this);
    case Place::StockMoved:
        return makeStockTemperatureScreen(
            *m_around, lot, false,
            [this](Temperature from) {
                tellOfStock(StockMoved{m_stock.lot, from});
            },
            units, this);
    default:
        break;
    }
    return makeStockTemperatureScreen(
        *m_around, lot, true,
        [this](Temperature middle) {
            tellOfStock(StockProbed{m_stock.lot, middle});
        },
        units, this);
}

Screen* BenchWindow::makeReorder()
{
    if (m_place == Place::Reorder) {
        auto* screen = new ReorderScreen(*m_around, this);
        connect(screen, &ReorderScreen::productTapped, this, [this](const QString& product) {
            m_stock.lot.product = product;
            place(Place::ReorderLevel);
        });
        return screen;
    }
    return makeReorderLevelScreen(
        *m_around, m_stock.lot.product,
        [this](Mass level) {
            Settings wanted = m_parts.settings;
            wanted.reorderBelow[m_stock.lot.product] = level;
            dropDraft();
            remember(wanted, Place::Reorder);
        },
        [this] { changeUnits(); }, this);
}

} // namespace strandbench
