// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/bench.h"

#include "exchange/events.h"
#include "repair/closing.h"
#include "repair/run_clock.h"
#include "repairlog/kept_sheets.h"

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int retryEveryMs = 2000;

/// Troubles of the disk, not of the act: an act against the clock may go ahead under the red bar.
bool isOfTheDisk(LogTrouble trouble)
{
    return trouble != LogTrouble::AlreadyOpen && trouble != LogTrouble::DoesNotFollow;
}

} // namespace

Bench::Bench(Parts parts, QObject* parent)
    : QObject(parent),
      m_parts(std::move(parts)),
      m_book{m_parts.planning.assumptions, {}},
      m_engine(m_parts.planning.engine.with(m_book.now)),
      m_catalogues{m_parts.planning.catalogue},
      m_plannings{{m_parts.planning.table, m_catalogues.back(), m_parts.planning.steps, m_book.now, m_engine}},
      m_watch(m_parts.clock),
      m_pinWorker(m_parts.computing)
{
    m_retryTimer.setInterval(retryEveryMs);
    connect(&m_retryTimer, &QTimer::timeout, this, &Bench::retry);
}

std::optional<Fault> Bench::load(const BenchBook& book)
{
    m_sheets = book.sheets;
    for (const Event& each : book.ofLots) {
        m_lots.add(each);
        m_spread.add(each);
    }
    for (const Event& each : book.beads)
        m_beads.add(each);
    for (const Event& each : book.ofStock)
        m_stock.add(each);
    planWithSheets();
    for (const std::vector<Event>& events : book.repairs) {
        const Checked<Repair> folded = foldRepair(events);
        if (!folded)
            return folded.error().front();
        m_repairs[folded->id] = *folded;
        for (const Event& each : events)
            noteReading(each);
    }
    for (const Event& each : book.clockJumps)
        if (const auto* jump = std::get_if<ClockJumped>(&each.payload))
            makeGood(*jump, each.at);
    if (book.lastWritten)
        m_watch.goOnFrom(*book.lastWritten);
    m_lastSeq = book.lastSeq;
    return std::nullopt;
}

std::vector<const Repair*> Bench::openRepairs() const
{
    std::vector<const Repair*> open;
    for (const auto& [id, repair] : m_repairs)
        if (repair.open())
            open.push_back(&repair);
    std::stable_sort(open.begin(), open.end(),
                     [](const Repair* a, const Repair* b) { return a->lastAt.utcMs > b->lastAt.utcMs; });
    return open;
}

const Repair* Bench::repair(const QUuid& id) const
{
    const auto found = m_repairs.find(id);
    return found == m_repairs.end() ? nullptr : &found->second;
}

RunningMix Bench::runningMix(const Repair& repair, const BatchRun& run) const
{
    return {repair.id, run, clockOf(run, assumptionsOf(run), m_parts.clock.now())};
}

std::vector<RunningMix> Bench::runningMixes() const
{
    std::vector<RunningMix> running;
    for (const auto& [id, repair] : m_repairs)
        for (const BatchRun& run : repair.runs)
            if (run.running())
                running.push_back(runningMix(repair, run));
    std::stable_sort(running.begin(), running.end(),
                     [](const RunningMix& a, const RunningMix& b) { return a.face.toNextPhase < b.face.toNextPhase; });
    return running;
}

void Bench::setAssumptions(const AssumptionBook& book)
{
    m_book = book;
    m_plannings.back().assumptions = book.now;
    m_engine = m_engine.with(book.now);
}

void Bench::setHardenerLot(const QString& lot)
{
    if (lot == m_hardenerLot)
        return; // settings are kept for much else
    m_hardenerLot = lot;
    planWithSheets();
}

void Bench::applyRates()
{
    CureRates rates;
    const Catalogue& catalogue = planning().catalogue;
    for (const std::vector<ProductSheet>* sheets : {&catalogue.sheets(), &catalogue.others()})
        for (const ProductSheet& each : *sheets)
            if (const LogRate rate = beliefOf(each).rate.mean; rate != LogRate())
                rates[versionOf(each)] = rate;
    m_engine = m_engine.with(rates);
}

const AssumptionBook& Bench::changeAssumptions(const Assumptions& next)
{
    std::optional<Instant> oldest;
    for (const RunningMix& each : runningMixes())
        if (!oldest || each.run.hardenerIn.utcMs < oldest->utcMs)
            oldest = each.run.hardenerIn;
    AssumptionBook book = m_book;
    book.change(next, m_parts.clock.now(), oldest);
    setAssumptions(book);
    return m_book;
}

RepairPlan Bench::plan(const Assessment& assessment) const { return planRepair(assessment, planning()); }

RepairPlan Bench::plan(const Repair& repair) const
{
    return repair.plan ? replanRepair(repair.assessment, planning(), *repair.plan, planProgressOf(repair))
                       : plan(repair.assessment);
}

std::vector<QByteArray> Bench::blobsFor(const Payload& payload) const
{
    const Catalogue& catalogue = planning().catalogue;
    if (const auto* mixed = std::get_if<HardenerIn>(&payload)) {
        const ProductSheet* sheet = catalogue.version(mixed->sheetId, mixed->sheetHash); // it may not be the plan's
        return sheet ? std::vector<QByteArray>{sheet->source} : std::vector<QByteArray>{};
    }
    const auto* accepted = std::get_if<PlanAccepted>(&payload);
    if (!accepted)
        return {};
    std::set<QByteArray> blobs{planning().table.source(), planning().steps.source};
    for (const SheetVersion& each : versionsIn(accepted->plan))
        if (const ProductSheet* sheet = catalogue.version(each.id, each.hash))
            blobs.insert(sheet->source);
    return {blobs.begin(), blobs.end()};
}

void Bench::blob(const QByteArray& hash, std::function<void(const Logged<QByteArray>&)> then) const
{
    m_parts.recorder.blob(hash, std::move(then));
}

void Bench::submit(const QUuid& repair, const QString& person, const Payload& payload, Done done,
                   const std::vector<QByteArray>& kept)
{
    if (const auto act = supervisorActOf(payload)) {
        const LogFailure failure{LogTrouble::NeedsPin, codeOf(*act)};
        return refuseAct(*act, person, ActRefusal::NoPin, [done = std::move(done), failure] { done(failure); });
    }
    write(draftOf(repair, person, payload, kept), std::move(done));
}

EventDraft Bench::draftOf(const QUuid& subject, const QString& person, const Payload& payload,
                          const std::vector<QByteArray>& kept) const
{
    EventDraft draft{subject, person, payload, m_parts.clock.now(), blobsFor(payload)};
    draft.blobs.insert(draft.blobs.end(), kept.begin(), kept.end());
    return draft;
}

void Bench::write(const EventDraft& draft, Done done)
{
    if (looksOnly())
        return done(LogFailure{m_parts.recorder.lookReason(), {}});
    // While acts wait for the disk, their order must stay: what is not against the clock waits with them.
    if (!m_unsaved.empty()) {
        if (!isAgainstTheClock(draft.payload))
            return done(LogFailure{m_refusal.value_or(LogTrouble::IoError), {}});
        setAside(draft, m_refusal.value_or(LogTrouble::IoError));
        return done(std::nullopt);
    }
    m_parts.recorder.append(draft, [this, draft, done = std::move(done)](const Logged<Event>& written) {
        if (written) {
            noteSheet(*written, draft.blobs);
            fold(*written);
            keepRefusal(std::nullopt);
            return done(std::nullopt);
        }
        if (isAgainstTheClock(draft.payload) && isOfTheDisk(written.error().trouble)) {
            setAside(draft, written.error().trouble);
            return done(std::nullopt);
        }
        if (written.error().trouble == LogTrouble::Damaged)
            keepRefusal(LogTrouble::Damaged); // which stays, whoever tries
        done(written.error());
    });
}

void Bench::fold(const Event& event)
{
    // What is signed off or corrected may have been handed over before this program started: then it is not kept here.
    const bool here = m_repairs.contains(event.repair) || !isClosing(event.payload);
    if (!here && std::holds_alternative<Returned>(event.payload))
        fetchReturned(event.repair);
    if (subjectOf(event.payload) == Subject::Repair && here)
        if (const auto fault = apply(m_repairs[event.repair], event))
            qWarning("an event of the log does not follow: %s %s", qPrintable(fault->field), qPrintable(fault->value));
    m_lastSeq = std::max(m_lastSeq, event.seq);
    noteReading(event);
    noteLot(event);
    m_stock.add(event);
    Q_EMIT changed();
}

/// Handed over before this program started, it is on the rail again.
void Bench::fetchReturned(const QUuid& repair)
{
    m_parts.recorder.readRepair(repair, [this](const Logged<RepairFile>& file) {
        const auto folded = file ? foldRepair(file->events) : Checked<Repair>(tl::unexpected(Faults{}));
        if (!folded)
            return qWarning("a returned repair could not be read");
        m_repairs.insert_or_assign(folded->id, *folded);
        Q_EMIT changed();
    });
}

void Bench::noteReading(const Event& event)
{
    std::optional<Reading> reading;
    if (const auto* taken = std::get_if<ReadingTaken>(&event.payload))
        reading = taken->reading;
    if (const auto* answered = std::get_if<Answered>(&event.payload))
        if (const auto* value = std::get_if<Reading>(&answered->value))
            reading = *value;
    if (reading && (!m_newestReading || m_newestReading->at.utcMs <= event.at.utcMs))
        m_newestReading = DatedReading{*reading, event.at};
}

void Bench::noteLot(const Event& event)
{
    m_lots.add(event);
    m_spread.add(event);
    m_beads.add(event);
    if (std::holds_alternative<BeadCalibrated>(event.payload))
        planWithSheets(); // no screen that computes tells such either
    // Rates change by what was told of a lot alone; no screen that computes tells such.
    if (std::holds_alternative<Gelled>(event.payload) || std::holds_alternative<Sands>(event.payload) ||
        isOfALot(event.payload))
        applyRates();
}

void Bench::noteSheet(const Event& event, const std::vector<QByteArray>& bytes)
{
    if (std::holds_alternative<SheetLaidAside>(event.payload)) {
        m_sheets.add(event);
        return planWithSheets();
    }
    const auto* kept = std::get_if<SheetKept>(&event.payload);
    if (!kept)
        return;
    for (const QByteArray& each : bytes)
        if (const auto sheet = sheetFrom(*kept, each)) {
            m_sheets.add(event, &*sheet);
            return planWithSheets();
        }
}

void Bench::fetchSheet(const Event& event)
{
    const auto* kept = std::get_if<SheetKept>(&event.payload);
    if (!kept)
        return noteSheet(event, {});
    blob(kept->hash, [this, event](const Logged<QByteArray>& bytes) {
        if (!bytes)
            return;
        noteSheet(event, {*bytes});
        Q_EMIT changed();
    });
}

void Bench::planWithSheets()
{
    const Catalogue own = m_sheets.catalogue(m_parts.planning.catalogue);
    m_catalogues.push_back(own);
    if (const auto calibrated = bead())
        m_catalogues.back().setBead(calibrated->bead.mean, own);
    const PlanningSet& before = planning();
    m_plannings.push_back({before.table, m_catalogues.back(), before.steps, before.assumptions, m_engine});
    applyRates();
}

void Bench::keepRefusal(std::optional<LogTrouble> why)
{
    if (std::exchange(m_refusal, why) != why)
        Q_EMIT unsavedChanged();
}

void Bench::logIsDamaged(const LogFailure& what)
{
    m_parts.recorder.closeForWriting(what);
    keepRefusal(LogTrouble::Damaged);
}

std::size_t Bench::goOnWith(const std::deque<EventDraft>& waiting)
{
    std::size_t lost = 0;
    for (const EventDraft& each : waiting) {
        Repair trial = repair(each.repair) ? *repair(each.repair) : Repair{};
        if (subjectOf(each.payload) == Subject::Repair && apply(trial, provisional(each)))
            ++lost;
        else
            setAside(each, LogTrouble::IoError);
    }
    retry();
    return lost;
}

Event Bench::provisional(const EventDraft& draft) const
{
    Event event;
    // It gets its number when it is written; that one can only be higher.
    const Repair* of = repair(draft.repair);
    event.seq = (of ? of->lastSeq : 0) + 1;
    event.repair = draft.repair;
    event.person = draft.person;
    event.payload = stored(draft.payload);
    event.at = draft.at;
    return event;
}

void Bench::setAside(const EventDraft& draft, LogTrouble why)
{
    m_refusal = why;
    m_unsaved.push_back(draft);
    fold(provisional(draft));
    m_retryTimer.start();
    Q_EMIT unsavedChanged();
}

void Bench::retry()
{
    if (m_retrying || m_unsaved.empty())
        return;
    m_retrying = true;
    m_parts.recorder.append(m_unsaved.front(), [this](const Logged<Event>& written) {
        m_retrying = false;
        if (!written)
            return keepRefusal(written.error().trouble); // the bar stays, the next tick tries again
        if (subjectOf(written->payload) == Subject::Repair)
            m_repairs[written->repair].lastSeq = written->seq;
        m_unsaved.pop_front();
        if (m_unsaved.empty()) {
            m_refusal.reset();
            m_retryTimer.stop();
        } else {
            retry();
        }
        Q_EMIT unsavedChanged();
    });
}

} // namespace strandbench
