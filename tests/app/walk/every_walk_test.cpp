// SPDX-License-Identifier: GPL-3.0-or-later
// Every walk that comes through the door, from taking in to hand-over: each screen against the plan, and each walk
// against the facts of its trade (common practice, no source, unless one is named).
#include "bench_fixture.h"
#include "plan_checker.h"

#include "walk/every_job.h"

using namespace Qt::StringLiterals;

namespace strandbench {
inline void PrintTo(const WalkedJob& job, std::ostream* out) { *out << job.name.toStdString(); }
} // namespace strandbench

namespace strandbench::test {
namespace {

class EveryWalk : public BenchTest, public ::testing::WithParamInterface<WalkedJob> {
protected:
    /// Walks it all; on the plan also looks at why this filler.
    void walkAll()
    {
        // Languages and units by turns: each walk is walked once.
        const auto turn = static_cast<std::size_t>(GetParam().job.job.toInt());
        Settings settings = demoSettings();
        settings.units = turn % 3 == 0 ? UnitSystem::UsCustomary : UnitSystem::Metric;
        open(settings);
        checker = std::make_unique<PlanChecker>(bench(), GetParam().job);
        Walk walk(bench(), GetParam().job);
        walk.touched = [&](const Touch&) {
            checker->check();
            if (screen() == u"screen_plan"_s && why.isEmpty())
                lookAtWhy();
        };
        ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
        ASSERT_TRUE(checker->plan().has_value());
    }
    void lookAtWhy()
    {
        tap(u"why"_s);
        why = shown(window(), u"why_reasons"_s);
        const RepairPlan plan = bench().bench().plan(bench().repair(GetParam().job.job)->assessment);
        for (const Reason& each : plan.reasons)
            EXPECT_TRUE(why.contains(checker->words().reason(each))) << why.toStdString();
        const QString others = shown(window(), u"why_others"_s);
        for (const RejectedFiller& each : plan.rejected)
            EXPECT_TRUE(others.contains(checker->words().reason(each.reason))) << others.toStdString();
        tap(u"answer_back"_s);
    }
    [[nodiscard]] const RepairPlan& plan() const { return *checker->plan(); }
    [[nodiscard]] qsizetype at(const QString& step) const { return checker->prepared().indexOf(step); }
    void expectInOrder(const QStringList& steps) const
    {
        for (const QString& each : steps)
            EXPECT_GE(at(each), 0) << each.toStdString() << " is missing";
        for (qsizetype i = 1; i < steps.size(); ++i)
            EXPECT_LT(at(steps[i - 1]), at(steps[i]))
                << steps[i - 1].toStdString() << " after " << steps[i].toStdString();
    }
    void expectNone(const QStringList& steps) const
    {
        for (const QString& each : steps)
            EXPECT_EQ(at(each), -1) << each.toStdString() << " has no place in this walk";
    }
    [[nodiscard]] const Step& step(const QString& code) const
    {
        return *std::find_if(plan().prep.begin(), plan().prep.end(), [&](const Step& s) { return s.code == code; });
    }
    [[nodiscard]] bool cautioned(const QString& code, const QString& caution) const
    {
        const std::vector<QString>& all = step(code).cautions;
        return std::find(all.begin(), all.end(), caution) != all.end();
    }
    [[nodiscard]] bool advised(const QString& code) const
    {
        return std::any_of(plan().reasons.begin(), plan().reasons.end(),
                           [&](const Reason& each) { return each.code == code; });
    }
    void expectTheOrder() const;
    void expectTheFinish() const;
    void expectOfComposite() const;
    void expectOfMetal() const;

    std::unique_ptr<PlanChecker> checker;
    QString why;
};

QStringList codesOf(const std::vector<Step>& steps)
{
    QStringList codes;
    for (const Step& each : steps)
        codes << each.code;
    return codes;
}

/// Gear before anything, washed before solvent, solvent before any abrasive, dust off before filling.
void EveryWalk::expectTheOrder() const
{
    EXPECT_EQ(checker->prepared(), codesOf(plan().prep));
    EXPECT_EQ(checker->finished(), codesOf(plan().finishing));
    EXPECT_EQ(at(u"gear_on"_s), 0);
    const bool metal = at(u"abrade_80_metal"_s) >= 0;
    EXPECT_NE(metal, at(u"abrade_80"_s) >= 0) << "the one or the other";
    const QString degrease = at(u"degrease"_s) >= 0 ? u"degrease"_s : u"degrease_little"_s;
    expectInOrder({u"wash"_s, degrease, u"flash_off"_s, u"dry"_s, metal ? u"abrade_80_metal"_s : u"abrade_80"_s,
                   metal ? u"wipe_metal"_s : u"dust_off"_s, metal ? u"read_panel_metal"_s : u"read_panel"_s});
    for (const QString& abrasive :
         {u"strip_paint"_s, u"cut_to_sound"_s, u"bevel"_s, u"dress_weld"_s, u"squeeze_out_off"_s, u"open_gouge"_s})
        EXPECT_TRUE(at(abrasive) < 0 || at(u"flash_off"_s) < at(abrasive)) << "solvent before any abrasive, and gone";
    EXPECT_EQ(at(metal ? u"read_panel_metal"_s : u"read_panel"_s), plan().prep.size() - 1);
    EXPECT_EQ(checker->timesOf(u"screen_mix"_s),
              static_cast<int>(plan().batches.size() + plan().finish.batches.size()));
}

/// No thicker than 6 mm finished in all, and each coat within its sheet: 3 mm of the demo sheet.
void EveryWalk::expectTheFinish() const
{
    EXPECT_LE(inMillimetres(plan().finish.thickness), 6.0 + 1e-9);
    EXPECT_LE(inMillimetres(plan().finish.limitInAll), 6.0 + 1e-9);
    EXPECT_LE(inMillimetres(plan().finish.thickness) / plan().finish.coats, 3.0 + 1e-9);
    const DemoJob& job = GetParam().job; // 0.5 mm left low; of a shallow damage half of its depth at most
    const auto depth = job.figures.find(u"depth_mm"_s);
    const double deep = depth == job.figures.end() || depth->second.isEmpty() ? 1.0 : depth->second.toDouble();
    EXPECT_GE(inMillimetres(plan().finish.thickness), std::min(0.5, deep / 2) - 1e-9);
    Mass fibre = grams(0);
    for (const Batch& each : plan().batches)
        fibre += each.mix.filler;
    EXPECT_NEAR(inGrams(fibre), inGrams(plan().fillerTotal), 1e-6);
}

void EveryWalk::expectOfComposite() const
{
    expectNone({u"own_tools"_s, u"wipe_metal"_s, u"flash_off_metal"_s, u"abrade_80_metal"_s, u"dress_weld"_s});
    EXPECT_LE(inCelsius(*plan().peakLimit), 90.0 + 1e-9) << "laminate and SMC are kept under 90 degrees";
}

/// Metal has no fibre to open; bare, it is wiped once, flashed off and filled within the hour.
void EveryWalk::expectOfMetal() const
{
    expectNone({u"degrease_little"_s, u"cut_to_sound"_s, u"find_cracks"_s, u"stop_drill"_s, u"open_gouge"_s, u"bevel"_s,
                u"bevel_both"_s, u"dust_off"_s, u"backing_behind"_s, u"backing_through"_s, u"dam"_s});
    expectInOrder({u"abrade_80_metal"_s, u"wipe_metal"_s, u"flash_off_metal"_s, u"read_panel_metal"_s});
    EXPECT_TRUE(cautioned(u"read_panel_metal"_s, u"within_the_hour"_s));
}

TEST_P(EveryWalk, ShowsThePlanAndKeepsTheTrade)
{
    ASSERT_NO_FATAL_FAILURE(walkAll());
    const QString name = GetParam().name;
    expectTheOrder();
    expectTheFinish();
    const bool composite = name.contains(u"_frp"_s) || name.contains(u"_smc"_s);
    composite ? expectOfComposite() : expectOfMetal();
    EXPECT_EQ(checker->timesOf(u"screen_turn"_s), name.startsWith(u"hole_smc"_s) ? 1 : 0)
        << "one face alone: nothing is turned";
    EXPECT_EQ(at(u"own_tools"_s) >= 0, name == u"dent_aluminium"_s);
    EXPECT_EQ(at(u"strip_paint"_s) < 0, name == u"gouge_galvanised_epoxy"_s) << "cured epoxy stays on";
    EXPECT_EQ(advised(u"dent_deep"_s), name == u"dent_steel"_s) << "3.5 mm is cautioned, 2.5 mm is not";

    if (name == u"crack_frp"_s) {
        expectInOrder({u"cut_to_sound"_s, u"find_cracks"_s, u"stop_drill"_s, u"bevel"_s});
        const std::vector<Argument>& drill = step(u"stop_drill"_s).arguments; // 3/32 to 1/8 in: AC 43.13-1B
        EXPECT_NEAR(inInches(std::get<Length>(drill.at(0))), 3.0 / 32, 1e-4);
        EXPECT_NEAR(inInches(std::get<Length>(drill.at(1))), 1.0 / 8, 1e-4);
    } else if (name == u"hole_frp_one_face"_s) {
        expectInOrder({u"bevel"_s, u"backing_through"_s, u"abrade_80"_s});
        expectNone({u"backing_behind"_s, u"abrade_back"_s, u"dam"_s, u"bevel_both"_s});
        EXPECT_TRUE(cautioned(u"backing_through"_s, u"lay_up_catalyst"_s)) << "never the cream hardener";
        EXPECT_TRUE(advised(u"backing_first"_s));
        EXPECT_EQ(plan().lifts.back().filler, FillerClass::MixedStrand) << "mixed strand ends it, whatever bridges";
    } else if (name.startsWith(u"bond_seam"_s)) {
        expectInOrder({u"squeeze_out_off"_s, u"bevel_upper_panel"_s, u"abrade_80"_s, u"dust_off"_s});
        const Length half = std::get<Length>(step(u"bevel_upper_panel"_s).arguments.at(0));
        EXPECT_LE(inMillimetres(half), GetParam().job.figures.at(u"panel_thickness_mm"_s).toDouble() / 2 + 1e-9);
        EXPECT_EQ(plan().filler, FillerClass::ShortStrand) << "dense short strand is best on a bond seam";
        EXPECT_LE(inCelsius(*plan().peakLimit), 80.0 + 1e-9);
    } else if (name == u"weld_seam_steel"_s) {
        expectInOrder({u"strip_paint"_s, u"dress_weld"_s, u"abrade_80_metal"_s});
        EXPECT_EQ(plan().filler, FillerClass::ShortStrand) << "dense short strand is best on a solid weld";
    } else if (name.startsWith(u"gouge_galvanised"_s)) {
        EXPECT_TRUE(plan().filler == FillerClass::ShortStrand || plan().filler == FillerClass::MixedStrand)
            << "the demo sheets that name zinc";
        EXPECT_TRUE(why.contains(u"zinc"_s)) << why.toStdString();
    } else if (name.startsWith(u"hole_smc"_s)) {
        const bool large = name == u"hole_smc"_s; // over 50 mm a backing takes the dam's place
        expectInOrder({u"find_cracks"_s, u"stop_drill"_s, u"bevel_both"_s, u"abrade_back"_s,
                       large ? u"backing_behind"_s : u"dam"_s});
        EXPECT_EQ(plan().filler, FillerClass::MixedStrand);
    }
}

INSTANTIATE_TEST_SUITE_P(ThroughTheDoor, EveryWalk, ::testing::ValuesIn(everyWalk()),
                         [](const auto& each) { return each.param.name.toStdString(); });

} // namespace
} // namespace strandbench::test
