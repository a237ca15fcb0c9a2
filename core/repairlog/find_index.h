// SPDX-License-Identifier: GPL-3.0-or-later
// What repairs are found by years later: words, people, lots. It follows from the log alone and lies in a file of its
// own beside it, so that the record stays what happened and nothing else; where it is gone, damaged or of another log
// it is made anew.
#pragma once

#include "repairlog/repair_log.h"
#include "review/digest.h"
#include "stock/stock_acts.h"

#include <memory>

namespace strandbench {

class SqlConnection;

/// A repair that a search found.
struct FoundRepair {
    QUuid repair;
    QString job;
    QString panel;
    QStringList people; ///< everybody who told something, in the order of coming
    QStringList lots;   ///< of filler and hardener, in the order mixed
    qint64 takenInUtcMs = 0;
    qint64 place = 0; ///< among all: of a later repair it is greater
    bool operator==(const FoundRepair&) const = default;
};

/// One batch that took of a lot.
struct LotUse {
    StockLot of;
    QUuid repair;
    QString job;
    QString panel;
    QString person; ///< who mixed it; empty: not told
    QString localDay;
    qint64 utcMs = 0;
    Mass amount; ///< of this product in the batch
    bool finishing = false;
    int batch = 0; ///< index in the plan
    bool operator==(const LotUse&) const = default;
};

/// Where the index of a log lies.
[[nodiscard]] QString findIndexPath(const QString& log);

/// Lives in the thread that opened it.
class FindIndex {
public:
    /// Opens the index, or makes an empty one; what lies there and is no index of this version is thrown away.
    [[nodiscard]] static Logged<std::unique_ptr<FindIndex>> open(const QString& path);
    ~FindIndex();
    FindIndex(const FindIndex&) = delete;
    FindIndex& operator=(const FindIndex&) = delete;

    /// Takes in what the log holds beyond the index, at most so many events of each bench, in one transaction; or, once
    /// that is much, puts a part of its words in order. True when nothing is left to do. Where the log is another than
    /// the one that was indexed (restored, replaced), it begins anew.
    [[nodiscard]] Logged<bool> catchUp(const RepairLog& log, int most);

    /// Repairs that hold every word of a text in job, panel, people, lots or notes, the newest first, at most so many,
    /// before a place (0: from the newest). A word that ends in two letters or digits or more also finds what begins
    /// with it; case and accents do not count. Empty of a text without a letter or digit.
    [[nodiscard]] Logged<std::vector<FoundRepair>> search(const QString& text, int most, qint64 before = 0) const;

    /// Batches that took of a lot, the newest first, at most so many, before a time (0: from the newest).
    [[nodiscard]] Logged<std::vector<LotUse>> usesOf(const StockLot& lot, int most, qint64 beforeUtcMs = 0) const;
    /// The products under which a lot of this name was mixed.
    [[nodiscard]] Logged<std::vector<StockLot>> lotsNamed(const QString& lot) const;

    // Digests are made when they are asked for, and kept until their repair goes on, or until limits or sheets change:
    // `mark` is digestMark().

    /// Repairs with an act on one of these local days, both included, whose digest is to be made, at most so many.
    [[nodiscard]] Logged<std::vector<QUuid>> undigested(const QString& fromDay, const QString& toDay,
                                                        const QString& mark, int most) const;
    /// The same of those that took of a lot.
    [[nodiscard]] Logged<std::vector<QUuid>> undigested(const StockLot& lot, const QString& mark, int most) const;
    /// How many have an act on one of these days.
    [[nodiscard]] Logged<int> repairsOf(const QString& fromDay, const QString& toDay) const;
    [[nodiscard]] Logged<void> keep(const std::vector<RepairDigest>& digests, const QString& mark);
    /// Digests of these days, in the order of taking in; nothing as long as one of them is to be made: undigested().
    using Digests = std::optional<std::vector<RepairDigest>>;
    [[nodiscard]] Logged<Digests> digests(const QString& fromDay, const QString& toDay, const QString& mark) const;
    /// The same of those that took of a lot.
    [[nodiscard]] Logged<Digests> digests(const StockLot& lot, const QString& mark) const;

private:
    explicit FindIndex(std::unique_ptr<SqlConnection> connection);
    [[nodiscard]] Logged<bool> holds(const RepairLog& log) const; ///< everything indexed stands in this log
    [[nodiscard]] Logged<void> beginAnew() const;
    [[nodiscard]] Logged<bool> tidy() const;
    [[nodiscard]] Logged<bool> takeIn(const RepairLog& log, const QString& origin, int most) const;

    std::unique_ptr<SqlConnection> m_sql;
};

} // namespace strandbench
