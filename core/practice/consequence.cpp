// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/consequence.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString firstStop(const ModelAnswer& answer) { return answer.plan.stops.front().reason.code; }

/// The first step of one plan that the other does not have.
std::optional<QString> stepOnlyIn(const RepairPlan& one, const RepairPlan& other)
{
    for (const Step& each : one.prep)
        if (std::ranges::find(other.prep, each.code, &Step::code) == other.prep.end())
            return each.code;
    return std::nullopt;
}

/// Both fill: the filler, a step or the amount is another, or nothing is.
Consequence betweenFills(const RepairPlan& truth, const RepairPlan& own, const Damage& was, const Damage& taken)
{
    if (own.filler != truth.filler)
        return consequenceOf(u"other_filler"_s, {codeOf(*own.filler), codeOf(*truth.filler)},
                             ConsequencePicture::Panel);
    if (taken.kind == DamageKind::Crack && taken.length < was.length)
        return consequenceOf(u"crack_goes_on"_s, {Length(was.length - taken.length)}, ConsequencePicture::Panel);
    if (const auto missing = stepOnlyIn(truth, own))
        return consequenceOf(u"step_missing"_s, {*missing}, ConsequencePicture::Steps);
    if (const auto extra = stepOnlyIn(own, truth))
        return consequenceOf(u"step_for_nothing"_s, {*extra}, ConsequencePicture::Steps);
    if (own.fillerTotal != truth.fillerTotal)
        return consequenceOf(u"other_amount"_s, {own.fillerTotal, truth.fillerTotal}, ConsequencePicture::Section);
    return consequenceOf(u"same_outcome"_s, {}, ConsequencePicture::Panel);
}

} // namespace

Consequence consequenceOf(const QString& code, std::vector<Argument> arguments, ConsequencePicture picture)
{
    return {{code, std::move(arguments)}, {}, picture, {}};
}

const std::vector<CodeWithArguments>& knownConsequences()
{
    static const std::vector<CodeWithArguments> all{
        {u"would_be_stopped"_s, {u"code"_s}},
        {u"stopped_for_nothing"_s, {u"code"_s}},
        {u"other_stop"_s, {u"code"_s, u"code"_s}},
        {u"other_filler"_s, {u"code"_s, u"code"_s}},
        {u"other_amount"_s, {u"mass"_s, u"mass"_s}},
        {u"crack_goes_on"_s, {u"length"_s}},
        {u"same_outcome"_s, {}},
        {u"step_missing"_s, {u"code*"_s}},
        {u"step_for_nothing"_s, {u"code"_s}},
        {u"step_harms"_s, {u"code*"_s}},
        {u"step_too_late"_s, {u"code"_s, u"code"_s}},
        {u"adhesion_lost"_s, {u"step"_s, u"step"_s}},
        {u"adhesion_lost_wet"_s, {}},
        {u"adhesion_lost_cold"_s, {u"temperature"_s, u"temperature"_s}},
        {u"filled_over_stop"_s, {u"code"_s}},
        {u"waits_for_nothing"_s, {}},
        {u"stop_stays"_s, {u"code*"_s}},
        {u"leads_nowhere"_s, {u"code"_s}},
        {u"filler_unfit"_s, {u"code"_s, u"code"_s}},
        {u"overheats_and_maps"_s, {u"length"_s, u"temperature"_s, u"temperature"_s}},
        {u"thicker_than_sheet"_s, {u"length"_s, u"length"_s}},
        {u"nothing_laid"_s, {}},
        {u"left_too_low"_s, {u"length"_s}},
        {u"built_too_high"_s, {u"length"_s}},
        {u"cold_joint"_s, {u"mass"_s}},
        {u"left_over"_s, {u"mass"_s}},
        {u"gels_on_board"_s, {u"duration"_s, u"mass"_s}},
        {u"sands_later"_s, {u"duration"_s, u"duration"_s}},
        {u"gels_sooner"_s, {u"duration"_s, u"duration"_s}},
        {u"never_cures"_s, {u"share"_s}},
        {u"beyond_the_model"_s, {u"share"_s}},
        {u"edges_set_hard"_s, {u"duration"_s}},
        {u"edges_smeared"_s, {u"duration"_s}},
        {u"drags"_s, {u"share"_s, u"share"_s, u"duration"_s}},
        {u"stone_hard"_s, {u"duration"_s}},
        {u"not_sanded"_s, {}},
        {u"one_face_open"_s, {}},
        {u"turned_for_nothing"_s, {}},
        {u"coat_too_thick"_s, {u"length"_s, u"length"_s}},
        {u"finish_too_thick"_s, {u"length"_s, u"length"_s}},
        {u"finish_too_low"_s, {u"length"_s}},
        {u"not_finished"_s, {}},
        {u"not_looked_for"_s, {u"code*"_s}},
        {u"primed_too_soon"_s, {u"duration"_s}},
        {u"soft_film"_s, {u"share"_s, u"share"_s}},
        {u"bleeds_and_pinholes"_s, {u"share"_s, u"share"_s}},
    };
    return all;
}

Consequence ofWrongAnswer(const ModelAnswer& truth, const Assessment& withThatAnswer, const PlanningSet& shop)
{
    const ModelAnswer own = modelAnswer(withThatAnswer, shop);
    if (!truth.fill() && own.fill())
        return consequenceOf(u"would_be_stopped"_s, {firstStop(truth)}, ConsequencePicture::Panel);
    if (truth.fill() && !own.fill())
        return consequenceOf(u"stopped_for_nothing"_s, {firstStop(own)}, ConsequencePicture::Panel);
    if (truth.fill())
        return betweenFills(truth.plan, own.plan, *truth.assessment.damage, *withThatAnswer.damage);
    if (own.plan.stops != truth.plan.stops) {
        for (const Stop& each : truth.plan.stops)
            if (std::ranges::find(own.plan.stops, each) == own.plan.stops.end())
                return consequenceOf(u"other_stop"_s, {firstStop(own), each.reason.code}, ConsequencePicture::Panel);
        return consequenceOf(u"other_stop"_s, {firstStop(own), firstStop(truth)}, ConsequencePicture::Panel);
    }
    return consequenceOf(u"same_outcome"_s, {}, ConsequencePicture::Panel);
}

Consequence ofFilledStop(const ModelAnswer& stopped)
{
    for (const Stop& each : stopped.plan.stops) {
        const Reason& why = each.reason;
        // How far above the dew point, and how far it has to be.
        if (why.code == u"panel_near_dew_point"_s)
            return consequenceOf(u"adhesion_lost"_s,
                                 {judgeAir(*stopped.assessment.reading).margin, FillingLimits{}.dewMargin},
                                 ConsequencePicture::Surface);
        if (why.code == u"moisture_damp"_s)
            return consequenceOf(u"adhesion_lost_wet"_s, {}, ConsequencePicture::Surface);
        if (why.code == u"panel_too_cold"_s)
            return consequenceOf(u"adhesion_lost_cold"_s, why.arguments, ConsequencePicture::Surface);
    }
    return consequenceOf(u"filled_over_stop"_s, {firstStop(stopped)}, ConsequencePicture::Panel);
}

Consequence ofHardener(const PlacedLift& lift, Fraction hardener, const ModelAnswer& answer, const PlanningSet& shop)
{
    const ProductSheet& sheet = sheetOf(lift, answer, shop);
    const bool little = hardener < sheet.hardenerNominal;
    const CureAnswer<LayerCure> mixed = cureOf(lift, hardener, shop);
    const CureAnswer<LayerCure> nominal = cureOf(lift, sheet.hardenerNominal, shop);
    Consequence consequence;
    if (!mixed || !nominal)
        consequence =
            consequenceOf(little ? u"never_cures"_s : u"beyond_the_model"_s, {hardener}, ConsequencePicture::Curve);
    else if (little)
        consequence = consequenceOf(u"sands_later"_s, {mixed->sand, nominal->sand}, ConsequencePicture::Curve);
    else
        consequence = consequenceOf(u"gels_sooner"_s, {mixed->gel, nominal->gel}, ConsequencePicture::Curve);
    if (mixed)
        consequence.cureCase = mixed->cureCase;
    consequence.sheetsWord = little ? Reason{u"soft_film"_s, {hardener, sheet.hardenerLow}}
                                    : Reason{u"bleeds_and_pinholes"_s, {hardener, sheet.hardenerHigh}};
    return consequence;
}

Consequence ofThickLift(const PlacedLift& lift, const LayerCure* cure, const ModelAnswer& answer,
                        const PlanningSet& shop)
{
    if (cure && answer.plan.peakLimit && cure->peak >= *answer.plan.peakLimit) {
        Consequence hot = consequenceOf(u"overheats_and_maps"_s, {lift.laid, cure->peak, *answer.plan.peakLimit},
                                        ConsequencePicture::Curve);
        hot.cureCase = cure->cureCase;
        return hot;
    }
    return consequenceOf(u"thicker_than_sheet"_s, {lift.laid, sheetOf(lift, answer, shop).greatestLift},
                         ConsequencePicture::Section);
}

Consequence ofBoardGel(Mass filler, Duration boardGel, const PlanningSet& shop)
{
    const Duration spreading = std::max(seconds(0), Duration(boardGel - shop.assumptions.kneading));
    const Mass wasted = std::max(grams(0), Mass(filler - shop.assumptions.spreading * spreading));
    return consequenceOf(u"gels_on_board"_s, {boardGel, wasted}, ConsequencePicture::Board);
}

Consequence ofEarlySanding(const LayerCure& cure, Duration at)
{
    Consequence drags =
        consequenceOf(u"drags"_s, {faceConversionAt(cure.cureCase, at), cure.cureCase.kinetics.sand, cure.sand},
                      ConsequencePicture::Curve);
    drags.cureCase = cure.cureCase;
    return drags;
}

} // namespace strandbench
