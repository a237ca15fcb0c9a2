// SPDX-License-Identifier: GPL-3.0-or-later
// Fill or stop, and with what: the decision table and the refusals, each with its reason.
#pragma once

#include "air/gate.h"
#include "material/catalogue.h"
#include "quantity/fault.h"
#include "quantity/reason.h"
#include "substrate/assessment.h"

#include <map>

namespace strandbench {

/// One cell of "which filler where" with its reason (a code).
struct TableCell {
    Suitability suitability = Suitability::No;
    QString reason;
};

/// The columns: five substrates and three damages that have a column of their own.
/// Codes: frp, smc, steel, galvanised, aluminium, weld_seam, bond_seam, hole.
class DecisionTable {
public:
    using Cells = std::map<std::pair<FillerClass, QString>, TableCell>;

    DecisionTable() = default;
    /// source: the bytes that it was read from (exchange reads them), hashed and stored with every plan.
    DecisionTable(Cells cells, QByteArray source, QByteArray hash)
        : m_cells(std::move(cells)), m_source(std::move(source)), m_hash(std::move(hash))
    {}

    /// Every column's code, in the order of the delivered table.
    [[nodiscard]] static const QStringList& columns();

    /// The cell of a fibre-reinforced class in a column; No with reason "no_cell" where there is none:
    /// nothing defaults to yes.
    [[nodiscard]] TableCell cell(FillerClass filler, const QString& column) const;
    [[nodiscard]] const QByteArray& source() const { return m_source; }
    [[nodiscard]] const QByteArray& hash() const { return m_hash; } ///< SHA-256 of source

private:
    Cells m_cells;
    QByteArray m_source;
    QByteArray m_hash;
};

/// Who may override a stop.
enum class Override { Nobody, Supervisor };

struct Stop {
    Reason reason;
    Override overridable = Override::Nobody;
    QString instead; ///< code of what to do instead
    QString parkTo;  ///< code of the place that can make it fillable ("welding_shop"), empty when none
    bool operator==(const Stop&) const = default;
};

struct RejectedFiller {
    FillerClass filler = FillerClass::ShortStrand;
    Reason reason;
    bool operator==(const RejectedFiller&) const = default;
};

struct Decision {
    bool fill = false;
    std::vector<Stop> stops; ///< every one that holds, not only the first; empty when fill
    std::optional<FillerClass> filler;
    const ProductSheet* sheet = nullptr;  ///< of the chosen class; null on a stop
    const ProductSheet* bridge = nullptr; ///< of a filler that only bridges here, for the first lift over a backing
    Reasons reasons;                      ///< for filling: why this filler, and cautions
    std::vector<RejectedFiller> rejected; ///< every other class, with why not
};

/// The limits of deciding (common practice, no source).
struct DecisionLimits {
    FillingLimits filling;
    Length holeGreatest = millimetres(75); ///< over this: laminate or section repair
    Length dentDeepest = millimetres(6);   ///< in metal; over this: metal-work first
    Length dentAim = millimetres(3);       ///< in metal; over this: a caution
    Length denseHole = millimetres(12);    ///< the greatest hole of a 'to 12 mm' cell
};

/// Decides on an assessment. Unanswered questions stop with 'not_assessed'. Every stop that holds is given.
/// The substrate's and the damage's cell combine to the worse of the two; among the fillers that remain,
/// 'best' for the damage goes first, then 'best' for the substrate, then the table's order. A sheet's own
/// cell wins over the table's. A stop in assessment.overridden is left out where a supervisor may override it.
[[nodiscard]] Decision decide(const Assessment& assessment, const DecisionTable& table, const Catalogue& catalogue,
                              const DecisionLimits& limits = {});

/// The code of a stop for a question that has no answer. Such stops come after all that refuse.
inline const QString notAssessedCode = QStringLiteral("not_assessed");

/// A stop with what goes with its code: who may override, what to do instead, where to park it.
[[nodiscard]] Stop stopOf(Reason reason);
/// Every code that stopOf() knows.
[[nodiscard]] std::vector<QString> knownStopCodes();

/// The filling limits with a sheet's own where they are narrower.
[[nodiscard]] FillingLimits narrowed(const FillingLimits& limits, const ProductSheet& sheet);

/// What is across of a hole: the greater of its length and width.
[[nodiscard]] Length across(const Damage& damage);

} // namespace strandbench
