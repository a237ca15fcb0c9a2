// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's figures by taps: what their tables and sentences say, against the log's events counted one by one.
#include "bench_fixture.h"
#include "depot_log.h"
#include "shown.h"

#include "screens/figures/bar_chart.h"
#include "screens/figures/drift_chart.h"
#include "words/figure_words.h"
#include "words/stock_words.h"

#include <QCoreApplication>
#include <QFile>
#include <QSemaphore>

#include <cmath>
#include <numeric>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const Words words(UnitSystem::Metric, QLocale(u"en"_s));

QString wholePercent(double share) { return words.percent(Fraction::ofHundred(std::round(share * 100))); }

class FiguresOnTheBench : public ::testing::Test {
protected:
    void openDepot(int daysLater = 0, const QString& log = depotLog().path)
    {
        Instant now = depotLog().evening;
        now.utcMs += qint64(daysLater) * 24 * 3600 * 1000;
        now.boottimeMs += qint64(daysLater) * 24 * 3600 * 1000;
        ScriptedBench::Spec spec;
        spec.log = log;
        spec.start = now;
        spec.settings = demoSettings();
        m_bench = std::make_unique<ScriptedBench>(spec);
        ASSERT_FALSE(m_bench->trouble()) << m_bench->trouble()->detail.toStdString();
    }
    BenchWindow& window() { return m_bench->window(); }
    QString screen() { return window().screen()->objectName(); }
    void tap(const QString& control)
    {
        ASSERT_TRUE(m_bench->thumb().tap(control)) << control.toStdString() << " on " << screen().toStdString();
    }
    void toFigures()
    {
        window().showHome();
        m_bench->thumb().settle();
        for (const QString& each : {u"today"_s, u"review"_s, u"figures"_s})
            tap(each);
        ASSERT_EQ(screen(), u"screen_figures"_s);
    }
    void toFigure(const QString& code)
    {
        toFigures();
        tap(u"figure_"_s + code);
        ASSERT_TRUE(m_bench->thumb().waitFor(u"answer_way_on"_s)) << code.toStdString();
        ASSERT_EQ(screen(), u"screen_figure_"_s + code);
    }
    /// Lead and rest of every row of the table, page by page.
    QStringList table()
    {
        EXPECT_TRUE(m_bench->thumb().tap(u"answer_way_on"_s));
        QStringList rows;
        for (int row = 0;; ++row) {
            const QString name = u"figure_row_%1"_s.arg(row);
            if (shown(window(), name).isEmpty() && !m_bench->thumb().tap(u"rows_more"_s))
                return rows;
            if (shown(window(), name).isEmpty())
                return rows;
            rows << shown(window(), name) + u" | "_s + shown(window(), name + u"_rest"_s);
        }
    }
    template <class Chart> Chart* chart()
    {
        auto* found = window().screen()->findChild<Chart*>(u"figure_chart"_s);
        return found && found->isVisible() ? found : nullptr;
    }
    QString reading() { return shown(window(), u"figure_reading"_s); }

    std::unique_ptr<ScriptedBench> m_bench;
};

TEST_F(FiguresOnTheBench, MaterialIsWhatTheEventsAddUpTo)
{
    openDepot();
    toFigure(u"material"_s);
    EXPECT_NE(chart<BarChart>(), nullptr);
    double mixed = 0;
    double over = 0;
    QStringList expected;
    for (const auto& [sheet, of] : countMaterial(depotLog().events)) {
        mixed += of.mixed;
        over += of.over;
        expected << u"%1 | %2 · planned %3 · mixed %4 · beyond the plan %5, %6"_s.arg(
            stockProductName(sheet, m_bench->bench().planning().catalogue), words.batches(of.batches),
            stockMass(grams(of.planned), words), stockMass(grams(of.mixed), words), stockMass(grams(of.over), words),
            wholePercent(of.over / of.mixed));
    }
    ASSERT_GT(over, 0);
    EXPECT_TRUE(reading().contains(stockMass(grams(over), words))) << reading().toStdString();
    EXPECT_TRUE(reading().contains(wholePercent(over / mixed)));
    QStringList rows = table();
    EXPECT_EQ(chart<BarChart>(), nullptr) << "the table stands in its place";
    rows.sort();
    expected.sort();
    EXPECT_EQ(rows.join(u'\n').toStdString(), expected.join(u'\n').toStdString());
    tap(u"answer_way_on"_s);
    EXPECT_NE(chart<BarChart>(), nullptr) << "and back";
}

TEST_F(FiguresOnTheBench, RightTheFirstTimeIsCountedBySubstrate)
{
    openDepot();
    toFigure(u"right"_s);
    int right = 0;
    int judged = 0;
    QStringList expected;
    for (const auto& [substrate, of] : countRight(depotLog().events)) {
        right += of.first;
        judged += of.second;
        expected << u"%1 | %2 of %3 right the first time · %4"_s.arg(Words::title(words.substrate(substrate)))
                        .arg(of.first)
                        .arg(of.second)
                        .arg(wholePercent(double(of.first) / of.second));
    }
    ASSERT_GT(judged, right) << "some were returned";
    EXPECT_TRUE(reading().startsWith(u"%1 of %2 repairs"_s.arg(right).arg(judged))) << reading().toStdString();
    const QStringList rows = table();
    ASSERT_EQ(rows.size(), expected.size());
    for (qsizetype i = 0; i < rows.size(); ++i)
        EXPECT_TRUE(rows.at(i).startsWith(expected.at(i))) << rows.at(i).toStdString();
}

TEST_F(FiguresOnTheBench, LayingIsTheMedianOfWhatWasLaid)
{
    openDepot();
    toFigure(u"times"_s);
    std::vector<double> laid = countLaying(depotLog().events);
    std::ranges::sort(laid);
    const std::size_t half = laid.size() / 2;
    const double median = laid.size() % 2 == 1 ? laid[half] : (laid[half - 1] + laid[half]) / 2;
    const QStringList rows = table();
    const auto laying = std::ranges::find_if(
        rows, [](const QString& row) { return row.startsWith(jobPartName(JobPart::Lay) + u" | "_s); });
    ASSERT_NE(laying, rows.end());
    EXPECT_TRUE(laying->contains(u"took "_s + words.longDuration(seconds(median)))) << laying->toStdString();
    EXPECT_TRUE(laying->endsWith(u"%1 repairs"_s.arg(laid.size()))) << laying->toStdString();
}

TEST_F(FiguresOnTheBench, DeviationsFallAndEachParkingIsOne)
{
    openDepot();
    toFigure(u"deviations"_s);
    const auto parked = std::ranges::count_if(
        depotLog().events, [](const Event& each) { return std::holds_alternative<Parked>(each.payload); });
    ASSERT_GT(parked, 0);
    const QStringList rows = table();
    int last = 1'000'000;
    for (const QString& row : rows) {
        const int count = row.section(u" | "_s, 1).section(u' ', 0, 0).toInt();
        EXPECT_LE(count, last) << row.toStdString();
        EXPECT_GT(count, 0) << row.toStdString();
        last = count;
        if (row.startsWith(deviationName(DeviationKind::Parked))) {
            EXPECT_EQ(count, parked);
        }
    }
    EXPECT_TRUE(rows.last().endsWith(wholePercent(1))) << "up to here all of them";
    EXPECT_TRUE(rows.join(u'\n').contains(deviationName(DeviationKind::Parked)));
}

TEST_F(FiguresOnTheBench, GelsOfALotAreThoseThatWereToldOverTheSheets)
{
    openDepot();
    toFigures();
    tap(u"figure_gel"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"figure_lot_0"_s));
    const auto lots = countGels(depotLog().events);
    EXPECT_EQ(m_bench->thumb().find(u"figure_lot_%1"_s.arg(lots.size())), nullptr) << "no more than there are";
    const auto* key = qobject_cast<TapButton*>(m_bench->thumb().find(u"figure_lot_0"_s));
    ASSERT_NE(key, nullptr);
    const auto& catalogue = m_bench->bench().planning().catalogue;
    const auto lot = std::ranges::find_if(lots, [&](const auto& each) {
        return key->title() == each.first.second + u" · "_s + stockProductName(each.first.first, catalogue);
    });
    ASSERT_TRUE(lot != lots.end()) << key->title().toStdString();
    const std::vector<double>& ratios = lot->second;
    EXPECT_TRUE(key->secondLine().startsWith(u"%1 gels"_s.arg(ratios.size()))) << key->secondLine().toStdString();
    tap(u"figure_lot_0"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"answer_way_on"_s));
    const double mean = std::accumulate(ratios.begin(), ratios.end(), 0.0) / double(ratios.size());
    EXPECT_TRUE(reading().contains(againstSheet(mean, words))) << reading().toStdString();
    EXPECT_NE(chart<DriftChart>(), nullptr);
    QStringList rows = table();
    ASSERT_EQ(std::size_t(rows.size()), ratios.size());
    std::ranges::reverse(rows); // the newest stood first
    double average = 1;
    for (std::size_t i = 0; i < ratios.size(); ++i) {
        average = 0.3 * ratios[i] + 0.7 * average;
        const QString& row = rows.at(qsizetype(i));
        EXPECT_TRUE(row.startsWith(u"Gel %1 · "_s.arg(i + 1))) << row.toStdString();
        EXPECT_TRUE(row.contains(wholePercent(ratios[i]) + u" of the sheet"_s)) << row.toStdString();
        EXPECT_TRUE(row.contains(u"moving mean "_s + wholePercent(average))) << row.toStdString();
    }
}

TEST_F(FiguresOnTheBench, TheMovingRangesAreOneTapAway)
{
    openDepot();
    toFigures();
    tap(u"figure_gel"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"figure_lot_0"_s));
    tap(u"figure_lot_0"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"figure_turn"_s));
    const QString values = chart<DriftChart>()->accessibleName();
    tap(u"figure_turn"_s);
    EXPECT_NE(chart<DriftChart>()->accessibleName(), values);
    tap(u"figure_turn"_s);
    EXPECT_EQ(chart<DriftChart>()->accessibleName(), values);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_figure_lot"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_figures"_s);
}

TEST_F(FiguresOnTheBench, AShortPeriodSaysThatThereIsNothingAndALongerOneHasIt)
{
    openDepot(60);
    toFigures();
    tap(u"figure_material"_s);
    for (int i = 0; i < 2000 && reading().isEmpty(); ++i)
        m_bench->thumb().settle();
    EXPECT_EQ(reading(), u"Nothing was mixed in these days."_s);
    EXPECT_EQ(m_bench->thumb().find(u"answer_way_on"_s), nullptr) << "no table either";
    EXPECT_EQ(chart<BarChart>(), nullptr);
    tap(u"figure_period"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"answer_way_on"_s));
    EXPECT_NE(chart<BarChart>(), nullptr);
    tap(u"answer_back"_s);
    tap(u"figure_deviations"_s);
    EXPECT_TRUE(m_bench->thumb().waitFor(u"answer_way_on"_s)) << "the period is kept";
}

/// Keeps the log's thread busy until it is let go.
class BusyLog {
public:
    explicit BusyLog(Recorder& recorder)
    {
        ReviewAsk ask;
        ask.mark = u"busy"_s; // another mark: there is something to digest
        ask.digest = [this](const std::vector<Event>& events) {
            m_began.release();
            m_let.acquire();
            m_let.release();
            RepairDigest digest;
            digest.repair = events.front().repair;
            return digest;
        };
        m_cancelled = ask.cancelled;
        recorder.review(u"0000"_s, u"9999"_s, ask, [](const Logged<Digests>&) {});
        m_began.acquire();
        *m_cancelled = true; // ends once it is let go
    }
    void let() { m_let.release(); }

private:
    QSemaphore m_began;
    QSemaphore m_let;
    std::shared_ptr<std::atomic<bool>> m_cancelled;
};

TEST_F(FiguresOnTheBench, WhileTheLogIsReadTheGlassAnswersAndReadingCanBeStopped)
{
    openDepot();
    toFigures();
    BusyLog busy(m_bench->bench().recorder());
    tap(u"figure_material"_s);
    EXPECT_EQ(screen(), u"screen_figure_material"_s) << "shown though the log's thread is busy";
    EXPECT_FALSE(shown(window(), u"figure_progress"_s).isEmpty());
    EXPECT_TRUE(reading().isEmpty());
    tap(u"figure_stop"_s);
    EXPECT_EQ(screen(), u"screen_figures"_s);
    busy.let();
    toFigure(u"material"_s); // nothing of the one that was stopped is in the way
    EXPECT_FALSE(reading().isEmpty());
    EXPECT_EQ(m_bench->thumb().find(u"figure_stop"_s), nullptr);
}

TEST_F(FiguresOnTheBench, HowFarTheReadingIsIsShown)
{
    const QTemporaryDir folder;
    const QString log = folder.filePath(u"unread.sqlite"_s); // nothing of it was digested yet
    ASSERT_TRUE(QFile::copy(depotLog().path, log));
    openDepot(0, log);
    toFigures();
    BusyLog busy(m_bench->bench().recorder());
    tap(u"figure_material"_s);
    QStringList told;
    busy.let();
    while (m_bench->thumb().find(u"figure_stop"_s)) {
        const QString now = shown(window(), u"figure_progress"_s);
        if (told.isEmpty() || told.last() != now)
            told << now;
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    }
    ASSERT_GE(told.size(), 2);
    EXPECT_TRUE(told.at(1).contains(u" of "_s)) << told.join(u'\n').toStdString();
}

class EmptyFigures : public BenchTest {};

TEST_F(EmptyFigures, SayWhatIsMissing)
{
    open();
    for (const auto& [code, said] :
         {std::pair{u"material"_s, u"Nothing was mixed in these days."_s},
          std::pair{u"right"_s, u"No repair of these days was signed off or returned yet."_s},
          std::pair{u"times"_s, u"No repair of these days was handed over with its times told."_s},
          std::pair{u"deviations"_s, u"The records of these days hold no deviation."_s}}) {
        window().showHome();
        bench().thumb().settle();
        for (const QString& each : {u"today"_s, u"review"_s, u"figures"_s, u"figure_"_s + code})
            tap(each);
        EXPECT_EQ(waitText(u"figure_reading"_s), said);
        EXPECT_EQ(bench().thumb().find(u"answer_way_on"_s), nullptr);
    }
    tap(u"answer_back"_s);
    tap(u"figure_gel"_s);
    EXPECT_TRUE(waitText(u"figure_no_lot"_s).contains(u"no gel"_s));
}

TEST_F(EmptyFigures, OneGelIsNoChart)
{
    Settings settings = demoSettings();
    settings.lots[hardenerKey] = {u"H5"_s};
    settings.lots[u"demo_mixed_strand"_s] = {u"F-77"_s};
    open(settings);
    walkTo(skirtPanel(), Station::Spread);
    const Repair& repair = *bench().repair(u"4421"_s);
    const BatchRef batch = repair.runs.back().batch;
    bench().clock().advance(minutes(4));
    bool written = false;
    bench().bench().submit(repair.id, u"Ada"_s, Gelled{batch, GelPlace::Panel},
                           [&written](const std::optional<LogFailure>& failure) { written = !failure; });
    bench().thumb().settle();
    window().showHome();
    for (int i = 0; i < 2000 && !written; ++i)
        bench().thumb().settle();
    ASSERT_TRUE(written);
    for (const QString& each : {u"today"_s, u"review"_s, u"figures"_s, u"figure_gel"_s})
        tap(each);
    waitFor(u"figure_lot_0"_s);
    tap(u"figure_lot_0"_s);
    EXPECT_TRUE(waitText(u"figure_reading"_s).startsWith(u"A control chart needs two gels"_s));
    EXPECT_EQ(bench().thumb().find(u"figure_turn"_s), nullptr);
}

} // namespace
} // namespace strandbench::test
