// SPDX-License-Identifier: GPL-3.0-or-later
#include "substrate/choose_filler.h"

#include <tuple>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// One filler class as it stands for this panel.
struct Candidate {
    FillerClass filler = FillerClass::ShortStrand;
    const ProductSheet* sheet = nullptr;
    TableCell onSubstrate;
    std::optional<TableCell> onDamage; ///< only damages with a column of their own
    std::optional<Reason> refusal;     ///< why it does not come into question
};

std::optional<QString> columnOf(DamageKind kind)
{
    switch (kind) {
    case DamageKind::WeldSeam:
    case DamageKind::BondSeam:
    case DamageKind::Hole:
        return codeOf(kind);
    case DamageKind::Gouge:
    case DamageKind::Dent:
    case DamageKind::Crack:
    case DamageKind::RustHole:
        break;
    }
    return std::nullopt;
}

TableCell cellOf(FillerClass filler, const QString& column, const DecisionTable& table, const ProductSheet& sheet)
{
    const auto own = sheet.cells.find(column);
    if (own != sheet.cells.end())
        return {own->second.suitability, own->second.reason};
    return table.cell(filler, column);
}

/// Why a cell keeps a filler out here; empty when it does not.
std::optional<Reason> refusalBy(const TableCell& cell, const Assessment& assessment, const ProductSheet& sheet,
                                const DecisionLimits& limits)
{
    switch (cell.suitability) {
    case Suitability::No:
    case Suitability::Bridging:
        return Reason{cell.reason, {}};
    case Suitability::IfNamed:
        if (sheet.namesZinc || assessment.surface == SurfaceState::AbradedEpoxy)
            return std::nullopt;
        return Reason{cell.reason, {}};
    case Suitability::UpTo12Millimetres:
        if (across(*assessment.damage) <= limits.denseHole)
            return std::nullopt;
        return Reason{cell.reason, {limits.denseHole}};
    case Suitability::Best:
    case Suitability::Yes:
    case Suitability::YesBulk:
    case Suitability::Second:
        break;
    }
    return std::nullopt;
}

Candidate weigh(FillerClass filler, const Assessment& assessment, const DecisionTable& table,
                const Catalogue& catalogue, const DecisionLimits& limits)
{
    Candidate candidate{filler, catalogue.byClass(filler), {}, {}, {}};
    if (!candidate.sheet) {
        candidate.refusal = Reason{u"no_sheet"_s, {}};
        return candidate;
    }
    candidate.onSubstrate = cellOf(filler, codeOf(*assessment.substrate), table, *candidate.sheet);
    candidate.refusal = refusalBy(candidate.onSubstrate, assessment, *candidate.sheet, limits);
    if (const auto column = columnOf(assessment.damage->kind)) {
        candidate.onDamage = cellOf(filler, *column, table, *candidate.sheet);
        if (!candidate.refusal)
            candidate.refusal = refusalBy(*candidate.onDamage, assessment, *candidate.sheet, limits);
    }
    return candidate;
}

bool isBest(const std::optional<TableCell>& cell) { return cell && cell->suitability == Suitability::Best; }

/// Lower goes first: best for the damage, best for the substrate, a 'second' after the rest, table's order.
auto rankOf(const Candidate& candidate)
{
    const bool second = candidate.onSubstrate.suitability == Suitability::Second ||
                        (candidate.onDamage && candidate.onDamage->suitability == Suitability::Second);
    return std::tuple(!isBest(candidate.onDamage), candidate.onSubstrate.suitability != Suitability::Best, second,
                      candidate.filler);
}

/// Kept out by nothing but that it only bridges: the panel itself would take it.
bool bridges(const Candidate& candidate, const Assessment& assessment, const DecisionLimits& limits)
{
    return candidate.sheet && candidate.onDamage && candidate.onDamage->suitability == Suitability::Bridging &&
           !refusalBy(candidate.onSubstrate, assessment, *candidate.sheet, limits);
}

void explain(Decision& decision, const Candidate& chosen)
{
    const QString filler = codeOf(chosen.filler);
    if (isBest(chosen.onDamage))
        decision.reasons.push_back({chosen.onDamage->reason, {filler}});
    decision.reasons.push_back({chosen.onSubstrate.reason, {filler}});
    if (chosen.onDamage && !isBest(chosen.onDamage))
        decision.reasons.push_back({chosen.onDamage->reason, {filler}});
}

} // namespace

void chooseFiller(Decision& decision, const Assessment& assessment, const DecisionTable& table,
                  const Catalogue& catalogue, const DecisionLimits& limits)
{
    std::vector<Candidate> candidates;
    for (const auto& [filler, code] : Codes<FillerClass>::table)
        if (isFibreReinforced(filler))
            candidates.push_back(weigh(filler, assessment, table, catalogue, limits));

    const Candidate* chosen = nullptr;
    for (const Candidate& each : candidates)
        if (!each.refusal && (!chosen || rankOf(each) < rankOf(*chosen)))
            chosen = &each;

    for (const Candidate& each : candidates) {
        if (&each == chosen)
            continue;
        decision.rejected.push_back(
            {each.filler, each.refusal ? *each.refusal : Reason{u"another_is_better"_s, {codeOf(chosen->filler)}}});
    }
    if (!chosen)
        return;
    for (const Candidate& each : candidates)
        if (bridges(each, assessment, limits))
            decision.bridge = each.sheet;
    decision.filler = chosen->filler;
    decision.sheet = chosen->sheet;
    explain(decision, *chosen);
}

} // namespace strandbench
