// SPDX-License-Identifier: GPL-3.0-or-later
// Every repair folded from its events, and its summary held against the fold.
#include "repairlog/checks.h"
#include "repairlog/failure.h"
#include "repairlog/rows.h"
#include "repair/lot_book.h"
#include "repair/stock_book.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QStringList fieldsOf(const RepairSummary& summary)
{
    return {u"job '%1'"_s.arg(summary.job),
            u"panel '%1'"_s.arg(summary.panel),
            u"substrate '%1'"_s.arg(summary.substrate),
            u"damage_kind '%1'"_s.arg(summary.damageKind),
            u"station '%1'"_s.arg(summary.station),
            u"person '%1'"_s.arg(summary.person),
            u"open %1"_s.arg(summary.open ? 1 : 0),
            u"first_utc_ms %1"_s.arg(summary.firstUtcMs),
            u"last_utc_ms %1"_s.arg(summary.lastUtcMs),
            u"last_seq %1"_s.arg(summary.lastSeq)};
}

Break breakIn(const QString& repair, const QString& what)
{
    return {u"summary"_s, u"repair %1: %2"_s.arg(repair, what)};
}

std::optional<Break> difference(const RepairSummary& held, const RepairSummary& folded)
{
    const QStringList says = fieldsOf(held);
    const QStringList should = fieldsOf(folded);
    for (qsizetype i = 0; i < says.size(); ++i)
        if (says[i] != should[i])
            return breakIn(textOf(folded.repair), u"the summary has %1, its events %2"_s.arg(says[i], should[i]));
    return std::nullopt;
}

class RepairWalk {
public:
    RepairWalk(const SqlConnection& connection, VerifyReport& report) : m_connection(connection), m_report(report) {}

    Logged<void> take(const EventRecord& record)
    {
        if (m_break)
            return {};
        if (record.repair != textOf(m_repair.id))
            if (auto done = finish(); !done || m_break)
                return done;
        const auto event = readEvent(record);
        if (!event)
            m_break = Break{u"event"_s, event.error().detail};
        else if (const auto fault = m_repair.id.isNull() && subjectOf(event->payload) != Subject::Repair
                                        ? follow(*event)
                                        : apply(m_repair, *event))
            m_break =
                Break{u"event"_s, u"origin %1, seq %2: %3"_s.arg(record.origin).arg(record.seq).arg(inWords(*fault))};
        m_person = record.person;
        return {};
    }

    /// Ends one repair: holds its summary against the fold.
    Logged<void> finish()
    {
        const Repair repair = std::exchange(m_repair, Repair{});
        if (repair.id.isNull() || m_break)
            return {};
        ++m_report.repairs;
        const QString id = textOf(repair.id);
        std::optional<RepairSummary> held;
        const QStringList texts{u"job"_s,     u"panel"_s,  u"substrate"_s, u"damage_kind"_s,
                                u"station"_s, u"person"_s, u"job_key"_s,   u"panel_key"_s};
        const std::vector<int> textAt{1, 2, 3, 4, 5, 6, 11, 12};
        const auto take = [&](const Row& row) -> Logged<void> {
            held = readSummary(row);
            for (int i = 0; i < int(texts.size()); ++i)
                if (row.text(textAt[std::size_t(i)]).toUtf8() != row.bytes(13 + i))
                    m_break = breakIn(id, u"its %1 is no text"_s.arg(texts[i]));
            if (row.integer(7) != (held->open ? 1 : 0))
                m_break = breakIn(id, u"open is %1"_s.arg(row.integer(7)));
            if (row.text(11) != comparable(held->job) || row.text(12) != comparable(held->panel))
                m_break = breakIn(id, u"job_key or panel_key is not of its job and panel"_s);
            return {};
        };
        auto done = m_connection.each(u"SELECT %1, job_key, panel_key, %2 FROM summary WHERE repair = ?"_s.arg(
                                          summaryColumns(), storedTexts(texts)),
                                      {id}, take);
        if (done && !m_break)
            m_break = held ? difference(*held, summaryOf(repair, m_person)) : breakIn(id, u"it has no summary"_s);
        return done;
    }

    [[nodiscard]] const std::optional<Break>& result() const { return m_break; }

private:
    /// An event of a lot, of the shelf or of the bench: those of one lot at one bench come one after another.
    std::optional<Fault> follow(const Event& event)
    {
        if (subjectOf(event.payload) == Subject::Bench)
            return std::nullopt;
        if (!m_ofLot.empty() && (m_ofLot.front().repair != event.repair || m_ofLot.front().origin != event.origin))
            m_ofLot.clear();
        const auto fault =
            subjectOf(event.payload) == Subject::Stock ? followsOfStock(m_ofLot, event) : followsOfLot(m_ofLot, event);
        m_ofLot.push_back(event);
        return fault;
    }

    const SqlConnection& m_connection;
    VerifyReport& m_report;
    Repair m_repair;
    std::vector<Event> m_ofLot;
    QString m_person;
    std::optional<Break> m_break;
};

Finding checkOrphans(const SqlConnection& connection)
{
    return connection.value(u"SELECT repair FROM summary WHERE repair NOT IN (SELECT repair FROM event) LIMIT 1"_s)
        .map([](const QVariant& repair) -> std::optional<Break> {
            if (!repair.isValid())
                return std::nullopt;
            return breakIn(repair.toString(), u"it has a summary and no event"_s);
        });
}

} // namespace

Finding checkRepairs(const SqlConnection& connection, VerifyReport& report)
{
    RepairWalk walk(connection, report);
    const auto take = [&](const Row& row) { return walk.take(readRecord(row)); };
    auto done = connection.each(u"SELECT %1 FROM event ORDER BY repair, origin, seq"_s.arg(recordColumns()), {}, take);
    if (done)
        done = walk.finish();
    if (!done)
        return tl::unexpected(done.error());
    if (walk.result())
        return walk.result();
    return checkOrphans(connection);
}

} // namespace strandbench
