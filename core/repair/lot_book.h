// SPDX-License-Identifier: GPL-3.0-or-later
// What the bench knows of the lots that went into its batches: gels and 'it sands' of each batch and test pat, lot by
// lot, and what is believed of a lot for that. Made from events alone, of repairs and of lots.
#pragma once

#include "learning/lot.h"
#include "learning/lot_belief.h"
#include "material/sheet.h"
#include "repair/event.h"

#include <map>
#include <tuple>

namespace strandbench {

/// What learns together: a product's sheet and the hardener's lot.
struct LotOfProduct {
    QString sheetId;
    QString hardenerLot; ///< never empty: of a lot that nobody told nothing is learnt
    bool operator==(const LotOfProduct&) const = default;
    bool operator<(const LotOfProduct& other) const
    {
        return std::tie(sheetId, hardenerLot) < std::tie(other.sheetId, other.hardenerLot);
    }
};

/// The subject of a lot's own events, in the place of a repair's id: a name-based UUID, the same on every bench.
[[nodiscard]] QUuid lotSubject(const LotOfProduct& lot);
/// Of an event that is of a lot; empty of all others.
[[nodiscard]] std::optional<LotOfProduct> lotOf(const Payload& payload);

/// Why a supervisor lets a lot be forgotten, in the order offered: codes that app/words renders.
[[nodiscard]] const std::vector<QString>& forgetReasons();

/// A batch of a lot, or a test pat of it.
struct BatchOfLot {
    QUuid repair;   ///< null of a test pat
    QString job;    ///< of the repair; empty when it is not known any more
    BatchRef batch; ///< of a repair
    Instant hardenerIn;
    BatchTimes predicted; ///< by the sheet, for this batch; of a pat the board's gel alone
    std::optional<Instant> boardGelled;
    std::optional<Instant> panelGelled;
    std::optional<Instant> sands;
    bool forgotten = false; ///< told before the lot was forgotten: it no longer counts
    QByteArray sheetHash;   ///< of the version of the sheet that it was predicted by; empty where none was told

    [[nodiscard]] bool isPat() const { return repair.isNull(); }
    /// Predicted by this version of its sheet: what another version says of it teaches this one nothing.
    [[nodiscard]] bool by(const ProductSheet& sheet) const { return sheetHash.isEmpty() || sheetHash == sheet.hash; }
    /// What is learnt of a sheet goes by it.
    [[nodiscard]] bool counts(const ProductSheet& sheet) const { return !forgotten && by(sheet); }
    /// As log rates. A gel that was told at once, or in the very moment, tells nothing.
    [[nodiscard]] BatchTold told() const;
};

/// A test pat that has not gelled yet.
struct RunningPat {
    PatMixed mixed;
    Instant hardenerIn;
};

struct Forgotten {
    QString reason;
    QString person;
    Instant at;
};

class LotBook {
public:
    /// Takes in one more event; most are none of its business.
    void add(const Event& event);

    /// Lots that something was mixed of, the newest batch first.
    [[nodiscard]] std::vector<LotOfProduct> lots() const;
    /// Oldest first by the clock of the wall, pats and what is forgotten among them.
    [[nodiscard]] std::vector<BatchOfLot> batchesOf(const LotOfProduct& lot) const;
    /// What was learnt of the batches of batchesOf() that count for this version of the sheet, and their lessons in
    /// that order. A new version begins anew; an older one that a repair goes on with keeps what it has learnt.
    [[nodiscard]] LotLearnt learnt(const ProductSheet& sheet, const QString& hardenerLot) const;
    /// What is believed of a lot: of one that is not known, or not told, what its product's other lots and its sheet
    /// make likely.
    [[nodiscard]] LotBelief beliefOf(const ProductSheet& sheet, const QString& hardenerLot) const;
    [[nodiscard]] std::optional<RunningPat> patOf(const LotOfProduct& lot) const;
    [[nodiscard]] std::optional<Forgotten> forgottenOf(const LotOfProduct& lot) const;

private:
    struct Lot {
        std::vector<BatchOfLot> batches;
        std::optional<RunningPat> pat;
        std::optional<Forgotten> forgotten;
    };
    struct Prior {
        Belief rate;
        int otherLots = 0;
    };
    void hardenerIn(const HardenerIn& mixed, const Event& event);
    [[nodiscard]] BatchOfLot* batchOf(const QUuid& repair, BatchRef batch);
    [[nodiscard]] Prior priorOfLot(const ProductSheet& sheet, const QString& hardenerLot) const;
    [[nodiscard]] std::vector<BatchTold> toldOf(const LotOfProduct& lot, const ProductSheet& sheet) const;

    std::map<LotOfProduct, Lot> m_lots;
    std::map<QUuid, QString> m_jobs;
    std::map<std::pair<QUuid, BatchRef>, LotOfProduct> m_lotOfBatch;
};

/// The local day from which on batches still teach, "YYYY-MM-DD": LearningRules::remembered before now.
[[nodiscard]] QString lotsFromDay(const Instant& now, const LearningRules& rules = {});

/// Why a lot's own event cannot follow on those before it; empty when it can. Such are the events of one lot alone.
[[nodiscard]] std::optional<Fault> followsOfLot(const std::vector<Event>& before, const Event& event);

} // namespace strandbench
