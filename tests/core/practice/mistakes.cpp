// SPDX-License-Identifier: GPL-3.0-or-later
// Every single mistake, made on top of what is otherwise right.
#include "pupils.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QStringList ofAnswers{u"would_be_stopped"_s, u"stopped_for_nothing"_s, u"other_stop"_s,
                            u"other_filler"_s,     u"other_amount"_s,        u"crack_goes_on"_s,
                            u"same_outcome"_s,     u"step_missing"_s,        u"step_for_nothing"_s};

class Maker {
public:
    explicit Maker(const Lesson& lesson) : m_lesson(lesson), m_right(perfectAttempt(lesson.truth, shop())) {}

    std::vector<Mistake> all()
    {
        answers();
        damageAnswers();
        if (m_lesson.truth.fill()) {
            deciding();
            preparing();
            laying();
            timing();
            finishing();
        } else {
            stopping();
        }
        return std::move(m_all);
    }

private:
    void add(std::string name, DecisionPoint decision, QStringList consequences, Attempt attempt)
    {
        m_all.push_back({std::move(name), decision, std::move(consequences), std::move(attempt)});
    }

    /// A wrong answer, and all that is right on it.
    template <class Change> void answer(std::string name, DecisionPoint decision, const Change& change)
    {
        Assessment found = m_lesson.truth.assessment;
        change(found);
        add(std::move(name), decision, ofAnswers, perfectAttempt(modelAnswer(found, shop()), shop()));
    }
    template <class E> static E other(E value)
    {
        const auto& table = Codes<E>::table;
        const auto at = std::ranges::find(table, value, [](const auto& each) { return each.first; });
        return at + 1 == table.end() ? table.front().first : (at + 1)->first;
    }

    void answers()
    {
        const Assessment& truth = m_lesson.truth.assessment;
        for (const Substrate each : {Substrate::Laminate, Substrate::Galvanised, Substrate::Thermoplastic})
            if (each != truth.substrate)
                answer("substrate", DecisionPoint::SubstrateFound, [&](Assessment& a) { a.substrate = each; });
        answer("no substrate", DecisionPoint::SubstrateFound, [](Assessment& a) { a.substrate.reset(); });
        for (const SurfaceState each : {SurfaceState::Bare, SurfaceState::AbradedEpoxy, SurfaceState::Rust})
            if (each != truth.surface)
                answer("surface", DecisionPoint::SurfaceFound, [&](Assessment& a) { a.surface = each; });
        answer("zone", DecisionPoint::ZoneFound, [&](Assessment& a) { a.zone = other(*truth.zone); });
        answer("moisture", DecisionPoint::MoistureFound, [&](Assessment& a) { a.moisture = other(*truth.moisture); });
        if (truth.substrate == Substrate::Laminate)
            answer("core", DecisionPoint::CoreFound, [&](Assessment& a) { a.core = other(truth.core); });
    }

    void damageAnswers()
    {
        const Damage& truth = *m_lesson.truth.assessment.damage;
        answer("half the length", DecisionPoint::SizeFound, [](Assessment& a) { a.damage->length *= 0.5; });
        if (truth.kind == DamageKind::Dent || truth.kind == DamageKind::Gouge)
            answer("another damage", DecisionPoint::DamageFound, [&](Assessment& a) {
                const bool dent = truth.kind == DamageKind::Dent;
                a.damage->kind = dent ? DamageKind::Gouge : DamageKind::Dent;
                a.damage->depth = std::min(a.damage->depth, a.damage->panelThickness);
            });
        if (truth.weld)
            for (const WeldKind each : {WeldKind::Solid, WeldKind::Spot, WeldKind::Stitch})
                if (each != truth.weld)
                    answer("weld", DecisionPoint::WeldFound, [&](Assessment& a) { a.damage->weld = each; });
        if (truth.adhesiveCured)
            answer("adhesive", DecisionPoint::AdhesiveFound,
                   [&](Assessment& a) { a.damage->adhesiveCured = !*truth.adhesiveCured; });
        if (truth.kind == DamageKind::Hole)
            answer("reach", DecisionPoint::ReachFound, [](Assessment& a) { a.rearAccess = !*a.rearAccess; });
    }

    void stopping()
    {
        Attempt filled = m_right;
        filled.fill = true;
        add("fills a stop", DecisionPoint::FillOrStop,
            {u"adhesion_lost"_s, u"adhesion_lost_wet"_s, u"adhesion_lost_cold"_s, u"filled_over_stop"_s}, filled);
        Attempt silent = m_right;
        silent.fill.reset();
        add("gives no verdict", DecisionPoint::FillOrStop, {u"stop_stays"_s}, silent);
        Attempt none = m_right;
        none.stops.clear();
        add("names no reason", DecisionPoint::WhyStop, {u"stop_stays"_s}, none);
        Attempt wrong = m_right;
        wrong.stops.push_back(u"no_filler_fits"_s);
        add("names a stop that does not hold", DecisionPoint::WhyStop, {u"stop_stays"_s}, wrong);
        Attempt instead = m_right;
        instead.instead = u"weld_up"_s;
        add("welds it up", DecisionPoint::InsteadOfFilling, {u"leads_nowhere"_s}, instead);
    }

    void deciding()
    {
        Attempt stopped = m_right;
        stopped.fill = false;
        add("stops for nothing", DecisionPoint::FillOrStop, {u"waits_for_nothing"_s}, stopped);
        Attempt fine = m_right;
        fine.filler = FillerClass::FinishFine;
        add("fills with finishing filler", DecisionPoint::WhichFiller, {u"filler_unfit"_s}, fine);
        for (const RejectedFiller& each : m_lesson.truth.plan.rejected) {
            if (each.reason.code == u"another_is_better"_s)
                continue;
            Attempt attempt = perfectAttempt(modelAnswerWith(each.filler, m_lesson.panel.truth, shop()), shop());
            add("unfit filler", DecisionPoint::WhichFiller, {u"filler_unfit"_s}, attempt);
        }
    }

    void preparing()
    {
        for (std::size_t i = 0; i < m_right.steps.size(); ++i) {
            Attempt attempt = m_right;
            attempt.steps.erase(attempt.steps.begin() + static_cast<std::ptrdiff_t>(i));
            if (std::ranges::count(attempt.steps, m_right.steps[i]) == 0)
                add("leaves out " + m_right.steps[i].toStdString(), DecisionPoint::StepsLeftOut, {u"step_missing"_s},
                    attempt);
        }
        for (const QString& each : m_lesson.truth.falseSteps) {
            Attempt attempt = m_right;
            attempt.steps.push_back(each);
            add("adds " + each.toStdString(), DecisionPoint::StepsThatHarm, {u"step_harms"_s}, attempt);
            const auto rival = std::ranges::find(m_right.steps, insteadOfStep(each));
            if (rival == m_right.steps.end())
                continue;
            attempt = m_right;
            attempt.steps[static_cast<std::size_t>(rival - m_right.steps.begin())] = each;
            add("in its place " + each.toStdString(), DecisionPoint::StepsThatHarm, {u"step_harms"_s}, attempt);
        }
        for (std::size_t i = 0; i + 1 < m_right.steps.size(); ++i) {
            if (!orderMatters(actOf(m_right.steps[i]), actOf(m_right.steps[i + 1])))
                continue;
            Attempt attempt = m_right;
            std::swap(attempt.steps[i], attempt.steps[i + 1]);
            add("swaps " + m_right.steps[i].toStdString(), DecisionPoint::StepsInOrder, {u"step_too_late"_s}, attempt);
        }
    }

    [[nodiscard]] std::size_t liftsOn(Face face) const
    {
        return static_cast<std::size_t>(std::ranges::count(m_right.lifts, face, &AttemptedLift::face));
    }
    [[nodiscard]] bool bridged() const
    {
        return std::ranges::any_of(m_lesson.truth.plan.lifts,
                                   [&](const Lift& each) { return each.filler != *m_lesson.truth.plan.filler; });
    }

    void laying()
    {
        const ModelAnswer& truth = m_lesson.truth;
        if (liftsOn(Face::Front) > 1 && !bridged()) {
            Attempt attempt = m_right;
            AttemptedLift& first = attempt.lifts.front();
            const std::size_t front = liftsOn(Face::Front);
            for (std::size_t i = 1; i < front; ++i) {
                first.thickness += m_right.lifts[i].thickness;
                first.batches.insert(first.batches.end(), m_right.lifts[i].batches.begin(),
                                     m_right.lifts[i].batches.end());
            }
            attempt.lifts.erase(attempt.lifts.begin() + 1, attempt.lifts.begin() + static_cast<std::ptrdiff_t>(front));
            settle(attempt, truth);
            add("one thick lift", DecisionPoint::LiftThickness, {u"overheats_and_maps"_s, u"thicker_than_sheet"_s},
                attempt);
        }
        if (m_right.lifts.front().thickness > millimetres(2)) {
            Attempt attempt = m_right;
            attempt.lifts[liftsOn(Face::Front) - 1].thickness -= millimetres(1);
            settle(attempt, truth);
            add("left low", DecisionPoint::BuildUp, {u"left_too_low"_s}, attempt);
        }
        mixing();
    }

    void mixing()
    {
        const ModelAnswer& truth = m_lesson.truth;
        const std::pair<double, QStringList> amounts[] = {{0.6, {u"cold_joint"_s}},
                                                          {6.0, {u"left_over"_s, u"gels_on_board"_s}}};
        for (const auto& [share, consequences] : amounts) {
            Attempt attempt = m_right;
            settle(attempt, truth, 1.0, share);
            onlyFirst(attempt);
            const ProductSheet& sheet = *shop().catalogue.byId(truth.plan.sheetId);
            if (share < 1.0 ||
                mixOf(attempt.lifts.front().batches.front(), sheet).filler > smallestBeadMix(sheet) * 1.1)
                add("amount", DecisionPoint::MixedAmount, consequences, attempt);
        }
        if (m_right.lifts.front().batches.size() > 2) {
            Attempt attempt = m_right;
            attempt.lifts.front().batches.resize(1);
            settle(attempt, truth);
            onlyFirst(attempt);
            add("all in one batch", DecisionPoint::MixedAmount, {u"gels_on_board"_s}, attempt);
        }
        for (const double dose : {0.6, 0.3, 1.4, 2.0}) {
            Attempt attempt = m_right;
            settle(attempt, truth, dose);
            onlyFirst(attempt);
            add("dose", DecisionPoint::HardenerDose, {dose < 1 ? u"sands_later"_s : u"gels_sooner"_s}, attempt);
        }
        Attempt none = m_right;
        for (MixedBatch& each : none.lifts.front().batches)
            each.bead = millimetres(0);
        add("no hardener", DecisionPoint::HardenerDose, {u"never_cures"_s}, none);
    }

    /// The change stays in the first lift alone.
    void onlyFirst(Attempt& attempt) const
    {
        for (std::size_t i = 1; i < attempt.lifts.size(); ++i)
            attempt.lifts[i] = m_right.lifts[i];
    }

    void timing()
    {
        const auto at = [&](const std::string& name, DecisionPoint decision, const QString& consequence, auto change) {
            Attempt attempt = m_right;
            change(attempt.lifts.back());
            add(name, decision, {consequence}, attempt);
        };
        const LiftTimes times = timesOfLast();
        using Lift = AttemptedLift;
        at("edges late", DecisionPoint::EdgesCleared, u"edges_set_hard"_s,
           [&](Lift& lift) { lift.batches.back().edgesCleared = times.gel * 1.1; });
        at("edges never", DecisionPoint::EdgesCleared, u"edges_set_hard"_s,
           [](Lift& lift) { lift.batches.back().edgesCleared.reset(); });
        at("edges at once", DecisionPoint::EdgesCleared, u"edges_smeared"_s,
           [](Lift& lift) { lift.batches.back().edgesCleared = seconds(10); });
        at("sands early", DecisionPoint::SandedAt, u"drags"_s, [&](Lift& lift) { lift.sanded = times.sand * 0.7; });
        at("sands late", DecisionPoint::SandedAt, u"stone_hard"_s,
           [&](Lift& lift) { lift.sanded = times.sand + times.easySanding * 1.2; });
        at("sands never", DecisionPoint::SandedAt, u"not_sanded"_s, [](Lift& lift) { lift.sanded.reset(); });
    }
    using LiftTimes = BatchTimes;
    [[nodiscard]] LiftTimes timesOfLast() const { return m_lesson.truth.plan.batches.back().times; }

    void finishing()
    {
        Attempt attempt = m_right;
        attempt.turned = !attempt.turned;
        add("turned or not", DecisionPoint::Turned, {u"one_face_open"_s, u"turned_for_nothing"_s}, attempt);
        attempt = m_right;
        attempt.finish->coat = millimetres(5);
        attempt.finish->coats = 1;
        add("thick coat", DecisionPoint::FinishCoats, {u"coat_too_thick"_s}, attempt);
        attempt.finish->coat = millimetres(2.5);
        attempt.finish->coats = 3;
        add("thick finish", DecisionPoint::FinishCoats, {u"finish_too_thick"_s}, attempt);
        attempt.finish->coats = 0;
        add("no coat", DecisionPoint::FinishCoats, {u"finish_too_low"_s}, attempt);
        attempt = m_right;
        attempt.finish.reset();
        add("no finish", DecisionPoint::FinishCoats, {u"not_finished"_s}, attempt);
        for (std::size_t i = 0; i < m_right.finish->tests.size(); ++i) {
            attempt = m_right;
            attempt.finish->tests.erase(attempt.finish->tests.begin() + static_cast<std::ptrdiff_t>(i));
            add("does not look", DecisionPoint::Inspected, {u"not_looked_for"_s}, attempt);
        }
        attempt = m_right;
        attempt.finish->beforePrimer *= 0.5;
        add("primes at once", DecisionPoint::PrimerAfter, {u"primed_too_soon"_s}, attempt);
    }

    const Lesson& m_lesson;
    Attempt m_right;
    std::vector<Mistake> m_all;
};

} // namespace

std::vector<Mistake> singleMistakes(const Lesson& lesson) { return Maker(lesson).all(); }

} // namespace strandbench::test
