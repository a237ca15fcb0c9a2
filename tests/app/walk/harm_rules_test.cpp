// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt: every page of it on every glass in every language by the rules of look and touch, and the steps that
// lead there with their key.
#include "every_look.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "touch/tap_button.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class HarmRules : public LookTest {
protected:
    void pages()
    {
        ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"harm"_s));
        for (int page = 0; page < 20; ++page) {
            const auto* more = m_bench->window().findChild<TapButton*>(u"rows_more"_s);
            if (!more || !more->isVisible() || !more->isEnabled())
                break;
            ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"rows_more"_s));
        }
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }
};

TEST_P(HarmRules, Hold)
{
    const QTemporaryDir folder;
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), demoSettings()));
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Prepare)) << walk.why().toStdString();
    int met = 0;
    for (int steps = 0; steps < 20; ++steps) {
        const QString name = m_bench->window().screen()->objectName();
        if (name.startsWith(u"screen_read"_s) || !name.startsWith(u"screen_prepare_"_s))
            break;
        if (m_bench->window().findChild<TapButton*>(u"harm"_s)) {
            check();
            pages();
            ++met;
        }
        tap(u"answer_way_on"_s);
    }
    EXPECT_GE(met, 6);
    for (const Station station : {Station::Mix, Station::Spread, Station::Wait, Station::Sand, Station::Turn}) {
        ASSERT_TRUE(walk.walkTo(station)) << walk.why().toStdString();
        check();
        pages();
    }
}

/// As much as a sheet may state, in the longest statements: twelve codes, four lines of 160 characters.
QByteArray fullest()
{
    const QByteArray line = '"' + QByteArray("Wide words of a shop that fill a line. ").repeated(5).left(159) + ".\"";
    const QByteArray one = R"("signal": "danger",
        "pictograms": ["GHS01", "GHS02", "GHS03", "GHS04", "GHS05", "GHS06", "GHS07", "GHS08", "GHS09"],
        "h": ["H372", "H373", "H360", "H361", "H334", "H304", "H410", "H411", "H412", "EUH066", "H314", "H229"],
        "p": ["P305+P351+P338", "P304+P340", "P210", "P280", "P260", "P261", "P410+P412", "P301+P310", "P333+P313",
              "P308+P313", "P337+P313", "P501"],
        "gloves": )" + line +
                           ", \"respirator\": " + line + ", \"first_aid\": " + line + ", \"waste\": " + line;
    return '{' + one + ", \"hardener\": {" + one + "}}";
}

TEST_P(HarmRules, HoldWithTheFullestSheet)
{
    std::vector<ProductSheet> sheets;
    for (const ProductSheet& each : demoCatalogue().sheets()) {
        QByteArray json = each.source;
        const Checked<ProductSheet> sheet =
            readSheet(json.replace("\"demo\": true,", "\"demo\": true, \"hazards\": " + fullest() + ","));
        ASSERT_TRUE(sheet) << sheet.error().front().field.toStdString();
        sheets.push_back(*sheet);
    }
    const Catalogue catalogue(std::move(sheets));
    const CureEngine engine;
    const QTemporaryDir folder;
    ScriptedBench::Spec spec = specOn(folder.filePath(u"bench.sqlite"_s), demoSettings());
    spec.planning.emplace(PlanningSet{builtInTable(), catalogue, builtInSteps(), Assumptions{}, engine});
    m_bench = std::make_unique<ScriptedBench>(std::move(spec));
    Walk walk(*m_bench, skirtPanel());
    for (const Station station : {Station::Mix, Station::Wait}) {
        ASSERT_TRUE(walk.walkTo(station)) << walk.why().toStdString();
        check();
        pages();
    }
    m_bench.reset(); // before what it plans with
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, HarmRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
