// SPDX-License-Identifier: GPL-3.0-or-later
// Plans many repairs and reads every reason, step and stretch that comes out: each has a text, and what the
// planner hands over is what the text has places for.
#include "readable.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "plan/planner.h"
#include "words/reasons.h"
#include "words/words.h"

#include <algorithm>
#include <functional>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Words words(UnitSystem::Metric, QLocale::c());

Assessment fillable()
{
    Assessment assessment;
    assessment.job = u"4421"_s;
    assessment.panel = u"skirt panel"_s;
    assessment.substrate = Substrate::Smc;
    assessment.damage =
        Damage{DamageKind::Hole, millimetres(60), millimetres(40), millimetres(3.5), millimetres(3.5), 4.0, {}, {}};
    assessment.rearAccess = true;
    assessment.surface = SurfaceState::Bare;
    assessment.zone = Zone::Cosmetic;
    assessment.moisture = Moisture::Dry;
    assessment.reading = Reading{celsius(20), celsius(20), Fraction::ofHundred(50)};
    return assessment;
}

template <class E> std::vector<E> allOf()
{
    std::vector<E> values;
    for (const auto& entry : Codes<E>::table)
        values.push_back(entry.first);
    return values;
}

void addDamages(std::vector<Assessment>& all)
{
    for (const Substrate substrate : allOf<Substrate>())
        for (const DamageKind kind : allOf<DamageKind>())
            for (const double size : {8.0, 30.0, 60.0, 90.0})
                for (const int other : {0, 1, 2}) {
                    Assessment each = fillable();
                    each.substrate = substrate;
                    each.damage = Damage{kind,
                                         millimetres(size),
                                         millimetres(kind == DamageKind::Crack ? 0 : size / 2),
                                         millimetres(kind == DamageKind::Dent ? size / 10 : 3.0),
                                         millimetres(3.0),
                                         other == 2 && kind == DamageKind::Hole ? 0.0 : 4.0,
                                         allOf<WeldKind>()[std::size_t(other)],
                                         other == 0};
                    each.rearAccess = other == 0;
                    all.push_back(each);
                }
}

void addSurroundings(std::vector<Assessment>& all)
{
    const auto with = [&](const std::function<void(Assessment&)>& change) {
        all.push_back(fillable());
        change(all.back());
    };
    for (const SurfaceState value : allOf<SurfaceState>())
        with([&](Assessment& each) { each.surface = value; });
    for (const Zone value : allOf<Zone>())
        with([&](Assessment& each) { each.zone = value; });
    for (const CoreMaterial value : allOf<CoreMaterial>())
        with([&](Assessment& each) { each.core = value; });
    with([](Assessment& each) { each.moisture = Moisture::Damp; });
    for (const double air : {5.0, 15.0, 20.0, 40.0})
        for (const double panel : {5.0, 12.0, 20.0, 40.0})
            with([&](Assessment& each) {
                each.reading = Reading{celsius(air), celsius(panel), Fraction::ofHundred(60)};
            });
    all.push_back({}); // nothing answered
    with([](Assessment& each) { each.rearAccess.reset(); });
    with([](Assessment& each) { each.damage = Damage{}; }); // its kind alone
    for (const DamageKind kind : {DamageKind::WeldSeam, DamageKind::BondSeam})
        with([&](Assessment& each) { // a seam, the question about it open
            each.damage->kind = kind;
        });
}

/// Plans that the cure stops: with a limit that nothing keeps, and with sheets that have a slip in them.
void addCureStops(std::vector<RepairPlan>& plans, const CureEngine& engine)
{
    Assumptions cool;
    cool.laminatePeak = celsius(20.1);
    plans.push_back(planRepair(fillable(), {builtInTable(), demoCatalogue(), builtInSteps(), cool, engine}));
    const auto withSheet = [&](const std::function<void(ProductSheet&)>& slip) {
        ProductSheet sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
        slip(sheet);
        const Catalogue two({sheet, *demoCatalogue().byClass(FillerClass::FinishSmooth)});
        plans.push_back(planRepair(fillable(), {builtInTable(), two, builtInSteps(), {}, engine}));
    };
    withSheet([](ProductSheet& sheet) { sheet.sanding.nominal *= 40.0; });
    withSheet([](ProductSheet& sheet) {
        sheet.cure.maxConversionAtReference = 0.3;
        sheet.cure.maxConversionPerKelvin = 0;
    });
    withSheet([](ProductSheet& sheet) {
        sheet.working.nominal = minutes(120);
        sheet.sanding.nominal = minutes(480);
        sheet.cure.activationEnergyJoulesPerMole = 200'000;
    });
}

/// A case that runs away: no sheet that can be written has one, so it is solved by itself.
Reason unsolved(const CureEngine& engine)
{
    CureCase wild =
        *planRepair(fillable(), {builtInTable(), demoCatalogue(), builtInSteps(), {}, engine}).lifts.front().cureCase;
    wild.kinetics.k1 = perSecond(1);
    wild.kinetics.k2 = perSecond(1);
    wild.kinetics.law.activationEnergyJoulesPerMole = 300'000;
    wild.kinetics.reference = celsius(0);
    wild.heat = joulesPerKilogram(500'000);
    wild.thickness = millimetres(60);
    const CureAnswer<LayerCure> answer = engine.solve(wild);
    return answer ? Reason{} : answer.error();
}

/// Every plan of the sweep.
std::vector<RepairPlan> plans()
{
    std::vector<Assessment> all;
    addDamages(all);
    addSurroundings(all);
    const CureEngine engine;
    const Catalogue empty;
    std::vector<RepairPlan> plans;
    for (const Assessment& each : all) {
        plans.push_back(planRepair(each, {builtInTable(), demoCatalogue(), builtInSteps(), {}, engine}));
        plans.push_back(planRepair(each, {builtInTable(), empty, builtInSteps(), {}, engine}));
    }
    Assumptions slow;
    slow.kneading = minutes(20);
    plans.push_back(planRepair(fillable(), {builtInTable(), demoCatalogue(), builtInSteps(), slow, engine}));
    addCureStops(plans, engine);
    return plans;
}

/// The numbers of arguments that each code was seen with.
using Seen = std::map<QString, QSet<std::size_t>>;

void read(const Reason& reason, Seen& seen)
{
    const QString text = words.reason(reason);
    EXPECT_TRUE(isReadable(text)) << reason.code.toStdString();
    EXPECT_LE(wordsIn(text), 24) << text.toStdString();
    EXPECT_TRUE(text.endsWith(u'.')) << text.toStdString();
    seen[reason.code].insert(reason.arguments.size());
}

Seen readAll(const std::vector<RepairPlan>& plans)
{
    Seen seen;
    for (const RepairPlan& plan : plans) {
        for (const Stop& stop : plan.stops) {
            read(stop.reason, seen);
            EXPECT_TRUE(isReadable(words.stop(stop).wrong));
        }
        for (const Reason& reason : plan.reasons)
            read(reason, seen);
        for (const RejectedFiller& rejected : plan.rejected)
            read(rejected.reason, seen);
    }
    return seen;
}

TEST(EveryReason, OfManyPlansIsReadableAndEveryStopIsAmongThem)
{
    Seen seen = readAll(plans());
    read(unsolved(CureEngine()), seen);
    for (const QString& code : knownStopCodes())
        EXPECT_TRUE(seen.contains(code)) << code.toStdString() << " never came up: the sweep is too narrow";
    for (const QString& code : {u"weigh_small"_s, u"backing_first"_s, u"bridged_first"_s, u"edges_square"_s,
                                u"dent_deep"_s, u"panel_cool"_s, u"another_is_better"_s, u"demo_sheet"_s})
        EXPECT_TRUE(seen.contains(code)) << code.toStdString();
    // Told only of a class without a sheet beside one that has its own, which the demo sheets never are.
    for (const QString& code : {u"no_sheet"_s, u"no_cell"_s})
        EXPECT_TRUE(isReadable(words.reason({code, {}}))) << code.toStdString();
}

TEST(EveryReason, HasPlacesForItsArgumentsAndNoOthers)
{
    QSet<QString> ofTheTable; // told with the filler's name or without: no places
    for (const auto& entry : Codes<FillerClass>::table)
        for (const QString& column : DecisionTable::columns())
            ofTheTable.insert(builtInTable().cell(entry.first, column).reason);
    for (const auto& [code, counts] : readAll(plans())) {
        const QSet<QString> places = placeholdersIn(words::reasonText(code));
        if (ofTheTable.contains(code)) {
            EXPECT_TRUE(places.isEmpty()) << code.toStdString();
            continue;
        }
        ASSERT_EQ(counts.size(), 1) << code.toStdString() << " comes with different numbers of arguments";
        EXPECT_EQ(places, placesUpTo(*counts.begin())) << code.toStdString();
    }
}

TEST(EveryReason, OfAMixIsReadable)
{
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    Seen seen;
    for (const double puddle : {5.0, 20.0, 40.0, 101.6, 240.0, 260.0, 400.0})
        for (const Reason& reason : mixAdvice(mixForPuddle(millimetres(puddle), sheet), sheet, millimetres(250)))
            read(reason, seen);
    for (const QString& code : {u"puddle_small"_s, u"weigh_small"_s, u"split_large"_s, u"wider_than_board"_s})
        EXPECT_TRUE(seen.contains(code)) << code.toStdString();
    for (const auto& [code, counts] : seen)
        EXPECT_EQ(placeholdersIn(words::reasonText(code)), placesUpTo(*counts.begin())) << code.toStdString();
}

TEST(EveryReason, GoesWithStepsAndStretchesThatAreReadable)
{
    std::size_t steps = 0;
    for (const RepairPlan& plan : plans()) {
        for (const auto* list : {&plan.prep, &plan.finishing})
            for (const Step& step : *list) {
                const StepText text = words.step(step);
                EXPECT_TRUE(isReadable(text.sentence) && isReadable(text.detail)) << step.code.toStdString();
                EXPECT_EQ(text.cautions.size(), step.cautions.size());
                ++steps;
            }
        for (const TimelineEntry& entry : plan.timeline)
            EXPECT_TRUE(isReadable(words.timelineName(entry.code))) << entry.code.toStdString();
    }
    EXPECT_GT(steps, 100U);
}

} // namespace
} // namespace strandbench
