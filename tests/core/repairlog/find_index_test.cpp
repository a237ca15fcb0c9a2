// SPDX-License-Identifier: GPL-3.0-or-later
// Repairs found by words and by lots: against a search that reads every word of every repair, and against SQL over the
// stored bytes.
#include "two_logs.h"

#include "repairlog/find_index.h"
#include "repairlog/merge.h"

#include <QRegularExpression>

#include <cmath>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class FindIndexTest : public test::TwoLogs {
protected:
    [[nodiscard]] std::unique_ptr<FindIndex> index() const
    {
        auto opened = FindIndex::open(findIndexPath(path()));
        if (!opened)
            throw std::runtime_error("no index: " + opened.error().detail.toStdString());
        return *std::move(opened);
    }
    static void catchUp(FindIndex& index, const RepairLog& log, int most = 1000)
    {
        for (;;) {
            const auto whole = index.catchUp(log, most);
            ASSERT_TRUE(whole) << qPrintable(whole.error().detail);
            if (*whole)
                return;
        }
    }
    static void takeIn(RepairLog& log, const QUuid& repair, const QString& job, const QString& panel,
                       const QString& person, int atSeconds)
    {
        EventDraft made = draft(repair, TakenIn{job, panel}, atSeconds);
        made.person = person;
        ASSERT_TRUE(log.append(made));
    }
    static QStringList jobs(const FindIndex& index, const QString& text, int most = 100, qint64 before = 0)
    {
        QStringList all;
        const auto found = index.search(text, most, before);
        EXPECT_TRUE(found) << qPrintable(text);
        for (const FoundRepair& each : *found)
            all << each.job;
        return all;
    }
};

TEST_F(FindIndexTest, WordsOfJobPanelPeopleAndNotesFindTheNewestFirst)
{
    const auto log = open();
    const QUuid first = QUuid::createUuid();
    takeIn(*log, first, u"4421"_s, u"Skirt panel, right rear"_s, u"Renée Böll"_s, 0);
    takeIn(*log, QUuid::createUuid(), u"4422"_s, u"Door"_s, u"Ada"_s, 10);
    EventDraft note = draft(first, Noted{{}, u"customer waits, \"urgent\""_s}, 20);
    note.person = u"Ada"_s;
    ASSERT_TRUE(log->append(note));
    const auto found = index();
    catchUp(*found, *log);
    EXPECT_EQ(jobs(*found, u"ada"_s), (QStringList{u"4422"_s, u"4421"_s}));
    EXPECT_EQ(jobs(*found, u"RENEE"_s), QStringList{u"4421"_s}) << "case and accents do not count";
    EXPECT_EQ(jobs(*found, u"skirt rear"_s), QStringList{u"4421"_s});
    EXPECT_EQ(jobs(*found, u"ski"_s), QStringList{u"4421"_s}) << "what begins with it";
    EXPECT_EQ(jobs(*found, u"r."_s), QStringList()) << "one letter is a word of its own, whatever stands after it";
    EXPECT_EQ(jobs(*found, u"(bö)"_s), QStringList{u"4421"_s});
    EXPECT_EQ(jobs(*found, u"\"urgent\" OR"_s), QStringList()) << "no query language: OR is a word";
    EXPECT_EQ(jobs(*found, u"urgent"_s), QStringList{u"4421"_s});
    EXPECT_EQ(jobs(*found, u" - \"* "_s), QStringList());
    EXPECT_EQ(jobs(*found, u""_s), QStringList());
    EXPECT_EQ(found->search(u"urgent"_s, 1)->front().people, (QStringList{u"Renée Böll"_s, u"Ada"_s}));
    const qint64 newest = found->search(u"ada"_s, 1)->front().place;
    EXPECT_EQ(jobs(*found, u"ada"_s, 1, newest), QStringList{u"4421"_s}) << "the next page";
}

/// The words that a text is cut into: letters and digits together.
QStringList wordsOf(const QString& text)
{
    static const QRegularExpression others(u"[^\\p{L}\\p{N}]+"_s);
    return text.toLower().split(others, Qt::SkipEmptyParts);
}

TEST_F(FindIndexTest, RandomRepairsAreFoundAsByReadingEveryWord)
{
    constexpr int repairs = 120;
    const QStringList panels{u"skirt panel"_s, u"skylight"_s, u"door, left"_s, u"roof"_s, u"rear apron"_s};
    const QStringList people{u"Ada"_s, u"Adam"_s, u"Bo"_s, u""_s};
    const QStringList remarks{u"wet inside"_s, u"old filler below"_s, u"skin of paint"_s, u"customer waits"_s,
                              u"disassembled beforehand"_s};
    std::mt19937 random(4421);
    const auto any = [&](const QStringList& from) { return from.at(qsizetype(random() % std::size_t(from.size()))); };
    const auto log = open();
    std::vector<std::pair<QString, QStringList>> all; ///< job and words
    auto found = index();
    for (int i = 0; i < repairs; ++i) {
        const QUuid repair = QUuid::createUuid();
        const QString job = QString::number(4000 + i * 7);
        const QString panel = any(panels);
        const QString person = any(people);
        const QString remark = any(remarks);
        takeIn(*log, repair, job, panel, person, i * 100);
        ASSERT_TRUE(log->append(draft(repair, Noted{{}, remark}, i * 100 + 5)));
        all.emplace_back(
            job, wordsOf(job + u' ' + panel + u' ' + person + u' ' + remark + u' ' + draft(repair, Noted{}, 0).person));
        if (random() % 9 == 0)
            catchUp(*found, *log, 1 + int(random() % 20));
        if (random() % 40 == 0)
            found = index(); // closed and opened again
    }
    catchUp(*found, *log, 7);
    for (const QString& text : {u"ski"_s, u"skirt"_s, u"ada"_s, u"adam skirt"_s, u"a"_s, u"40"_s, u"4007"_s,
                                u"wet in"_s, u"old bo"_s, u"left roof"_s, u"door LEFT"_s, u"nobody"_s, u"paint sk"_s,
                                u"disassem"_s, u"disassembled"_s, u"beforeh wet"_s, u"disassembledx"_s}) {
        QStringList expected;
        for (auto each = all.rbegin(); each != all.rend(); ++each) {
            const auto holds = [&](const QString& word) {
                return std::ranges::any_of(each->second, [&](const QString& of) {
                    return word.size() < 2 ? of == word : of.startsWith(word);
                });
            };
            if (std::ranges::all_of(wordsOf(text), holds))
                expected << each->first;
        }
        EXPECT_EQ(jobs(*found, text, 1000), expected) << qPrintable(text);
        EXPECT_EQ(jobs(*found, text, 3), expected.first(std::min<qsizetype>(3, expected.size()))) << qPrintable(text);
    }
}

/// A whole repair whose batches take by turns of two lots.
void mixOf(RepairLog& log, Repair repair, int atSeconds, const std::function<EventDraft(const Payload&, int)>& draft)
{
    for (int i = 0; nextStep(repair).station != Station::Done; ++i) {
        Payload payload = test::actAt(repair);
        if (auto* mixed = std::get_if<HardenerIn>(&payload)) {
            mixed->lot = mixed->batch.index % 2 == 0 ? u"L-2026/7"_s : u"L-8"_s;
            mixed->hardenerLot = u"H\u00e4rter 3"_s;
            mixed->filler = grams(31.5 + i);
        }
        const auto event = log.append(draft(payload, atSeconds + i * 30));
        ASSERT_TRUE(event) << qPrintable(event.error().detail);
        ASSERT_FALSE(apply(repair, *event));
    }
}

TEST_F(FindIndexTest, ALotLeadsToItsBatchesAsSqlOverTheBytesHasThem)
{
    const auto log = open();
    const auto found = index();
    for (int i = 0; i < 3; ++i) {
        const QUuid id = QUuid::createUuid();
        const Repair repair = walk(*log, id, Station::Prepare, u"panel %1"_s.arg(i));
        mixOf(*log, repair, 2000 + i * 10'000, [&](const Payload& payload, int at) { return draft(id, payload, at); });
        catchUp(*found, *log, 11);
    }
    const test::Referee referee(path());
    for (const auto& [product, lot, key, amount] :
         {std::tuple{u"demo_mixed"_s, u"L-2026/7"_s, "lot", "filler_mg') * 1000"},
          std::tuple{u"demo_mixed"_s, u"L-8"_s, "lot", "filler_mg') * 1000"},
          std::tuple{hardenerProduct, u"H\u00e4rter 3"_s, "hardener_lot", "hardener_ug')"}}) {
        const QByteArray expected = referee.value(
            "SELECT group_concat(line, char(10)) FROM (SELECT event.repair || ' ' || event.utc_ms || ' ' || "
            "CAST(json_extract(CAST(payload AS TEXT), '$." +
            QByteArray(amount) +
            " AS INTEGER) || ' ' || panel AS line "
            "FROM event JOIN summary ON summary.repair = event.repair WHERE kind = 'hardener_in' AND "
            "json_extract(CAST(payload AS TEXT), '$." +
            QByteArray(key) + "') = '" + lot.toUtf8() + "' ORDER BY event.utc_ms DESC, event.seq DESC)");
        EXPECT_GE(expected.count('\n'), 5);
        const auto uses = found->usesOf({product, lot}, 1000);
        ASSERT_TRUE(uses);
        QByteArrayList told;
        for (const LotUse& each : *uses)
            told << each.repair.toByteArray(QUuid::WithoutBraces) + ' ' + QByteArray::number(each.utcMs) + ' ' +
                        QByteArray::number(qint64(std::llround(inGrams(each.amount) * 1e6))) + ' ' +
                        each.panel.toUtf8();
        EXPECT_EQ(told.join('\n'), expected) << qPrintable(lot);
        const auto newest = found->usesOf({product, lot}, 2);
        EXPECT_TRUE(*newest == std::vector<LotUse>(uses->begin(), uses->begin() + 2));
        const auto older = found->usesOf({product, lot}, 2, newest->back().utcMs);
        EXPECT_TRUE(*older == std::vector<LotUse>(uses->begin() + 2, uses->begin() + 4)) << "the next page";
        const auto named = found->lotsNamed(lot);
        ASSERT_TRUE(named) << qPrintable(named.error().detail);
        EXPECT_TRUE(*named == std::vector{(StockLot{product, lot})});
    }
    EXPECT_TRUE(found->lotsNamed(u"no such lot"_s)->empty());
    EXPECT_TRUE(found->usesOf({u"demo_mixed"_s, u"no such lot"_s}, 10)->empty());
    EXPECT_EQ(jobs(*found, u"L-2026/7"_s).size(), 3) << "a lot is a word too";
}

TEST_F(FindIndexTest, AnotherBenchsLogThatWasBroughtInIsFoundToo)
{
    {
        const auto log = open();
        takeIn(*log, QUuid::createUuid(), u"1"_s, u"door"_s, u"Ada"_s, 1000);
        const auto other = openAt(at(u"other.db"_s));
        takeIn(*other, QUuid::createUuid(), u"2"_s, u"roof"_s, u"Ada"_s, 10);
        catchUp(*index(), *log);
    }
    ASSERT_TRUE(mergeLog(path(), at(u"other.db"_s), MergeMode::Write));
    const auto log = open();
    const auto found = index();
    catchUp(*found, *log);
    EXPECT_EQ(jobs(*found, u"ada"_s), (QStringList{u"1"_s, u"2"_s})) << "by when they were taken in";
}

TEST_F(FindIndexTest, OfAnotherLogOrDamagedItIsMadeAnew)
{
    {
        const auto log = open();
        takeIn(*log, QUuid::createUuid(), u"1"_s, u"door"_s, u"Ada"_s, 0);
        catchUp(*index(), *log);
    }
    const auto other = openAt(at(u"other.db"_s));
    takeIn(*other, QUuid::createUuid(), u"2"_s, u"roof"_s, u"Ada"_s, 10);
    const auto found = index();
    catchUp(*found, *other);
    EXPECT_EQ(jobs(*found, u"ada"_s), QStringList{u"2"_s}) << "nothing of the log before";
    QFile file(findIndexPath(path()));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(5000, 'x'));
    file.close();
    const auto anew = index();
    catchUp(*anew, *other);
    EXPECT_EQ(jobs(*anew, u"roof"_s), QStringList{u"2"_s});
}

} // namespace
} // namespace strandbench
