// SPDX-License-Identifier: GPL-3.0-or-later
#include "years/years.h"

#include "years/told_repair.h"

#include "exchange/events.h"
#include "repairlog/bulk_writer.h"
#include "repairlog/failure.h"
#include "repairlog/rows.h"

#include <queue>

using namespace Qt::StringLiterals;

namespace strandbench::years {
namespace {

constexpr double eventsWanted = 12; ///< a repair, in the mean
constexpr int fewestADay = 32;
constexpr int mostADay = 48;
constexpr double fromHour = 6.5;
constexpr double untilHour = 16;      ///< the last stop is taken in
constexpr double untilHourWhole = 11; ///< and the last repair that is done on the same day

/// How many acts of a script are told in the mean: remarks and gels are told of some only (quirksOf()), and the
/// supervisor tells about one act of what was handed over.
double actsOf(const std::vector<Script>& scripts)
{
    double acts = 0;
    for (const Script& script : scripts) {
        acts += script.whole ? 1.0 : 0.0;
        for (const Act& act : script.acts)
            acts += std::holds_alternative<Noted>(act.event.payload) ? 0.4 : act.pace == Pace::Gelled ? 0.7 : 1.0;
    }
    return acts / double(scripts.size());
}

using Telling = std::shared_ptr<ToldRepair>;

class Chronicle {
public:
    Chronicle(const YearsWanted& wanted, Dice& dice, BulkWriter& writer, QStringList origins)
        : m_wanted(wanted),
          m_dice(dice),
          m_writer(writer),
          m_origins(std::move(origins)),
          m_calendar(wanted.seed),
          m_wholeShare((eventsWanted - actsOf(everyScript().stops)) /
                       (actsOf(everyScript().whole) - actsOf(everyScript().stops)))
    {}

    Logged<YearsReport> write(const std::function<void(qint64)>& progress)
    {
        for (qint64 day = 0; m_report.repairs < m_wanted.repairs; ++day) {
            takeInOf(day);
            if (auto done = tellUntil(Calendar::beginsMs(day + 1)); !done)
                return tl::unexpected(done.error());
            if (progress)
                progress(m_report.repairs);
        }
        if (auto done = tellUntil(std::numeric_limits<qint64>::max()); !done)
            return tl::unexpected(done.error());
        return m_report;
    }

private:
    struct Due {
        qint64 atMs;
        qint64 turn; ///< of two at the same moment the one that was known first
        Telling repair;
        bool operator<(const Due& other) const { return std::tie(atMs, turn) > std::tie(other.atMs, other.turn); }
    };

    void queue(const Telling& repair, qint64 atMs)
    {
        repair->dueMs = atMs;
        m_due.push({atMs, ++m_turn, repair});
    }

    /// Who and what is new of a repair; its job, panel and bench follow from its number or from what it does again.
    Telling begun(bool whole)
    {
        auto repair = std::make_shared<ToldRepair>();
        const auto& scripts = whole ? everyScript().whole : everyScript().stops;
        repair->script = &m_dice.any(scripts);
        repair->id = m_dice.uuid();
        repair->person = m_dice.any(technicians());
        repair->helper = m_dice.any(technicians());
        repair->quirks = quirksOf(m_dice);
        repair->panel = m_dice.any(panels());
        repair->origin = m_origins[m_report.repairs % m_origins.size()];
        repair->job = QString::number(100'001 + m_report.repairs);
        ++m_report.repairs;
        return repair;
    }

    void takeInOf(qint64 day)
    {
        const qint64 wished = m_dice.from(fewestADay, mostADay) - std::exchange(m_reworksToday, 0);
        for (qint64 i = 0; i < wished && m_report.repairs < m_wanted.repairs; ++i) {
            const bool whole = m_dice.chance(m_wholeShare);
            const double hour = m_dice.between(fromHour, whole ? untilHourWhole : untilHour);
            queue(begun(whole), m_calendar.at(day, hour * 3600).utcMs);
        }
        ++m_report.days;
        m_report.lastDay = localDay(m_calendar.at(day, fromHour * 3600));
        if (m_report.firstDay.isEmpty())
            m_report.firstDay = m_report.lastDay;
    }

    Logged<void> tellUntil(qint64 endMs)
    {
        while (!m_due.empty() && m_due.top().atMs < endMs) {
            const Telling repair = m_due.top().repair;
            m_due.pop();
            auto told = repair->scriptOver() ? tellClosing(*repair) : tellScript(repair);
            if (!told)
                return told;
            if (!repair->scriptOver())
                queue(repair, repair->nextDueMs(m_dice));
            else if (!repair->closing.empty())
                queue(repair, std::max(repair->closing.front().atMs, repair->lastMs));
            else if (auto done = end(*repair); !done)
                return done;
        }
        return {};
    }

    /// Folds an act and puts it at the end of the log.
    Logged<void> put(ToldRepair& repair, Event& event, const QByteArray& bytes, const std::vector<QByteArray>& blobs)
    {
        event.seq = m_writer.nextSeq(event.origin);
        if (const auto fault = apply(repair.repair, event))
            return failed(LogTrouble::DoesNotFollow, repair.script->name + u": "_s + inWords(*fault));
        if (auto done = m_writer.append(event, bytes, blobs); !done)
            return done;
        ++m_report.events;
        repair.lastMs = event.at.utcMs;
        repair.lastPerson = event.person;
        return {};
    }

    Logged<void> tellScript(const Telling& repair)
    {
        const Act& act = repair->script->acts[repair->next];
        auto telling = repair->tell(m_calendar.ofUtc(repair->dueMs), m_dice);
        if (telling)
            if (auto done = put(*repair, telling->event, telling->bytes, act.blobs); !done)
                return done;
        ++repair->next;
        if (std::holds_alternative<HardenerIn>(act.event.payload)) {
            repair->mixedMs = repair->lastMs;
            repair->mixedSeq = repair->repair.lastSeq;
        }
        if (std::holds_alternative<HandedOver>(act.event.payload)) {
            ++m_report.handedOver;
            lookThrough(*repair);
        }
        const Telling again = repair->reworkOf;
        return again && repair->next == 1 ? beginRework(*again, *repair) : Logged<void>();
    }

    /// What the supervisor makes of it, late on the same day or early on the next.
    void lookThrough(ToldRepair& repair)
    {
        const qint64 day = Calendar::dayOf(repair.lastMs);
        const qint64 late = m_calendar.at(day, m_dice.between(16.5, 17.8) * 3600).utcMs;
        const qint64 at = late > repair.lastMs ? late : m_calendar.at(day + 1, m_dice.between(7, 9) * 3600).utcMs;
        const QString who = m_dice.any(supervisors());
        const double chance = m_dice.between(0, 1);
        if (chance < 0.03 && m_report.repairs < m_wanted.repairs) {
            const QString reason = m_dice.any(returnReasons());
            repair.closing.push_back({at, who, Returned{reason, remark(m_dice)}});
        } else if (chance < 0.95) {
            repair.closing.push_back({at, who, SignedOff{}});
            if (m_dice.chance(0.03))
                repair.closing.push_back(
                    {at + m_dice.from(60'000, 4'000'000), who, Corrected{repair.mixedSeq, correction(m_dice)}});
        }
    }

    Logged<void> tellClosing(ToldRepair& repair)
    {
        const Closing act = repair.closing.front();
        repair.closing.pop_front();
        Event event{repair.origin, 0, repair.id, act.person, act.payload, m_calendar.ofUtc(repair.dueMs), {}};
        if (auto done = put(repair, event, encodePayload(event.payload), {}); !done)
            return done;
        if (std::holds_alternative<Returned>(act.payload))
            callForRework(repair);
        return {};
    }

    /// The same panel comes back on the next day, as a repair of its own.
    void callForRework(const ToldRepair& repair)
    {
        if (m_report.repairs >= m_wanted.repairs)
            return;
        Telling rework = begun(true);
        rework->job = repair.job;
        rework->panel = repair.panel;
        rework->origin = repair.origin;
        rework->reworkOf = std::make_shared<ToldRepair>(repair);
        const qint64 day = Calendar::dayOf(repair.lastMs) + 1;
        queue(rework, m_calendar.at(day, m_dice.between(9, untilHourWhole) * 3600).utcMs);
        ++m_reworksToday;
        ++m_report.reworks;
    }

    Logged<void> beginRework(ToldRepair& returned, const ToldRepair& rework)
    {
        Event event{returned.origin, 0, returned.id, rework.person, ReworkBegun{rework.id}, rework.repair.lastAt, {}};
        return put(returned, event, encodePayload(event.payload), {}).and_then([&] { return end(returned); });
    }

    Logged<void> end(ToldRepair& repair)
    {
        if (repair.repair.open())
            ++m_report.open;
        if (!repair.repair.rework.isNull())
            --m_report.open; // it was counted when it was returned
        return m_writer.summarize(repair.repair, repair.lastPerson);
    }

    const YearsWanted& m_wanted;
    Dice& m_dice;
    BulkWriter& m_writer;
    QStringList m_origins;
    Calendar m_calendar;
    double m_wholeShare;
    YearsReport m_report;
    std::priority_queue<Due> m_due;
    qint64 m_turn = 0;
    qint64 m_reworksToday = 0;
};

} // namespace

Logged<YearsReport> writeYears(const YearsWanted& wanted, const std::function<void(qint64)>& progress)
{
    Dice dice(wanted.seed);
    QStringList origins;
    for (int i = 0; i < wanted.benches; ++i)
        origins << textOf(dice.uuid());
    auto writer = BulkWriter::create(wanted.log, QUuid::fromString(origins.front()));
    if (!writer)
        return tl::unexpected(writer.error());
    auto report = Chronicle(wanted, dice, **writer, origins).write(progress);
    if (report)
        if (auto done = (*writer)->finish(); !done)
            return tl::unexpected(done.error());
    return report;
}

} // namespace strandbench::years
