// SPDX-License-Identifier: GPL-3.0-or-later
// Which questions an assessment asks, and when it need not ask further.
#include "repair/repair.h"

#include <algorithm>
#include <array>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

bool isKind(const Assessment& assessment, DamageKind kind)
{
    return assessment.damage && assessment.damage->kind == kind;
}

/// A weld that stays a joint, or a hole or a crack that metal-work must close first (the trade's refusals:
/// common practice, no source).
bool damageRefuses(const Assessment& assessment)
{
    if (isKind(assessment, DamageKind::RustHole))
        return true;
    if (isKind(assessment, DamageKind::WeldSeam))
        return assessment.damage->weld && *assessment.damage->weld != WeldKind::Solid;
    return assessment.substrate && isMetal(*assessment.substrate) &&
           (isKind(assessment, DamageKind::Crack) || isKind(assessment, DamageKind::Hole));
}

/// True when a supervisor took that refusal away: then the rest is asked.
bool damageOverridden(const Assessment& assessment)
{
    static const std::array codes{u"rust_hole"_s, u"weld_spot"_s, u"weld_stitch"_s, u"metal_crack"_s, u"metal_hole"_s};
    return std::ranges::any_of(
        codes, [&](const QString& code) { return std::ranges::count(assessment.overridden, code) > 0; });
}

bool substrateRefuses(const Assessment& assessment)
{
    return assessment.substrate && !isFibreComposite(*assessment.substrate) && !isMetal(*assessment.substrate);
}

} // namespace

bool asksFor(const Assessment& assessment, Question question)
{
    switch (question) {
    case Question::Substrate:
    case Question::DamageKind:
    case Question::Surface:
    case Question::Zone:
    case Question::Moisture:
    case Question::Reading:
        return true;
    case Question::Size:
        return assessment.damage.has_value();
    case Question::Weld:
        return isKind(assessment, DamageKind::WeldSeam);
    case Question::AdhesiveCured:
        return isKind(assessment, DamageKind::BondSeam);
    case Question::RearAccess:
        return isKind(assessment, DamageKind::Hole);
    case Question::Core:
        return assessment.substrate == Substrate::Laminate;
    }
    Q_UNREACHABLE();
}

std::optional<Question> nextQuestion(const Repair& repair)
{
    const Assessment& given = repair.assessment;
    if (substrateRefuses(given) || (damageRefuses(given) && !damageOverridden(given)))
        return std::nullopt;
    for (const auto& entry : Codes<Question>::table) {
        const Question question = entry.first;
        if (asksFor(repair.assessment, question) && !repair.answeredBy.contains(question))
            return question;
    }
    return std::nullopt;
}

} // namespace strandbench
