// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/choices.h"

#include "pictures/section_picture.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

template <class E> bool isAnswer(const std::optional<E>& answer, E value) { return answer && *answer == value; }

/// One choice for each value of an enumeration.
template <class E, class Name, class Refuses, class Picture>
std::vector<Choice> all(const std::optional<E>& answer, const Words& words, Name name, Refuses refuses, Picture picture)
{
    std::vector<Choice> choices;
    for (const auto& [value, code] : Codes<E>::table)
        choices.push_back({QString::fromLatin1(code), Words::title(name(value)), words.hint(value), value,
                           picture(value), refuses(value), isAnswer(answer, value)});
    return choices;
}

const auto noPicture = [](auto) { return TapButton::Picture(); };

std::vector<Choice> substrates(const Repair& repair, const Surroundings& around)
{
    const Theme& theme = around.theme;
    return all<Substrate>(
        repair.assessment.substrate, around.words, [&](Substrate s) { return around.words.substrate(s); },
        [](Substrate s) { return !isFibreComposite(s) && !isMetal(s); },
        [&theme](Substrate s) -> TapButton::Picture {
            return [s, &theme](QPainter& painter, const QRectF& rect) { paintSubstrate(painter, rect, s, theme); };
        });
}

std::vector<Choice> damages(const Repair& repair, const Surroundings& around)
{
    const Theme& theme = around.theme;
    const std::optional<DamageKind> answer =
        repair.assessment.damage ? std::optional(repair.assessment.damage->kind) : std::nullopt;
    return all<DamageKind>(
        answer, around.words, [&](DamageKind d) { return around.words.damage(d); },
        [](DamageKind d) { return d == DamageKind::RustHole; },
        [&theme](DamageKind d) -> TapButton::Picture {
            return [d, &theme](QPainter& painter, const QRectF& rect) {
                paintDamage(painter, rect, d, std::nullopt, theme);
            };
        });
}

std::vector<Choice> welds(const Repair& repair, const Surroundings& around)
{
    const Theme& theme = around.theme;
    const std::optional<WeldKind> answer = repair.assessment.damage ? repair.assessment.damage->weld : std::nullopt;
    return all<WeldKind>(
        answer, around.words, [&](WeldKind w) { return around.words.weld(w); },
        [](WeldKind w) { return w != WeldKind::Solid; },
        [&theme](WeldKind w) -> TapButton::Picture {
            return [w, &theme](QPainter& painter, const QRectF& rect) {
                paintDamage(painter, rect, DamageKind::WeldSeam, w, theme);
            };
        });
}

std::vector<Choice> yesNo(Question question, const std::optional<bool>& answer, const Words& words)
{
    std::vector<Choice> choices;
    for (const bool yes : {true, false})
        choices.push_back({yes ? u"yes"_s : u"no"_s,
                           words.answer(question, yes),
                           words.answerHint(question, yes),
                           yes,
                           {},
                           false,
                           isAnswer(answer, yes)});
    return choices;
}

} // namespace

std::vector<Choice> choicesOf(Question question, const Repair& repair, const Surroundings& around)
{
    const Assessment& given = repair.assessment;
    const Words& words = around.words;
    switch (question) {
    case Question::Substrate:
        return substrates(repair, around);
    case Question::DamageKind:
        return damages(repair, around);
    case Question::Weld:
        return welds(repair, around);
    case Question::AdhesiveCured:
        return yesNo(question, given.damage ? given.damage->adhesiveCured : std::nullopt, words);
    case Question::RearAccess:
        return yesNo(question, given.rearAccess, words);
    case Question::Surface:
        return all<SurfaceState>(
            given.surface, words, [&](SurfaceState s) { return words.surface(s); },
            [](SurfaceState s) { return s != SurfaceState::Bare && s != SurfaceState::AbradedEpoxy; }, noPicture);
    case Question::Zone:
        return all<Zone>(
            given.zone, words, [&](Zone z) { return words.zone(z); }, [](Zone z) { return z != Zone::Cosmetic; },
            noPicture);
    case Question::Moisture:
        return all<Moisture>(
            given.moisture, words, [&](Moisture m) { return words.moisture(m); },
            [](Moisture m) { return m != Moisture::Dry; }, noPicture);
    case Question::Core: {
        const std::optional<CoreMaterial> core =
            repair.answeredBy.contains(Question::Core) ? std::optional(given.core) : std::nullopt;
        return all<CoreMaterial>(
            core, words, [&](CoreMaterial c) { return words.core(c); },
            [](CoreMaterial c) { return c == CoreMaterial::Foam || c == CoreMaterial::WetWood; }, noPicture);
    }
    case Question::Size:
    case Question::Reading:
        break;
    }
    return {};
}

} // namespace strandbench
