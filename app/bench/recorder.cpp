// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/recorder.h"

#include "clock/local_days.h"
#include "repairlog/damage_mark.h"

#include <QFileInfo>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// After these the open log may be a dead one: the file behind it is gone, or its disk was.
bool isOfTheFile(LogTrouble trouble)
{
    return trouble == LogTrouble::IoError || trouble == LogTrouble::Gone || trouble == LogTrouble::ReadOnly ||
           trouble == LogTrouble::CannotOpen || trouble == LogTrouble::NotADatabase;
}

constexpr int eventsAtOnce = 2000; ///< that the index takes in before an act is written again
constexpr int walTries = 30;
constexpr unsigned long walTryMs = 100;

/// A lot may stand longer on the shelf than its batches teach: the acts of stock of so much longer are looked at.
QString stockDaysBefore(const QString& day)
{
    constexpr int longer = 400;
    return daysFrom(day, -longer);
}

Logged<BenchBook> bookOf(const RepairLog& log, const QString& lotsFromDay)
{
    const auto summaries = log.openRepairs();
    if (!summaries)
        return tl::unexpected(summaries.error());
    BenchBook book;
    for (const RepairSummary& each : *summaries) {
        auto events = log.events(each.repair);
        if (!events)
            return tl::unexpected(events.error());
        book.repairs.push_back(std::move(*events));
    }
    std::optional<LogFailure> failure;
    const auto take = [&failure](auto& into, auto read) {
        if (read)
            into = *std::move(read);
        else
            failure = read.error();
        return !failure;
    };
    ChainHead head;
    if (take(book.ofLots, log.eventsOfLots(lotsFromDay)) &&
        take(book.ofStock, log.eventsOfStock(stockDaysBefore(lotsFromDay))) && take(book.sheets, log.sheets()) &&
        take(book.beads, log.beadCalibrations()) && take(book.clockJumps, log.clockJumps(lotsFromDay)) &&
        take(book.lastWritten, log.lastWritten()) && take(head, log.head()))
        book.lastSeq = head.count;
    if (failure)
        return tl::unexpected(*failure);
    return book;
}

Logged<DayBook> dayOf(const RepairLog& log, const QString& localDay)
{
    const auto open = log.openRepairs();
    const auto today = log.repairsOfDay(localDay);
    const auto head = log.head();
    if (!open || !today || !head)
        return tl::unexpected(!open ? open.error() : !today ? today.error() : head.error());
    std::vector<RepairSummary> all = *today;
    for (const RepairSummary& each : *open)
        if (std::ranges::find(all, each.repair, &RepairSummary::repair) == all.end())
            all.push_back(each);
    std::ranges::stable_sort(all, {}, &RepairSummary::firstUtcMs);
    auto ofBench = log.ofBench(localDay);
    if (!ofBench)
        return tl::unexpected(ofBench.error());
    DayBook book{{}, *head, std::move(*ofBench)};
    for (const RepairSummary& each : all) {
        auto events = log.events(each.repair);
        if (!events)
            return tl::unexpected(events.error());
        book.repairs.push_back(std::move(*events));
    }
    return book;
}

} // namespace

Recorder::Recorder(QString path, QObject* parent) : QObject(parent), m_path(std::move(path)), m_writer(new QObject)
{
    m_thread.setObjectName(u"log writer"_s);
    m_writer->moveToThread(&m_thread);
    m_thread.start();
}

Recorder::~Recorder()
{
    close();
    m_thread.quit();
    m_thread.wait();
    delete m_writer;
}

Logged<BenchBook> Recorder::open(const QString& lotsFromDay)
{
    auto lock = WriterLock::take(m_path);
    if (!lock)
        return tl::unexpected(inUseBy(lock.error()));
    m_lock = *std::move(lock);
    m_looksOnly = false;
    return openAs(LogMode::ReadWrite, lotsFromDay);
}

Logged<BenchBook> Recorder::openToLook(const QString& lotsFromDay, LogTrouble reason)
{
    m_lookReason = reason;
    // Without a WAL a log is read as a still picture, and a copy that is only starting makes its WAL last of all.
    for (int i = 0; reason == LogTrouble::InUse && i < walTries && !QFileInfo::exists(m_path + u"-wal"_s); ++i)
        QThread::msleep(walTryMs);
    m_looksOnly = true;
    return openAs(LogMode::ReadOnly, lotsFromDay);
}

Logged<BenchBook> Recorder::openAs(LogMode mode, const QString& lotsFromDay)
{
    Logged<BenchBook> result;
    const auto work = [&] {
        auto log = RepairLog::open(m_path, mode);
        if (!log) {
            result = tl::unexpected(log.error());
            return;
        }
        m_log = std::move(*log);
        m_refused.reset();
        result = bookOf(*m_log, lotsFromDay);
        if (const auto head = m_log->head())
            m_written = *head;
    };
    QMetaObject::invokeMethod(m_writer, work, Qt::BlockingQueuedConnection);
    return result;
}

void Recorder::append(const EventDraft& draft, std::function<void(const Logged<Event>&)> then)
{
    const auto work = [this, draft, then = std::move(then)] {
        const Logged<Event> written = write(draft);
        QMetaObject::invokeMethod(
            this, [then, written] { then(written); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(m_writer, work, Qt::QueuedConnection);
}

Logged<Event> Recorder::write(const EventDraft& draft)
{
    if (m_refused)
        return tl::unexpected(*m_refused);
    if (!m_log || m_doubtful)
        if (auto opened = openAnew(); !opened)
            return tl::unexpected(opened.error());
    auto written = m_log->append(draft);
    if (written) {
        m_written = {written->origin, written->seq, written->hash};
        return written;
    }
    m_doubtful = isOfTheFile(written.error().trouble);
    noteDamage(written.error());
    return written;
}

/// What is open is closed first: SQLite would hold on to a dead file. While it cannot be written it may be read.
Logged<void> Recorder::openAnew()
{
    if (m_looksOnly || m_written.origin.isEmpty())
        return tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path});
    m_doubtful = true;
    m_log.reset();
    auto log = takeLockAnew().and_then([this] { return openSame(LogMode::ReadWrite); });
    if (log) {
        m_log = *std::move(log);
        m_doubtful = false;
        return {};
    }
    noteDamage(log.error());
    if (auto toRead = openSame(LogMode::ReadOnly))
        m_log = *std::move(toRead);
    return tl::unexpected(log.error());
}

/// The log at the path, if it holds what was confirmed last.
Logged<std::unique_ptr<RepairLog>> Recorder::openSame(LogMode mode) const
{
    auto log = RepairLog::open(m_path, mode);
    if (!log)
        return log;
    const auto same = (*log)->contains(m_written);
    if (!same)
        return tl::unexpected(same.error());
    if (!*same)
        return tl::unexpected(LogFailure{LogTrouble::OtherLog, m_path});
    return log;
}

/// A log that is not there is not made anew, and the lock is of the folder that the log lies in now.
Logged<void> Recorder::takeLockAnew()
{
    if (!QFileInfo::exists(m_path))
        return tl::unexpected(LogFailure{LogTrouble::Gone, m_path});
    if (m_lock && m_lock->stands())
        return {};
    m_lock.reset();
    auto lock = WriterLock::take(m_path);
    if (!lock)
        return tl::unexpected(inUseBy(lock.error()));
    m_lock = *std::move(lock);
    return {};
}

/// The log is marked, so that it is verified whole before anybody writes it again.
void Recorder::noteDamage(const LogFailure& failure)
{
    if (failure.trouble != LogTrouble::Damaged && failure.trouble != LogTrouble::CutShort)
        return;
    m_refused = failure;
    markDamaged(m_path, failure.detail);
    m_log.reset();
    if (auto log = RepairLog::open(m_path, LogMode::ReadOnly))
        m_log = *std::move(log); // what can be read of it
}

void Recorder::closeForWriting(const LogFailure& why)
{
    QMetaObject::invokeMethod(
        m_writer, [this, why] { noteDamage(why); }, Qt::QueuedConnection);
}

void Recorder::close()
{
    QMetaObject::invokeMethod(
        m_writer,
        [this] {
            m_index.reset();
            m_log.reset();
            m_refused = LogFailure{LogTrouble::Locked, m_path};
        },
        Qt::BlockingQueuedConnection);
}

template <class T>
void Recorder::read(std::function<Logged<T>(const RepairLog&)> work, std::function<void(const Logged<T>&)> then)
{
    const auto job = [this, work = std::move(work), then = std::move(then)] {
        const Logged<T> found =
            m_log ? work(*m_log) : Logged<T>(tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path}));
        QMetaObject::invokeMethod(
            this, [then, found] { then(found); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(m_writer, job, Qt::QueuedConnection);
}

void Recorder::blob(const QByteArray& hash, std::function<void(const Logged<QByteArray>&)> then)
{
    read<QByteArray>([hash](const RepairLog& log) { return log.blob(hash); }, std::move(then));
}

void Recorder::readDay(const QString& localDay, std::function<void(const Logged<DayBook>&)> then)
{
    read<DayBook>([localDay](const RepairLog& log) { return dayOf(log, localDay); }, std::move(then));
}

void Recorder::readHead(std::function<void(const Logged<ChainHead>&)> then)
{
    read<ChainHead>([](const RepairLog& log) { return log.head(); }, std::move(then));
}

void Recorder::readAfter(qint64 seq, std::function<void(const Logged<std::vector<Event>>&)> then)
{
    read<std::vector<Event>>([seq](const RepairLog& log) { return log.after(seq); }, std::move(then));
}

void Recorder::readAir(const QString& fromLocalDay, const QString& toLocalDay,
                       std::function<void(const Logged<std::vector<Event>>&)> then)
{
    read<std::vector<Event>>(
        [fromLocalDay, toLocalDay](const RepairLog& log) { return log.eventsOfAir(fromLocalDay, toLocalDay); },
        std::move(then));
}

Logged<bool> Recorder::catchUpIndex()
{
    if (!m_log)
        return tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path});
    if (!m_index) {
        auto opened = FindIndex::open(findIndexPath(m_path));
        if (!opened)
            return tl::unexpected(opened.error());
        m_index = *std::move(opened);
    }
    auto whole = m_index->catchUp(*m_log, eventsAtOnce);
    if (!whole)
        m_index.reset(); // opened anew the next time, and made anew where it does not hold
    return whole;
}

template <class T>
void Recorder::search(std::function<Logged<T>(const FindIndex&)> work, std::function<void(const Logged<T>&)> then)
{
    const auto job = [this, work, then] {
        const auto whole = catchUpIndex();
        if (whole && !*whole)
            return search(work, then); // behind what was asked to be written meanwhile
        const Logged<T> found = whole ? work(*m_index) : Logged<T>(tl::unexpected(whole.error()));
        QMetaObject::invokeMethod(
            this, [then, found] { then(found); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(m_writer, job, Qt::QueuedConnection);
}

void Recorder::find(const QString& text, int most, qint64 before, std::function<void(const Logged<FoundBook>&)> then)
{
    search<FoundBook>(
        [text, most, before](const FindIndex& index) -> Logged<FoundBook> {
            FoundBook book;
            auto lots = index.lotsNamed(text.trimmed());
            auto repairs = index.search(text, most + 1, before);
            if (!lots || !repairs)
                return tl::unexpected(!lots ? lots.error() : repairs.error());
            book.lots = *std::move(lots);
            book.repairs = *std::move(repairs);
            book.more = static_cast<int>(book.repairs.size()) > most;
            if (book.more)
                book.repairs.pop_back();
            return book;
        },
        std::move(then));
}

void Recorder::readUses(const StockLot& lot, int most, qint64 beforeUtcMs,
                        std::function<void(const Logged<std::vector<LotUse>>&)> then)
{
    search<std::vector<LotUse>>(
        [lot, most, beforeUtcMs](const FindIndex& index) { return index.usesOf(lot, most, beforeUtcMs); },
        std::move(then));
}

void Recorder::readRepair(const QUuid& repair, std::function<void(const Logged<RepairFile>&)> then)
{
    read<RepairFile>([this, repair](const RepairLog&) { return fileOf(repair); }, std::move(then));
}

} // namespace strandbench
