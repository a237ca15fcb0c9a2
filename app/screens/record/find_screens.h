// SPDX-License-Identifier: GPL-3.0-or-later
// Finding what was done long ago: a text is keyed in or scanned, and what it names is shown; a lot leads to every batch
// that took of it.
#pragma once

#include "screens/frame/paged_rows.h"
#include "screens/paper/paper_worker.h"
#include "touch/letter_keys.h"

namespace strandbench {

/// What is looked for: job, panel, person, lot, words of notes.
class FindScreen final : public Screen {
    Q_OBJECT
public:
    FindScreen(const Surroundings& around, const QString& text, QWidget* parent = nullptr);
    bool scanned(const QString& text) override; ///< is looked for at once

Q_SIGNALS:
    void wanted(const QString& text);

private:
    void give(const QString& text);

    FitLabel* m_typed = nullptr;
    LetterKeys* m_keys = nullptr;
};

/// Lots and repairs that a text names, the newest repairs first; more of them as they are asked for.
class FoundScreen final : public Screen {
    Q_OBJECT
public:
    FoundScreen(const Surroundings& around, const QString& text, QWidget* parent = nullptr);

Q_SIGNALS:
    void repairTapped(const QUuid& repair);
    void lotTapped(const strandbench::StockLot& lot);

private:
    void ask(qint64 before);
    void show(const Logged<FoundBook>& book);
    [[nodiscard]] PagedRows::MakeRow lotRow(const StockLot& lot, std::size_t index);
    [[nodiscard]] PagedRows::MakeRow repairRow(const FoundRepair& found, std::size_t index);
    [[nodiscard]] PagedRows::MakeRow olderRow(qint64 before);

    QString m_text;
    PagedRows* m_rows = nullptr;
    FitLabel* m_told = nullptr;
};

/// Every batch that took of a lot, the newest first; a tap leads to its repair's record.
class LotTraceScreen final : public Screen {
    Q_OBJECT
public:
    LotTraceScreen(const Surroundings& around, const StockLot& lot, QWidget* parent = nullptr);
    /// Writes the recall list as stem.csv and stem.pdf, beside the glass, and tells what became of it. The way on
    /// cancels it.
    void writeRecall(const QString& stem, const std::vector<LotUse>& uses);

Q_SIGNALS:
    void usesRead(const std::vector<strandbench::LotUse>& uses);
    void repairTapped(const QUuid& repair);
    void recallWanted(); ///< as files

private:
    void show(const Logged<std::vector<LotUse>>& uses);
    void tell(const QString& text);
    void offerWayOn();
    [[nodiscard]] PagedRows::MakeRow rowOf(const LotUse& use, std::size_t index);

    StockLot m_lot;
    PagedRows* m_rows = nullptr;
    FitLabel* m_told = nullptr;
    bool m_anyUse = false;
    bool m_writing = false;
    PaperWorker m_worker;
};

} // namespace strandbench
