// SPDX-License-Identifier: GPL-3.0-or-later
// What was done long ago: found by words, a lot traced to its repairs, the recall list written.
#include "report/recall_list.h"
#include "report/write_new.h"
#include "screens/find_screens.h"
#include "screens/photo_screens.h"
#include "shell/bench_window.h"
#include "words/stock_words.h"

#include <QDir>
#include <QFileInfo>

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
    m_finding.told.clear();
    place(Place::LotTrace);
}

Screen* BenchWindow::makeLotTrace()
{
    auto* screen = new LotTraceScreen(*m_around, m_finding.lot, std::exchange(m_finding.told, {}), this);
    connect(screen, &LotTraceScreen::usesRead, this,
            [this](const std::vector<LotUse>& uses) { m_finding.uses = uses; });
    connect(screen, &LotTraceScreen::repairTapped, this, [this](const QUuid& id) { showRecord(id, Place::LotTrace); });
    connect(screen, &LotTraceScreen::recallWanted, this, [this] {
        m_folderLookedAt = folderOfBackups();
        place(Place::RecallFolder);
    });
    return screen;
}

void BenchWindow::writeRecall(const QString& folder)
{
    const QString product = stockProductName(m_finding.lot.product, m_parts.bench.planning().catalogue);
    const QString stem = QDir(folder).filePath(asFileName(
        u"recall-%1-%2-%3"_s.arg(m_finding.lot.product, m_finding.lot.lot, localDay(m_parts.bench.clock().now()))));
    const Paper paper = m_words->units() == UnitSystem::UsCustomary ? Paper::Letter : Paper::A4;
    const auto written = writeNew(stem + u".csv"_s, recallCsv(m_finding.uses)).and_then([&] {
        return writeNew(stem + u".pdf"_s, recallPdf(m_finding.lot, product, m_finding.uses, paper, *m_words));
    });
    //: %1 is a file’s name without its ending
    m_finding.told = written ? tr("Written as CSV and PDF: %1").arg(QFileInfo(stem).fileName())
                             : tr("Not written: %1").arg(written.error());
    place(Place::LotTrace);
}

} // namespace strandbench
