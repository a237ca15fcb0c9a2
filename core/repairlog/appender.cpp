// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/appender.h"

#include "exchange/events.h"
#include "repair/lot_book.h"
#include "repair/stock_book.h"
#include "repairlog/failure.h"
#include "repairlog/kept_sheets.h"
#include "repairlog/transaction.h"

#include <algorithm>
#include <exception>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The record of a draft, but for its place in the chain. Text is kept as UTF-8 holds it, since that is
/// what is stored and hashed. The codec throws for a payload that no screen can make (a negative mass, an
/// answer of another question's kind): here it is input, so it becomes a failure.
Logged<EventRecord> recordOf(const EventDraft& draft)
{
    const auto utf8 = [](const QString& text) { return QString::fromUtf8(text.toUtf8()); };
    EventRecord record;
    record.repair = textOf(draft.repair);
    record.kind = kindOf(draft.payload);
    record.kindVersion = kindVersionOf(draft.payload);
    record.at = draft.at;
    record.at.bootId = utf8(draft.at.bootId);
    record.person = utf8(draft.person);
    record.localDay = localDay(draft.at);
    try {
        record.payload = encodePayload(draft.payload);
    } catch (const std::exception& reason) {
        return failed(LogTrouble::DoesNotFollow, record.kind + u": "_s + QString::fromUtf8(reason.what()));
    }
    return record;
}

Logged<void> refuseReturn(const Returned& returned)
{
    const bool said = returned.reason != u"other"_s || !returned.text.trimmed().isEmpty();
    if (!said || !std::ranges::count(returnReasons(), returned.reason))
        return failed(LogTrouble::DoesNotFollow, u"returned: reason '%1'"_s.arg(returned.reason));
    return {};
}

/// Not the folding's business: what may be overridden may change with the program, what was overridden stays.
Logged<void> refuseOverride(const Overridden& over)
{
    for (const QString& each : over.stops)
        if (!std::ranges::count(knownStopCodes(), each) || stopOf({each, {}}).overridable != Override::Supervisor)
            return failed(LogTrouble::DoesNotFollow, u"overridden: %1 is nobody's to override"_s.arg(each));
    if (!std::ranges::count(overrideReasons(), over.reason))
        return failed(LogTrouble::DoesNotFollow, u"overridden: reason '%1'"_s.arg(over.reason));
    return {};
}

} // namespace

Logged<void> Appender::catchUp()
{
    const auto version = m_sql.value(u"PRAGMA data_version"_s);
    if (!version)
        return tl::unexpected(version.error());
    if (m_doubtful || m_dataVersion != version->toLongLong())
        forget();
    m_dataVersion = version->toLongLong();
    return {};
}

void Appender::forget()
{
    m_head.reset();
    m_folded.clear();
}

Logged<ChainHead> Appender::head() const { return m_head ? Logged<ChainHead>(*m_head) : headOf(m_sql, m_origin); }

Logged<Repair> Appender::takeRepair(const QUuid& id)
{
    if (auto known = m_folded.extract(id))
        // cppcheck-suppress returnStdMoveLocal ; mapped() is a reference into the node, and no local
        return std::move(known.mapped());
    if (auto own = refuseOfAnotherBench(id); !own)
        return tl::unexpected(own.error());
    const auto events = eventsOf(m_sql, id);
    if (!events)
        return tl::unexpected(events.error());
    if (events->empty())
        return Repair{};
    auto repair = foldRepair(*events);
    if (!repair)
        return failed(LogTrouble::Damaged, inWords(repair.error().front()));
    return *std::move(repair);
}

Logged<void> Appender::refuseOpenPanel(const TakenIn& taken) const
{
    const auto open = m_sql.value(u"SELECT repair FROM summary WHERE open = 1 AND job_key = ? AND panel_key = ?"_s,
                                  {comparable(taken.job), comparable(taken.panel)});
    if (!open)
        return tl::unexpected(open.error());
    if (open->isValid() && open->toString() != textOf(taken.reworkOf))
        return failed(LogTrouble::AlreadyOpen, open->toString());
    return {};
}

Logged<void> Appender::refuseStrayRework(const TakenIn& taken) const
{
    if (taken.reworkOf.isNull())
        return {};
    const auto station = m_sql.value(u"SELECT station FROM summary WHERE repair = ?"_s, {textOf(taken.reworkOf)});
    if (!station)
        return tl::unexpected(station.error());
    if (station->toString() != codeOf(Station::Returned))
        return failed(LogTrouble::DoesNotFollow,
                      u"taken_in: %1 does not wait for a rework"_s.arg(textOf(taken.reworkOf)));
    return {};
}

Logged<void> Appender::refuseOfAnotherBench(const QUuid& repair) const
{
    const auto other =
        m_sql.value(u"SELECT origin FROM event WHERE repair = ? AND origin <> ? LIMIT 1"_s, {textOf(repair), m_origin});
    if (!other)
        return tl::unexpected(other.error());
    if (other->isValid())
        return failed(LogTrouble::DoesNotFollow, u"repair: bench %1 took it in"_s.arg(other->toString()));
    return {};
}

Logged<void> Appender::refuseStrayCorrection(const Event& event, const Corrected& correction) const
{
    const auto found = m_sql.value(u"SELECT 1 FROM event WHERE origin = ? AND seq = ? AND repair = ?"_s,
                                   {m_origin, correction.seq, textOf(event.repair)});
    if (!found)
        return tl::unexpected(found.error());
    if (!found->isValid())
        return failed(LogTrouble::DoesNotFollow, u"corrected: seq %1 is not of this repair"_s.arg(correction.seq));
    return {};
}

Logged<void> Appender::refuse(const Event& event) const
{
    if (const auto* taken = std::get_if<TakenIn>(&event.payload))
        return refuseOpenPanel(*taken).and_then([&] { return refuseStrayRework(*taken); });
    if (const auto* returned = std::get_if<Returned>(&event.payload))
        return refuseReturn(*returned);
    if (const auto* over = std::get_if<Overridden>(&event.payload))
        return refuseOverride(*over);
    if (const auto* correction = std::get_if<Corrected>(&event.payload))
        return refuseStrayCorrection(event, *correction);
    return {};
}

Logged<std::optional<Event>> Appender::toldBefore(const EventDraft& draft, const EventRecord& record) const
{
    const auto last = m_doubtful ? lastRecord(m_sql, m_origin) : Logged<std::optional<EventRecord>>();
    if (!last)
        return tl::unexpected(last.error());
    if (!*last || !isSameAct(**last, record))
        return std::optional<Event>();
    const auto whole = hasBlobs(m_sql, **last, draft.blobs);
    if (!whole)
        return tl::unexpected(whole.error());
    return *whole ? readEvent(**last).map([](const Event& event) { return std::optional(event); }) : std::nullopt;
}

/// Gives a record its place at the end of the chain. The event is what will be read back.
Logged<Event> Appender::follow(EventRecord& record) const
{
    const auto last = head();
    if (!last)
        return tl::unexpected(last.error());
    record.origin = last->origin;
    record.seq = last->count + 1;
    record.previousHash = last->hash;
    record.hash = chainHash(record);
    auto event = readEvent(record);
    if (!event)
        return failed(LogTrouble::DoesNotFollow, event.error().detail);
    return event;
}

/// Those of this bench: the same lot may be at several.
Logged<std::vector<Event>> Appender::ownEventsOf(const QUuid& subject) const
{
    auto events = eventsOf(m_sql, subject);
    if (events)
        std::erase_if(*events, [this](const Event& each) { return each.origin != m_origin; });
    return events;
}

Logged<std::optional<Repair>> Appender::after(const Event& event)
{
    if (subjectOf(event.payload) == Subject::Bench) {
        if (event.repair != benchSubject())
            return failed(LogTrouble::DoesNotFollow, kindOf(event.payload) + u": it is not of the bench"_s);
        return std::optional<Repair>();
    }
    if (isOfALot(event.payload)) {
        const auto before = ownEventsOf(event.repair);
        if (!before)
            return tl::unexpected(before.error());
        if (const auto fault = followsOfLot(*before, event))
            return failed(LogTrouble::DoesNotFollow, inWords(*fault));
        return std::optional<Repair>();
    }
    if (subjectOf(event.payload) == Subject::Stock) {
        auto before = ownEventsOf(event.repair);
        if (!before)
            return tl::unexpected(before.error());
        if (const auto fault = followsOfStock(*before, event))
            return failed(LogTrouble::DoesNotFollow, inWords(*fault));
        return std::optional<Repair>();
    }
    auto folding = takeRepair(event.repair);
    if (!folding)
        return tl::unexpected(folding.error());
    if (const auto fault = apply(*folding, event))
        return failed(LogTrouble::DoesNotFollow, inWords(*fault));
    return std::optional<Repair>(*std::move(folding));
}

Logged<Appender::Written> Appender::write(const EventDraft& draft, EventRecord& record)
{
    const auto before = toldBefore(draft, record);
    if (!before)
        return tl::unexpected(before.error());
    if (*before)
        return Written{**before, std::nullopt};
    const auto event = follow(record);
    if (!event)
        return tl::unexpected(event.error());
    auto changed = after(*event);
    if (!changed)
        return tl::unexpected(changed.error());
    if (auto may = refuse(*event).and_then([&] { return refuseSheet(m_sql, *event, draft.blobs); }); !may)
        return tl::unexpected(may.error());
    if (auto done = insertRecord(m_sql, record); !done)
        return tl::unexpected(done.error());
    for (const QByteArray& bytes : draft.blobs)
        if (auto done = insertBlob(m_sql, record, bytes); !done)
            return tl::unexpected(done.error());
    if (*changed)
        if (auto done = putSummary(m_sql, summaryOf(**changed, record.person)); !done)
            return tl::unexpected(done.error());
    return Written{*event, *std::move(changed)};
}

void Appender::remember(const Event& event, std::optional<Repair> repair)
{
    m_doubtful = false;
    m_head = ChainHead{event.origin, event.seq, event.hash};
    if (repair && repair->open())
        m_folded.insert_or_assign(event.repair, *std::move(repair));
}

Logged<Event> Appender::append(const EventDraft& draft, const Check& stillThere)
{
    if (draft.repair.isNull())
        return failed(LogTrouble::DoesNotFollow, u"repair: no uuid"_s);
    auto record = recordOf(draft);
    if (!record)
        return tl::unexpected(record.error());
    if (auto there = stillThere(); !there)
        return tl::unexpected(there.error());
    auto transaction = Transaction::begin(m_sql, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    auto written = catchUp().and_then([&] { return write(draft, *record); });
    m_doubtful = true;
    if (!written)
        return tl::unexpected(written.error());
    if (auto done = transaction->commit().and_then(stillThere); !done)
        return tl::unexpected(done.error());
    remember(written->event, std::move(written->repair));
    return std::move(written->event);
}

} // namespace strandbench
