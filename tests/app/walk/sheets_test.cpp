// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's own product sheets through the glass: typed, read from a file, kept, planned with.
#include "bench_fixture.h"
#include "shown.h"

#include "exchange/sheet_csv.h"
#include "exchange/sheets.h"

#include <QFile>

#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QString right = u"271828"_s;
const QString wrong = u"314159"_s;

/// A hole through SMC, as it is assessed at the bench.
Assessment hole()
{
    Assessment a;
    a.substrate = Substrate::Smc;
    a.damage =
        Damage{DamageKind::Hole, millimetres(60), millimetres(40), millimetres(3.5), millimetres(3.5), 4, {}, {}};
    a.rearAccess = true;
    a.surface = SurfaceState::Bare;
    a.zone = Zone::Cosmetic;
    a.moisture = Moisture::Dry;
    a.reading = Reading{celsius(18.5), celsius(17), Fraction::ofHundred(52)};
    return a;
}

/// The same sheet written by hand: other spaces and another order than ours.
const QByteArray byHand = R"({ "id":"bad", "name":"Bad", "demo":false, "filler_class":"mixed_strand",
 "greatest_lift_mm":5.5, "density_g_per_ml":1.35, "names_zinc":true,
 "working_min":{"early":4, "nominal":5, "late":6.5}, "sanding_min":{"nominal":11, "early":9, "late":14},
 "reference_c":23, "easy_sanding_min":7, "sanding_test_mm":3,
 "heat_kj_per_kg":130, "specific_heat_j_per_kg_k":1250, "conductivity_w_per_m_k":0.35, "shrinkage_percent":3.5,
 "styrene_percent":15, "peroxide_percent":50, "bead_mg_per_mm":23,
 "hardener_percent":{"nominal":2, "low":1.5, "high":2.5, "low_caution":1.2, "high_caution":3},
 "panel_c":{"low":15, "high":30, "low_caution":10}, "peak_limit_c":95, "store_c":{"low":5, "high":25},
 "months_sealed":12, "months_opened":6 })";

/// A plan without what the bytes of a sheet alone make different.
RepairPlan withoutHashes(RepairPlan plan)
{
    plan.sheetHash.clear();
    for (Lift& each : plan.lifts)
        each.sheetHash.clear();
    return plan;
}

class SheetsOnBench : public BenchTest {
protected:
    void start(bool withPin = true)
    {
        Settings settings = demoSettings();
        settings.backupFolder = folder();
        open(settings);
        if (withPin && !bench().door().isSet()) {
            ASSERT_TRUE(bench().door().set(right).empty());
        }
    }
    void keyIn(const QString& text)
    {
        for (const QChar each : text)
            tap(each == u'.' ? u"key_point"_s : u"key_"_s + each);
    }
    void toSheets()
    {
        window().showHome();
        bench().thumb().settle();
        tap(u"set_up"_s);
        for (int i = 0; i < 5; ++i)
            tap(u"answer_way_on"_s);
        ASSERT_EQ(screen(), u"screen_set_up_sheets"_s);
    }
    void type(const QString& path, const QString& figure)
    {
        tap(u"field_"_s + path);
        keyIn(figure);
        tap(u"answer_way_on"_s);
        bench().thumb().settle();
    }
    void next()
    {
        tap(u"answer_way_on"_s);
        bench().thumb().settle();
    }
    /// Types the sheet of byHand in, up to what the engine makes of it.
    void typeSheet()
    {
        toSheets();
        tap(u"new_sheet"_s);
        tap(u"kind_mixed_strand"_s);
        ASSERT_EQ(screen(), u"screen_set_up_product_edit"_s);
        tap(u"field_name"_s);
        for (const QString& each : {u"letter_1"_s, u"letter_0"_s, u"letter_3"_s})
            tap(each);
        next();
        type(u"density_g_per_ml"_s, u"1.35"_s);
        type(u"greatest_lift_mm"_s, u"5.5"_s);
        tap(u"field_names_zinc"_s);
        next();
        type(u"working_min.nominal"_s, u"5"_s);
        type(u"working_min.early"_s, u"4"_s);
        type(u"working_min.late"_s, u"6.5"_s);
        type(u"sanding_min.nominal"_s, u"11"_s);
        type(u"sanding_min.early"_s, u"9"_s);
        type(u"sanding_min.late"_s, u"14"_s);
        type(u"reference_c"_s, u"23"_s);
        next();
        type(u"hardener_percent.nominal"_s, u"2"_s);
        next();
        type(u"peak_limit_c"_s, u"95"_s);
        next();
        next();
        next();
    }
    void givePin(const QString& pin)
    {
        ASSERT_EQ(screen(), u"screen_pin"_s);
        keyIn(pin);
        tap(u"answer_way_on"_s);
        bench().thumb().settle();
    }
    void keep()
    {
        tap(u"answer_way_on"_s);
        givePin(right);
        ASSERT_EQ(screen(), u"screen_set_up_product_page"_s) << window().screen()->troubleShown().toStdString();
    }
    void write(const QString& name, const QByteArray& bytes) const
    {
        QFile file(folder() + u'/' + name);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    void pick(const QString& name)
    {
        toSheets();
        tap(u"sheet_from_file"_s);
        ASSERT_EQ(screen(), u"screen_set_up_product_pick"_s);
        for (int i = 0; i < 9; ++i)
            if (shown(window(), u"file_%1"_s.arg(i)) == name)
                return tap(u"file_%1"_s.arg(i));
        ADD_FAILURE() << name.toStdString() << " is not offered";
    }
    /// As the log holds it.
    [[nodiscard]] std::vector<KeptSheet> kept(const QString& id)
    {
        const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
        return opened ? (*opened)->sheets()->versions(id) : std::vector<KeptSheet>{};
    }
    [[nodiscard]] QByteArray shopSheet(const QByteArray& from = {}, const QByteArray& to = {}) const
    {
        QByteArray bytes = byHand;
        return from.isEmpty() ? bytes : bytes.replace(from, to);
    }
    /// Keeps bytes with the PIN, without the glass.
    void keepDirectly(const QByteArray& bytes)
    {
        const auto sheet = readSheet(bytes);
        ASSERT_TRUE(sheet);
        bool done = false;
        std::optional<LogFailure> failed;
        bench().bench().submitAsSupervisor(
            benchSubject(), u"Ana"_s, SheetKept{sheet->id, sheet->hash}, right,
            [&](const std::optional<PinRefused>& refused, const std::optional<LogFailure>& failure) {
                failed = refused ? std::optional(LogFailure{}) : failure;
                done = true;
            },
            {bytes});
        ASSERT_TRUE(QTest::qWaitFor([&] { return done; }));
        ASSERT_FALSE(failed) << failed->detail.toStdString();
    }
};

// Invariant, and what the issue asks for: the way in does not matter.
TEST_F(SheetsOnBench, ASheetTypedByTapsPlansAsTheSameSheetFromAFile)
{
    start();
    const RepairPlan demo = bench().bench().plan(hole());
    ASSERT_EQ(demo.filler, FillerClass::MixedStrand) << "or the sheet typed here would not be the one that is used";
    typeSheet();
    EXPECT_FALSE(shown(window(), u"outlook_gel_0"_s).isEmpty());
    keep();
    ASSERT_EQ(kept(u"bad"_s).size(), 1U);
    const RepairPlan typed = bench().bench().plan(hole());
    EXPECT_EQ(typed.sheetId, u"bad"_s);
    EXPECT_NE(typed, demo);
    // The same values in a file written by hand, kept as its next version.
    write(u"by hand.json"_s, byHand);
    pick(u"by hand.json"_s);
    keep();
    ASSERT_EQ(kept(u"bad"_s).size(), 2U);
    EXPECT_EQ(kept(u"bad"_s).front().sheet.source, byHand) << "as the file has it, byte for byte";
    const RepairPlan fromFile = bench().bench().plan(hole());
    EXPECT_NE(fromFile.sheetHash, typed.sheetHash);
    EXPECT_EQ(withoutHashes(fromFile), withoutHashes(typed));
    // And as a spreadsheet: the bytes of a CSV file's sheet are those that typing makes, so that nothing differs.
    const auto typedSheet = kept(u"bad"_s).back().sheet;
    write(u"typed.csv"_s, sheetToCsv(typedSheet));
    pick(u"typed.csv"_s);
    keep();
    EXPECT_EQ(bench().bench().plan(hole()), typed);
    start(); // and after a restart
    EXPECT_EQ(bench().bench().plan(hole()), typed);
}

TEST_F(SheetsOnBench, WithoutThePinNothingIsKept)
{
    start(false);
    write(u"by hand.json"_s, byHand);
    pick(u"by hand.json"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_pin"_s);
    EXPECT_FALSE(window().screen()->troubleShown().isEmpty()) << "no PIN is set";
    ASSERT_TRUE(bench().door().set(right).empty());
    pick(u"by hand.json"_s);
    tap(u"answer_way_on"_s);
    givePin(wrong);
    EXPECT_EQ(screen(), u"screen_pin"_s);
    EXPECT_TRUE(kept(u"bad"_s).empty());
    EXPECT_EQ(bench().bench().planning().catalogue.byId(u"bad"_s), nullptr);
    bool done = false;
    bench().bench().submit(benchSubject(), u"Ana"_s, SheetKept{u"bad"_s, readSheet(byHand)->hash},
                           [&](const std::optional<LogFailure>& failure) {
                               EXPECT_TRUE(failure);
                               done = true;
                           });
    ASSERT_TRUE(QTest::qWaitFor([&] { return done; }));
    int refused = 0;
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    const auto events = (*opened)->events(benchSubject());
    ASSERT_TRUE(events);
    for (const Event& each : *events)
        if (const auto* one = std::get_if<ActRefused>(&each.payload))
            refused += one->act == SupervisorAct::Sheets ? 1 : 0;
    EXPECT_EQ(refused, 2) << "each is in the log";
}

TEST_F(SheetsOnBench, WhatIsWrongIsToldWhereItIsTyped)
{
    start();
    toSheets();
    tap(u"new_sheet"_s);
    tap(u"kind_long_strand"_s);
    tap(u"field_density_g_per_ml"_s);
    EXPECT_EQ(figuresOf(shown(window(), u"typed_fault"_s)), QStringList({u"0.3"_s, u"4"_s})) << "what is allowed";
    keyIn(u"14"_s);
    EXPECT_TRUE(shown(window(), u"typed_fault"_s).contains(u"14"_s));
    EXPECT_FALSE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
    tap(u"key_clear"_s);
    keyIn(u"1.4"_s);
    EXPECT_TRUE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
    next();
    next(); // times
    type(u"working_min.nominal"_s, u"5"_s);
    type(u"working_min.early"_s, u"6"_s);
    type(u"working_min.late"_s, u"8"_s);
    EXPECT_FALSE(shown(window(), u"page_fault"_s).isEmpty()) << "the earliest is after the nominal";
    for (int i = 0; i < 5; ++i)
        next();
    EXPECT_TRUE(shown(window(), u"outlook_none"_s).contains(u"Greatest lift"_s)) << "what is missing is named";
    EXPECT_FALSE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
}

TEST_F(SheetsOnBench, AnOpenRepairGoesOnWithTheVersionItWasPlannedWith)
{
    start();
    keepDirectly(byHand);
    walkTo(skirtPanel(), Station::Mix);
    const Repair* repair = bench().repair(u"4421"_s);
    ASSERT_EQ(repair->plan->sheetId, u"bad"_s);
    const QByteArray then = repair->plan->sheetHash;
    const QByteArray newer = shopSheet("\"density_g_per_ml\":1.35", "\"density_g_per_ml\":1.75");
    keepDirectly(newer);
    start(); // and the bench is closed and opened between
    EXPECT_EQ(bench().bench().planning().catalogue.byId(u"bad"_s)->source, newer);
    walkTo(skirtPanel(), Station::Spread);
    const BatchRun run = bench().repair(u"4421"_s)->runs.front();
    EXPECT_EQ(run.mixed.sheetHash, then);
    EXPECT_EQ(run.mixed.filler, bench().repair(u"4421"_s)->plan->batches.front().mix.filler);
    const RepairPlan fresh = bench().bench().plan(hole());
    EXPECT_EQ(fresh.sheetId, u"bad"_s);
    EXPECT_NE(fresh.sheetHash, then);
    const LotBook& lots = bench().bench().lots();
    for (const LotOfProduct& lot : lots.lots())
        for (const BatchOfLot& batch : lots.batchesOf(lot))
            EXPECT_FALSE(batch.by(*readSheet(newer))) << "it teaches the new version nothing";
    const auto report = verifyLog(log());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
}

TEST_F(SheetsOnBench, OneLaidAsideIsPlannedWithNoMore)
{
    start();
    keepDirectly(byHand);
    EXPECT_EQ(bench().bench().plan(hole()).sheetId, u"bad"_s);
    toSheets();
    tap(u"sheet_bad"_s);
    ASSERT_TRUE(bench().thumb().hold(u"lay_aside"_s));
    givePin(right);
    ASSERT_EQ(screen(), u"screen_set_up_product_page"_s);
    EXPECT_EQ(bench().bench().plan(hole()).sheetId, u"demo_mixed_strand"_s);
    start();
    EXPECT_EQ(bench().bench().plan(hole()).sheetId, u"demo_mixed_strand"_s);
}

TEST_F(SheetsOnBench, ADemoSheetIsMarkedByItsFlagNotItsName)
{
    start();
    keepDirectly(shopSheet("\"demo\":false", "\"demo\":true"));
    toSheets();
    EXPECT_TRUE(bench().thumb().find(u"sheet_bad"_s)->accessibleDescription().contains(u"demo sheet"_s));
    tap(u"sheet_bad"_s);
    EXPECT_TRUE(shown(window(), u"product_demo"_s).contains(u"invented"_s));
    EXPECT_TRUE(shown(window(), u"context"_s).contains(u"demo sheet"_s));
}

TEST_F(SheetsOnBench, AFileIsWrittenOnceAndNoneIsOverwritten)
{
    start();
    keepDirectly(byHand);
    const auto written = [&] {
        toSheets();
        tap(u"sheet_bad"_s);
        tap(u"export_sheet"_s);
        tap(u"answer_way_on"_s);
        bench().thumb().settle();
        return shown(window(), u"product_told"_s);
    };
    EXPECT_TRUE(written().contains(u"JSON"_s));
    const auto read = [&](const QString& name) {
        QFile file(folder() + u'/' + name);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    EXPECT_EQ(read(u"bad.json"_s), byHand);
    EXPECT_EQ(read(u"bad.csv"_s), sheetToCsv(*readSheet(byHand)));
    write(u"bad.json"_s, "mine");
    EXPECT_FALSE(written().contains(u"JSON"_s));
    EXPECT_EQ(read(u"bad.json"_s), "mine");
}

TEST_F(SheetsOnBench, AFileThatIsNoSheetSaysWhy)
{
    start();
    write(u"odd.csv"_s, "field,value,unit\r\nname,Odd,\r\ndensity_g_per_ml,9,g/ml\r\n");
    pick(u"odd.csv"_s);
    ASSERT_EQ(screen(), u"screen_set_up_product_faults"_s);
    EXPECT_FALSE(shown(window(), u"fault_0"_s).isEmpty());
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_set_up_product_pick"_s);
}

} // namespace
} // namespace strandbench::test
