// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of the air on every glass in every language by the rules of look and touch, as empty and as full as they
// come, in both systems of units.
#include "every_look.h"
#include "bench_acts.h"

#include "touch/tap_button.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class AirRules : public LookTest {
protected:
    void pages(const QString& tile)
    {
        ASSERT_NO_FATAL_FAILURE(tap(u"air_"_s + tile));
        m_bench->thumb().settle();
        (void)m_bench->thumb().waitFor(u"answer_back"_s);
        check();
        for (int page = 0; page < 20; ++page) {
            const auto* more = m_bench->window().findChild<TapButton*>(u"rows_more"_s);
            if (!more || !more->isVisible() || !more->isEnabled())
                break;
            ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"rows_more"_s));
        }
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_back"_s));
    }
    void all()
    {
        ASSERT_TRUE(answeredAlarms(*m_bench));
        ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"ribbon_air"_s));
        for (const QString& tile : {u"dew"_s, u"vapour"_s, u"fire"_s})
            ASSERT_NO_FATAL_FAILURE(pages(tile));
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_back"_s));
    }
    void submit(const Payload& payload) { ASSERT_TRUE(submitted(*m_bench, m_bench->repair(u"4421"_s)->id, payload)); }
    void openWith(const QString& log, UnitSystem units)
    {
        m_bench = std::make_unique<ScriptedBench>(specOn(log, demoSettings(), units));
        Assumptions shut; // so that every limit may be above
        shut.room.air = cubicMetres(10);
        shut.room.changes = changesPerHour(0.1);
        shut.room.wipe = grams(500);
        (void)m_bench->bench().changeAssumptions(shut);
    }
};

TEST_P(AirRules, HoldWithNothingReadAndNothingMixed)
{
    const QTemporaryDir folder;
    openWith(folder.filePath(u"bench.sqlite"_s), UnitSystem::Metric);
    all();
}

TEST_P(AirRules, HoldInMetricUnits)
{
    const QTemporaryDir folder;
    openWith(folder.filePath(u"bench.sqlite"_s), UnitSystem::Metric);
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Prepare)) << walk.why().toStdString();
    submit(ReadingTaken{{celsius(31.5), celsius(28.5), Fraction::ofHundred(84)}});
    ASSERT_TRUE(walk.walkTo(Station::Wait)) << walk.why().toStdString();
    all();
}

TEST_P(AirRules, HoldInCustomaryUnits)
{
    const QTemporaryDir folder;
    openWith(folder.filePath(u"bench.sqlite"_s), UnitSystem::Metric); // figures are keyed in as the job has them
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Wait)) << walk.why().toStdString();
    m_bench.reset();
    openWith(folder.filePath(u"bench.sqlite"_s), UnitSystem::UsCustomary);
    for (int reading = 0; reading < 12; ++reading)
        submit(ReadingTaken{{celsius(20), celsius(13 + reading * 0.7), Fraction::ofHundred(60)}});
    all();
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, AirRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
