// SPDX-License-Identifier: GPL-3.0-or-later
// Product and lots in the hand: chosen by tile, key pad, keyboard and scan, remembered, and told by the act.
#include "bench_fixture.h"
#include "shown.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "repair/mixing.h"

#include <QDir>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class InHand : public BenchTest {
protected:
    void toTheMix()
    {
        open();
        walkTo(skirtPanel(), Station::Mix);
    }
    void scan(const QString& text)
    {
        EXPECT_TRUE(window().screen()->scanned(text));
        bench().thumb().settle();
    }
    void keyIn(const QStringList& keys)
    {
        tap(u"another_lot"_s);
        for (const QString& each : keys)
            tap(u"key_"_s + each);
        tap(u"answer_way_on"_s);
    }
    [[nodiscard]] Settings onDisk() const
    {
        return SettingsFile(QDir(folder()).filePath(u"bench.ini"_s)).load().settings;
    }
    [[nodiscard]] const HardenerIn& mixed() { return bench().repair(u"4421"_s)->runs.front().mixed; }
    const QString m_mixed = u"demo_mixed_strand"_s;
};

TEST_F(InHand, LotsByKeyPadAreShownRememberedAndToldByTheAct)
{
    toTheMix();
    EXPECT_TRUE(shown(window(), u"in_hand"_s).contains(u"not told"_s));
    tap(u"in_hand"_s);
    ASSERT_EQ(screen(), u"screen_lots"_s);
    keyIn({u"7"_s, u"dash"_s, u"1"_s});
    keyIn({u"3"_s}); // what is still not told comes next: the hardener
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_mix"_s);
    EXPECT_TRUE(shown(window(), u"in_hand"_s).contains(u"7-1"_s));
    EXPECT_EQ(onDisk().lots.at(m_mixed), QStringList{u"7-1"_s});
    EXPECT_EQ(onDisk().lots.at(hardenerKey), QStringList{u"3"_s});
    open(onDisk()); // a restart
    window().showRepair(bench().repair(u"4421"_s)->id);
    bench().thumb().settle();
    EXPECT_TRUE(shown(window(), u"in_hand"_s).contains(u"7-1"_s)) << shown(window(), u"in_hand"_s).toStdString();
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    EXPECT_EQ(mixed().lot, u"7-1"_s);
    EXPECT_EQ(mixed().hardenerLot, u"3"_s);
    EXPECT_EQ(mixed().sheetId, m_mixed);
    const auto read = RepairLog::open(log(), LogMode::ReadOnly);
    ASSERT_TRUE(read);
    const auto events = (*read)->events(bench().repair(u"4421"_s)->id);
    ASSERT_TRUE(events);
    const auto* told = std::get_if<HardenerIn>(&events->back().payload);
    ASSERT_TRUE(told);
    EXPECT_EQ(told->lot, u"7-1"_s);
    EXPECT_EQ(told->hardenerLot, u"3"_s);
}

/// The clock matters: nothing told, and the record says so.
TEST_F(InHand, NoLotToldMixingGoesOn)
{
    toTheMix();
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    EXPECT_TRUE(mixed().lot.isEmpty());
    EXPECT_TRUE(mixed().hardenerLot.isEmpty());
}

TEST_F(InHand, ALotByTileGoesInFrontAndOneIsRemovedByHolding)
{
    Settings settings = demoSettings();
    settings.lots = {{m_mixed, {u"L9"_s, u"L7"_s}}, {hardenerKey, {u"H3"_s}}};
    open(settings);
    walkTo(skirtPanel(), Station::Mix);
    tap(u"in_hand"_s);
    tap(u"lot_1"_s);
    EXPECT_EQ(window().settings().lots.at(m_mixed), (QStringList{u"L7"_s, u"L9"_s}));
    tap(u"remove_lot"_s); // a tap is a brush of the sleeve
    EXPECT_EQ(window().settings().lots.at(m_mixed).size(), 2);
    ASSERT_TRUE(bench().thumb().hold(u"remove_lot"_s));
    bench().thumb().settle();
    EXPECT_EQ(onDisk().lots.at(m_mixed), QStringList{u"L9"_s});
    tap(u"part_hardener"_s);
    ASSERT_TRUE(bench().thumb().hold(u"remove_lot"_s));
    bench().thumb().settle();
    EXPECT_TRUE(onDisk().lots.at(hardenerKey).isEmpty());
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_mix"_s);
}

TEST_F(InHand, AnUnknownScanAsksWhatItIsAndAKnownOneIsTaken)
{
    toTheMix();
    scan(u" HX-22/b "_s);
    ASSERT_EQ(screen(), u"screen_lots"_s);
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(u"HX-22/b"_s));
    tap(u"it_is_hardener"_s);
    EXPECT_EQ(onDisk().lots.at(hardenerKey), QStringList{u"HX-22/b"_s});
    scan(u"L7"_s);
    tap(u"it_is_filler"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_mix"_s);
    scan(u"L8"_s);
    tap(u"it_is_filler"_s);
    EXPECT_EQ(onDisk().lots.at(m_mixed), (QStringList{u"L8"_s, u"L7"_s}));
    tap(u"answer_back"_s);
    ASSERT_EQ(screen(), u"screen_mix"_s);
    scan(u"L7"_s); // known: no question
    ASSERT_EQ(screen(), u"screen_mix"_s);
    EXPECT_EQ(onDisk().lots.at(m_mixed), (QStringList{u"L7"_s, u"L8"_s}));
    tap(u"answer_way_on"_s);
    EXPECT_EQ(mixed().lot, u"L7"_s);
    EXPECT_EQ(mixed().hardenerLot, u"HX-22/b"_s);
}

TEST_F(InHand, AScanThatIsNoLotIsRefusedAndNothingIsLost)
{
    toTheMix();
    const Settings before = window().settings();
    scan(QString(25, u'x'));
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"24"_s)) << window().screen()->troubleShown().toStdString();
    scan(u"  "_s);
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"empty"_s));
    scan(u"a\u0007b"_s);
    EXPECT_FALSE(window().screen()->troubleShown().isEmpty());
    EXPECT_EQ(screen(), u"screen_mix"_s);
    EXPECT_TRUE(window().settings() == before);
    scan(QString(24, u'x'));
    EXPECT_EQ(screen(), u"screen_lots"_s); // as long as is kept
}

TEST_F(InHand, ALotIsKeyedInFromAKeyboard)
{
    toTheMix();
    tap(u"in_hand"_s);
    tap(u"another_lot"_s);
    // At a hand's pace: what comes faster is a scan.
    const auto key = [&](auto pressed) {
        QTest::keyClick(window().focusWidget(), pressed);
        bench().clock().advance(seconds(0.4));
        bench().thumb().settle();
    };
    for (const char each : {'A', 'B', ' ', '1', '2', 'x'})
        key(each);
    key(Qt::Key_Backspace);
    key(Qt::Key_Return);
    EXPECT_EQ(window().settings().lots.at(m_mixed), QStringList{u"AB 12"_s});
}

TEST_F(InHand, SettingsThatAreNotSavedSaySoAndHold)
{
    toTheMix();
    QFile::remove(QDir(folder()).filePath(u"bench.ini"_s));
    ASSERT_TRUE(QDir(folder()).mkdir(u"bench.ini"_s)); // nothing can be written in its place
    scan(u"L7"_s);
    tap(u"it_is_filler"_s);
    EXPECT_FALSE(window().screen()->troubleShown().isEmpty());
    tap(u"answer_back"_s);
    EXPECT_TRUE(shown(window(), u"in_hand"_s).contains(u"L7"_s));
}

/// A bench with a second mixed-strand product beside the demo one.
class OtherProduct : public InHand {
protected:
    void toTheMixBeside(const ProductSheet& other)
    {
        std::vector<ProductSheet> sheets = demoCatalogue().sheets();
        sheets.push_back(other);
        m_catalogue = Catalogue(std::move(sheets));
        m_bench = std::make_unique<ScriptedBench>(
            ScriptedBench::Spec{log(), workingMorning(), demoSettings(), {1280, 800}, 1280.0 / 217, planning()});
        Walk walk(*m_bench, skirtPanel());
        ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    }
    [[nodiscard]] PlanningSet planning() const
    {
        return {builtInTable(), m_catalogue, builtInSteps(), Assumptions{}, m_engine};
    }
    [[nodiscard]] static ProductSheet heavier()
    {
        ProductSheet other = *demoCatalogue().byId(u"demo_mixed_strand"_s);
        other.id = u"demo_mixed_heavier"_s;
        other.name = u"Demo mixed, heavier"_s;
        other.density = gramsPerMillilitre(1.6);
        other.working = {minutes(6), minutes(5), minutes(7)};
        return other;
    }
    void touch(const QString& control) { ASSERT_TRUE(m_bench->thumb().tap(control)) << control.toStdString(); }
    void choose(const QString& product)
    {
        touch(u"in_hand"_s);
        touch(u"part_product"_s);
        touch(u"product_"_s + product);
        touch(u"answer_way_on"_s);
    }
    [[nodiscard]] QString text(const QString& name) { return shown(m_bench->window(), name); }

    Catalogue m_catalogue;
    CureEngine m_engine;
    std::unique_ptr<ScriptedBench> m_bench;
};

TEST_F(OtherProduct, FiguresAndActComeFromItsOwnSheet)
{
    toTheMixBeside(heavier());
    const Repair before = *m_bench->repair(u"4421"_s);
    const Mix planned = before.plan->batches.front().mix;
    choose(u"demo_mixed_heavier"_s);
    ASSERT_EQ(m_bench->window().screen()->objectName(), u"screen_mix"_s);
    // The same hole filled: as much volume, at the other paste's density.
    const Mix wanted = mixForFiller(planned.filler / gramsPerMillilitre(1.45) * gramsPerMillilitre(1.6), heavier());
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_EQ(text(u"mix_weigh"_s), words.mass(wanted.filler) + u" + "_s + words.hardener(wanted.hardener));
    EXPECT_EQ(text(u"mix_puddle"_s), words.length(wanted.puddle));
    EXPECT_TRUE(text(u"in_hand"_s).contains(u"Demo mixed, heavier"_s));
    const auto* key = m_bench->window().findChild<TapButton*>(u"in_hand"_s);
    EXPECT_TRUE(key->secondLine().contains(u"not the product planned"_s));
    touch(u"answer_way_on"_s);
    const HardenerIn& act = m_bench->repair(u"4421"_s)->runs.front().mixed;
    EXPECT_EQ(act.sheetId, u"demo_mixed_heavier"_s);
    EXPECT_NEAR(inGrams(act.filler), inGrams(wanted.filler), 5e-4);
    // Its clock: the layer of the plan, of this paste, on the panel as read last.
    const CureCase& lift = *before.plan->lifts.front().cureCase;
    std::vector<StackLayer> stack = lift.stack;
    for (StackLayer& each : stack)
        each.temperature = before.lastReading->panel;
    const auto cure =
        m_engine.layer({heavier(), *before.lastReading, heavier().hardenerNominal, lift.thickness, stack});
    ASSERT_TRUE(cure);
    EXPECT_NEAR(inSeconds(act.times.gel), inSeconds(cure->gel), 0.01);
    EXPECT_GT(act.times.gel, before.plan->batches.front().times.gel); // it works longer
    EXPECT_EQ(m_bench->window().settings().products.at(u"mixed_strand"_s), u"demo_mixed_heavier"_s);
}

/// Its own sheet says no to this panel: the hardener stays out until the planned product is in the hand again.
TEST_F(OtherProduct, OneThatItsSheetRefusesHereIsHeld)
{
    ProductSheet refused = heavier();
    refused.cells[u"smc"_s] = {Suitability::No, u"light_weak_on_smc"_s};
    toTheMixBeside(refused);
    choose(refused.id);
    EXPECT_FALSE(m_bench->thumb().find(u"answer_way_on"_s)->isEnabled());
    EXPECT_TRUE(text(u"mix_notice"_s).contains(u"Not this product here"_s)) << text(u"mix_notice"_s).toStdString();
    choose(u"demo_mixed_strand"_s);
    EXPECT_TRUE(m_bench->thumb().find(u"answer_way_on"_s)->isEnabled());
    EXPECT_TRUE(text(u"mix_notice"_s).isEmpty());
}

TEST_F(OtherProduct, OneThatTakesLessInOneGoIsHeld)
{
    ProductSheet thin = heavier();
    thin.greatestLift = millimetres(1);
    toTheMixBeside(thin);
    choose(thin.id);
    EXPECT_FALSE(m_bench->thumb().find(u"answer_way_on"_s)->isEnabled());
    EXPECT_TRUE(text(u"mix_notice"_s).contains(u"of 1.0\u00a0mm"_s)) << text(u"mix_notice"_s).toStdString();
}

} // namespace
} // namespace strandbench::test
