// SPDX-License-Identifier: GPL-3.0-or-later
// What was done long ago: found by words, a lot traced to its repairs, the recall list written.
#include "report/write_new.h"
#include "screens/record/find_screens.h"
#include "screens/beside/photo_screens.h"
#include "shell/bench_window.h"

#include <QDir>

using namespace Qt::StringLiterals;

namespace strandbench {

Screen* BenchWindow::makeFinding()
{
    switch (m_place) {
    case Place::Find: {
        auto* screen = new FindScreen(*m_around, m_finding.text, this);
        connect(screen, &FindScreen::wanted, this, [this](const QString& text) {
            m_finding.text = text;
            place(Place::Found);
        });
        return screen;
    }
    case Place::Found: {
        auto* screen = new FoundScreen(*m_around, m_finding.text, this);
        connect(screen, &FoundScreen::repairTapped, this, [this](const QUuid& id) { showRecord(id, Place::Found); });
        connect(screen, &FoundScreen::lotTapped, this, [this](const StockLot& lot) { traceLot(lot, Place::Found); });
        return screen;
    }
    case Place::LotTrace:
        return makeLotTrace();
    default:
        break;
    }
    return makeFolderScreen(
        *m_around, tr("Into which folder does the recall list go?"), m_folderLookedAt,
        [this](const QString& folder) {
            m_folderLookedAt = folder;
            place(Place::RecallFolder);
        },
        [this](const QString& folder) { writeRecall(folder); }, this);
}

void BenchWindow::showRecord(const QUuid& repair, Place from)
{
    m_recordOf = repair;
    m_afterRecord = from;
    place(Place::Record);
}

void BenchWindow::traceLot(const StockLot& lot, Place from)
{
    m_finding.lot = lot;
    m_finding.lotFrom = from;
    place(Place::LotTrace);
}

Screen* BenchWindow::makeLotTrace()
{
    auto* screen = new LotTraceScreen(*m_around, m_finding.lot, this);
    connect(screen, &LotTraceScreen::usesRead, this,
            [this](const std::vector<LotUse>& uses) { m_finding.uses = uses; });
    connect(screen, &LotTraceScreen::repairTapped, this, [this](const QUuid& id) {
        // From the lots of a repair: back from the other one leads to where the first was come from, not in a round.
        showRecord(id, m_finding.lotFrom == Place::RepairLots ? m_afterRecord : Place::LotTrace);
    });
    connect(screen, &LotTraceScreen::recallWanted, this, [this] {
        m_folderLookedAt = folderOfBackups();
        place(Place::RecallFolder);
    });
    return screen;
}

void BenchWindow::writeRecall(const QString& folder)
{
    const QString stem = QDir(folder).filePath(asFileName(
        u"recall-%1-%2-%3"_s.arg(m_finding.lot.product, m_finding.lot.lot, localDay(m_parts.bench.clock().now()))));
    place(Place::LotTrace);
    if (auto* trace = qobject_cast<LotTraceScreen*>(m_screen))
        trace->writeRecall(stem, m_finding.uses);
}

} // namespace strandbench
