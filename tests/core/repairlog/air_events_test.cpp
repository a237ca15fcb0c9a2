// SPDX-License-Identifier: GPL-3.0-or-later
// What the air of days is known by, beside the same question asked of SQLite by itself.
#include "log_fixture.h"
#include "referee.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class AirEvents : public test::LogTest {
protected:
    static Instant moment(const QString& day, int second)
    {
        const qint64 utc = QDateTime::fromString(day + u"T08:00:00Z"_s, Qt::ISODate).toMSecsSinceEpoch();
        return {utc + second * 1000LL, second * 1000LL, u"b1"_s, 0};
    }
    static void read(RepairLog& log, const QUuid& repair, const Instant& at)
    {
        EventDraft made = draft(repair, ReadingTaken{{celsius(20), celsius(19), Fraction::ofHundred(50)}});
        made.at = at;
        ASSERT_TRUE(log.append(made));
    }
};

TEST_F(AirEvents, AreThoseThatSqlFinds)
{
    makeLog();
    const auto log = open();
    const QUuid repair = QUuid::createUuid();
    EventDraft in = draft(repair, TakenIn{u"77"_s, u"hood"_s});
    in.at = moment(u"2026-05-03"_s, 0);
    ASSERT_TRUE(log->append(in));
    for (const QString& day : {u"2026-05-03"_s, u"2026-05-04"_s, u"2026-05-05"_s, u"2026-05-06"_s})
        read(*log, repair, moment(day, 60));
    const test::Referee referee(path());
    for (const auto& [from, to] : {std::pair{u"1970-01-01"_s, u"9999-12-31"_s},
                                   {u"2026-05-04"_s, u"2026-05-05"_s},
                                   {u"2026-05-05"_s, u"2026-05-05"_s},
                                   {u"2026-05-07"_s, u"2026-05-08"_s}}) {
        const auto events = log->eventsOfAir(from, to);
        ASSERT_TRUE(events);
        QByteArray seqs;
        for (const Event& each : *events)
            seqs += QByteArray::number(each.seq) + ',';
        const QString sql = u"SELECT coalesce(group_concat(seq || ',', ''), '') FROM (SELECT seq FROM event "
                            "WHERE local_day >= '%1' AND local_day <= '%2' AND kind IN ('answered', 'reading_taken', "
                            "'hardener_in', 'pat_mixed', 'step_done') ORDER BY seq)"_s.arg(from, to);
        EXPECT_EQ(seqs, referee.value(sql.toUtf8())) << from.toStdString();
    }
    EXPECT_EQ(log->eventsOfAir(u"2026-05-04"_s, u"2026-05-05"_s)->size(), 2U);
    EXPECT_GT(log->eventsOfAir(u"1970-01-01"_s, u"2026-05-02"_s)->size(), 20U) << "a whole repair";
}

/// A year of a bench lies before: only the days that are asked for are read.
TEST_F(AirEvents, AreFoundByTheIndexOfDays)
{
    makeLog();
    const test::Referee referee(path());
    const QByteArray plan = referee
                                .rows("EXPLAIN QUERY PLAN SELECT * FROM event WHERE local_day BETWEEN 'a' AND 'b' "
                                      "AND +origin = 'c' AND kind IN ('answered') ORDER BY seq")
                                .front();
    EXPECT_TRUE(plan.contains("event_of_day")) << plan.constData();
}

} // namespace
} // namespace strandbench
