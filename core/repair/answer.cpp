// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/answer.h"

#include <algorithm>
#include <iterator>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// True when the value is of the type that the question asks for.
bool fits(Question question, const AnswerValue& value)
{
    switch (question) {
    case Question::Substrate:
        return std::holds_alternative<Substrate>(value);
    case Question::DamageKind:
        return std::holds_alternative<DamageKind>(value);
    case Question::Weld:
        return std::holds_alternative<WeldKind>(value);
    case Question::AdhesiveCured:
    case Question::RearAccess:
        return std::holds_alternative<bool>(value);
    case Question::Size:
        return std::holds_alternative<DamageSize>(value);
    case Question::Surface:
        return std::holds_alternative<SurfaceState>(value);
    case Question::Zone:
        return std::holds_alternative<Zone>(value);
    case Question::Moisture:
        return std::holds_alternative<Moisture>(value);
    case Question::Core:
        return std::holds_alternative<CoreMaterial>(value);
    case Question::Reading:
        return std::holds_alternative<Reading>(value);
    }
    Q_UNREACHABLE();
}

/// A damage without a length counts as not measured, so an answer must give one.
std::optional<Fault> sizeFault(const AnswerValue& value)
{
    const auto* size = std::get_if<DamageSize>(&value);
    if (!size || size->length.value() > 0.0)
        return std::nullopt;
    return Fault{u"answered.size.length"_s,
                 QString::number(inMillimetres(size->length)),
                 FaultKind::OutOfRange,
                 {u"above 0"_s, QString(), u"mm"_s}};
}

/// Only of the substrate is it asked what told it, and each thing tells it once.
std::optional<Fault> foundByFault(const Answered& answered)
{
    const auto& all = answered.foundBy;
    if (!all.empty() && answered.question != Question::Substrate)
        return Fault{u"answered.found_by"_s,
                     codeOf(answered.question),
                     FaultKind::Conflicts,
                     {u"question"_s, codeOf(Question::Substrate)}};
    for (auto each = all.begin(); each != all.end(); ++each)
        if (std::find(std::next(each), all.end(), *each) != all.end())
            return Fault{
                u"answered.found_by"_s, codeOf(*each), FaultKind::Conflicts, {u"answered.found_by"_s, codeOf(*each)}};
    return std::nullopt;
}

std::optional<Fault> orderFault(const Repair& repair, const Answered& answered)
{
    const QString question = codeOf(answered.question);
    const auto before = repair.answeredBy.find(answered.question);
    if (!answered.corrects) {
        if (before == repair.answeredBy.end())
            return std::nullopt;
        return Fault{
            u"answered"_s, question, FaultKind::Conflicts, {u"answered_by"_s, QString::number(before->second)}};
    }
    if (before != repair.answeredBy.end() && before->second == *answered.corrects)
        return std::nullopt;
    return Fault{u"answered.corrects"_s,
                 QString::number(*answered.corrects),
                 FaultKind::Conflicts,
                 {u"answered_by"_s, before == repair.answeredBy.end() ? QString() : QString::number(before->second)}};
}

void putSubstrate(Repair& repair, Substrate substrate)
{
    repair.assessment.substrate = substrate;
    if (substrate == Substrate::Laminate)
        return;
    repair.assessment.core = CoreMaterial::None;
    repair.answeredBy.erase(Question::Core);
}

void putDamageKind(Repair& repair, DamageKind kind)
{
    Assessment& assessment = repair.assessment;
    if (assessment.damage && assessment.damage->kind == kind)
        return;
    assessment.damage = Damage{};
    assessment.damage->kind = kind;
    assessment.rearAccess.reset();
    for (Question said : {Question::Weld, Question::AdhesiveCured, Question::Size, Question::RearAccess})
        repair.answeredBy.erase(said);
}

void putSize(Damage& damage, const DamageSize& size)
{
    damage.length = size.length;
    damage.width = size.width;
    damage.depth = damage.kind == DamageKind::Hole ? size.panelThickness : size.depth;
    damage.panelThickness = size.panelThickness;
    damage.bevelRatio = size.bevelRatio;
}

void put(Repair& repair, const Answered& answered)
{
    Assessment& assessment = repair.assessment;
    const AnswerValue& value = answered.value;
    switch (answered.question) {
    case Question::Substrate:
        putSubstrate(repair, std::get<Substrate>(value));
        break;
    case Question::DamageKind:
        putDamageKind(repair, std::get<DamageKind>(value));
        break;
    case Question::Weld:
        assessment.damage->weld = std::get<WeldKind>(value);
        break;
    case Question::AdhesiveCured:
        assessment.damage->adhesiveCured = std::get<bool>(value);
        break;
    case Question::Size:
        putSize(*assessment.damage, std::get<DamageSize>(value));
        break;
    case Question::RearAccess:
        assessment.rearAccess = std::get<bool>(value);
        break;
    case Question::Surface:
        assessment.surface = std::get<SurfaceState>(value);
        break;
    case Question::Zone:
        assessment.zone = std::get<Zone>(value);
        break;
    case Question::Moisture:
        assessment.moisture = std::get<Moisture>(value);
        break;
    case Question::Core:
        assessment.core = std::get<CoreMaterial>(value);
        break;
    case Question::Reading:
        assessment.reading = std::get<Reading>(value);
        repair.lastReading = assessment.reading;
        break;
    }
}

} // namespace

std::optional<Fault> putAnswer(Repair& repair, const Answered& answered, qint64 seq)
{
    if (!fits(answered.question, answered.value))
        return Fault{u"answered.value"_s, codeOf(answered.question), FaultKind::WrongKind, {codeOf(answered.question)}};
    if (!asksFor(repair.assessment, answered.question))
        return Fault{u"answered"_s, codeOf(answered.question), FaultKind::Conflicts, {u"asked"_s, u"false"_s}};
    if (auto fault = sizeFault(answered.value))
        return fault;
    if (auto fault = foundByFault(answered))
        return fault;
    if (auto fault = orderFault(repair, answered))
        return fault;
    put(repair, answered);
    repair.answeredBy[answered.question] = seq;
    return std::nullopt;
}

} // namespace strandbench
