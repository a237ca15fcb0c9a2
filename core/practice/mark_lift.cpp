// SPDX-License-Identifier: GPL-3.0-or-later
// One lift: how thick, how much of what, and when. Thickness and amount are judged at the nominal dose, so that a wrong
// dose is one mistake; edges and sanding by the batch as it was mixed.
#include "practice/judging.h"

#include <algorithm>
#include <cmath>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench::practice {
namespace {

constexpr double hair = 1e-9;

class LiftJudge {
public:
    LiftJudge(const Situation& situation, const ModelAnswer& hand, const PlacedLift& lift, std::vector<Mark>& marks)
        : m_shop(situation.shop),
          m_hand(hand),
          m_lift(lift),
          m_attempted(situation.attempt.lifts[lift.index]),
          m_sheet(sheetOf(lift, hand, situation.shop)),
          m_marks(marks)
    {
        for (const MixedBatch& each : m_attempted.batches)
            m_mixes.push_back(mixOf(each, m_sheet));
    }

    void judge()
    {
        thickness();
        amount();
        if (m_mixes.empty() || std::ranges::any_of(m_mixes, [](const Mix& each) { return each.filler <= grams(0); })) {
            for (const DecisionPoint each :
                 {DecisionPoint::HardenerDose, DecisionPoint::EdgesCleared, DecisionPoint::SandedAt})
                add(notReached(each));
            return;
        }
        hardener();
        edges();
        sanding();
    }

private:
    void add(Mark mark)
    {
        mark.lift = static_cast<int>(m_lift.index);
        m_marks.push_back(std::move(mark));
    }

    /// The same dose is solved once. Doses that differ in the last bits are one.
    const CureAnswer<LayerCure>& cure(Fraction hardener)
    {
        const long key = std::lround(std::clamp(hardener.value(), 0.0, 1.0) * 1e9);
        const auto found = m_cures.find(key);
        return found != m_cures.end() ? found->second
                                      : m_cures.emplace(key, cureOf(m_lift, hardener, m_shop)).first->second;
    }

    void thickness()
    {
        const Length greatest = m_sheet.greatestLift;
        const bool bySheet = m_lift.laid <= greatest * (1.0 + hair);
        const CureAnswer<LayerCure>& nominal = cure(m_sheet.hardenerNominal);
        const bool cool = nominal && nominal->peak < *m_hand.plan.peakLimit;
        const bool laid = m_attempted.thickness.value() > 0.0;
        Arguments given{m_lift.laid};
        if (nominal)
            given.emplace_back(nominal->peak);
        Mark mark = judged(DecisionPoint::LiftThickness, laid && bySheet && (cool || !nominal), given,
                           {greatest, *m_hand.plan.peakLimit},
                           ruleOf(DecisionPoint::LiftThickness, {greatest, *m_hand.plan.peakLimit}));
        if (mark.judged == Judged::Wrong) {
            mark.grave = nominal && !cool;
            mark.consequence = laid ? ofThickLift(m_lift, nominal ? &*nominal : nullptr, m_hand, m_shop)
                                    : consequenceOf(u"nothing_laid"_s, {}, ConsequencePicture::Section);
        }
        add(std::move(mark));
    }

    /// The first batch that sets on the board before it is spread, at the nominal dose.
    std::optional<Consequence> gelsOnTheBoard()
    {
        const Assumptions& assumptions = m_shop.assumptions;
        for (std::size_t i = 0; i < m_mixes.size(); ++i) {
            if (i > 0 && m_attempted.batches[i].puddle == m_attempted.batches[i - 1].puddle)
                continue;
            const Mix& mix = m_mixes[i];
            const CureAnswer<Duration> gel = boardGelOf(mix, m_sheet.hardenerNominal, m_hand, m_sheet, m_shop);
            if (!gel || assumptions.kneading + mix.filler / assumptions.spreading <= *gel)
                continue;
            return ofBoardGel(mix.filler, *gel, m_shop);
        }
        return std::nullopt;
    }

    void amount()
    {
        const MarkingTolerances within;
        const Mass needed = takes(m_lift, m_attempted, m_hand, m_shop);
        const Mass least = needed * (1.0 - within.tooLittle);
        const Mass most =
            std::max(Mass(needed * (1.0 + within.tooMuch)),
                     Mass(smallestBeadMix(m_sheet) * static_cast<double>(std::max<std::size_t>(1, m_mixes.size()))));
        Mass mixed = grams(0);
        for (const Mix& each : m_mixes)
            mixed += each.filler;
        std::optional<Consequence> wrong = gelsOnTheBoard();
        if (!wrong && mixed < least * (1.0 - hair))
            wrong = consequenceOf(u"cold_joint"_s, {Mass(needed - mixed)}, ConsequencePicture::Section);
        if (!wrong && mixed > most * (1.0 + hair))
            wrong = consequenceOf(u"left_over"_s, {Mass(mixed - needed)}, ConsequencePicture::Board);
        Mark mark = judged(
            DecisionPoint::MixedAmount, !wrong, {mixed, Count{static_cast<int>(m_mixes.size())}}, {least, most},
            ruleOf(DecisionPoint::MixedAmount, {Fraction::ofOne(within.tooLittle), Fraction::ofOne(within.tooMuch)}));
        mark.consequence = std::move(wrong);
        add(std::move(mark));
    }

    void hardener()
    {
        const auto beside = [&](const Mix& mix) {
            return std::abs(mix.hardenerShare.value() - m_sheet.hardenerNominal.value());
        };
        const Mix& worst = *std::ranges::max_element(m_mixes, {}, beside);
        const HardenerVerdict verdict = judgeHardener(worst.hardenerShare, m_sheet);
        Mark mark = judged(
            DecisionPoint::HardenerDose, verdict == HardenerVerdict::Within, {worst.hardenerShare},
            {m_sheet.hardenerLow, m_sheet.hardenerHigh},
            ruleOf(DecisionPoint::HardenerDose, {m_sheet.hardenerNominal, m_sheet.hardenerLow, m_sheet.hardenerHigh}));
        if (mark.judged == Judged::Wrong) {
            mark.grave = verdict == HardenerVerdict::Refused;
            mark.consequence = ofHardener(m_lift, worst.hardenerShare, m_hand, m_shop);
        }
        add(std::move(mark));
    }

    /// From when the batch can be spread, or clearing is due if that is sooner, until it gels.
    void edges()
    {
        const Assumptions& assumptions = m_shop.assumptions;
        Mark kept = notReached(DecisionPoint::EdgesCleared);
        for (std::size_t i = 0; i < m_mixes.size(); ++i) {
            const CureAnswer<LayerCure>& mixed = cure(m_mixes[i].hardenerShare);
            if (!mixed)
                continue;
            const Duration spread = assumptions.kneading + m_mixes[i].filler / assumptions.spreading;
            const Duration from = std::min(spread, Duration(mixed->gel * assumptions.edgesAtGel.value()));
            const std::optional<Duration> at = m_attempted.batches[i].edgesCleared;
            const bool right = at && *at >= from * (1.0 - hair) && *at <= mixed->gel * (1.0 + hair);
            Mark mark = judged(DecisionPoint::EdgesCleared, right, at ? Arguments{*at} : Arguments{},
                               {from, mixed->gel}, ruleOf(DecisionPoint::EdgesCleared, {assumptions.edgesAtGel}));
            if (!right)
                mark.consequence = consequenceOf(at && *at < from ? u"edges_smeared"_s : u"edges_set_hard"_s,
                                                 {at && *at < from ? from : mixed->gel}, ConsequencePicture::Section);
            if (kept.judged != Judged::Wrong)
                kept = std::move(mark);
        }
        add(std::move(kept));
    }

    void sanding()
    {
        const CureAnswer<LayerCure>& mixed = cure(m_mixes.back().hardenerShare);
        if (!mixed)
            return add(notReached(DecisionPoint::SandedAt));
        const Duration easy = batchTimes(*mixed, mixed->gel, m_sheet).easySanding;
        const Duration until = mixed->sand + easy;
        const std::optional<Duration> at = m_attempted.sanded;
        const bool right = at && *at >= mixed->sand * (1.0 - hair) && *at <= until * (1.0 + hair);
        Mark mark = judged(DecisionPoint::SandedAt, right, at ? Arguments{*at} : Arguments{}, {mixed->sand, until},
                           ruleOf(DecisionPoint::SandedAt, {mixed->cureCase.kinetics.sand}));
        if (!right)
            mark.consequence = !at                 ? consequenceOf(u"not_sanded"_s, {}, ConsequencePicture::Section)
                               : *at < mixed->sand ? ofEarlySanding(*mixed, *at)
                                                   : consequenceOf(u"stone_hard"_s, {until}, ConsequencePicture::Curve);
        add(std::move(mark));
    }

    const PlanningSet& m_shop;
    const ModelAnswer& m_hand;
    const PlacedLift& m_lift;
    const AttemptedLift& m_attempted;
    const ProductSheet& m_sheet;
    std::vector<Mark>& m_marks;
    std::vector<Mix> m_mixes;
    std::map<long, CureAnswer<LayerCure>> m_cures;
};

} // namespace

void markLift(const Situation& situation, const ModelAnswer& hand, const PlacedLift& lift, std::vector<Mark>& marks)
{
    LiftJudge(situation, hand, lift, marks).judge();
}

} // namespace strandbench::practice
