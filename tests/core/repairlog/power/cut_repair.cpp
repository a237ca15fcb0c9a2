// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut_repair.h"

#include "../referee.h"

#include "exchange/events.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr const char* logName = "bench.db";

void must(bool holds, const char* what)
{
    if (!holds)
        throw std::runtime_error(what);
}

/// What the bench does in a day: the log made, every act, checkpoints of two kinds, the program closed and opened.
/// The first acknowledgement is that of the log itself.
void work(const QString& path, const std::vector<EventDraft>& acts, const std::function<void()>& acknowledged)
{
    auto log = RepairLog::open(path, LogMode::ReadWrite);
    must(log.has_value(), "the log is not made");
    acknowledged();
    for (std::size_t i = 0; i < acts.size(); ++i) {
        must((*log)->append(acts[i]).has_value(), "an act is not written");
        acknowledged();
        if (i == 12)
            must(Referee(path).run("PRAGMA wal_checkpoint(PASSIVE)").isEmpty(), "no checkpoint");
        if (i == 24)
            must(Referee(path).run("PRAGMA wal_checkpoint(TRUNCATE)").isEmpty(), "no checkpoint");
        if (i != 36)
            continue;
        log->reset();
        log = RepairLog::open(path, LogMode::ReadWrite);
        must(log.has_value(), "the log does not open again");
    }
}

QByteArray keyOf(const Files& files)
{
    QCryptographicHash hash(QCryptographicHash::Blake2b_256);
    for (const auto& [name, bytes] : files) {
        hash.addData(QByteArray::fromStdString(name + ' ' + std::to_string(bytes.size()) + ' '));
        hash.addData(bytes);
    }
    return hash.result();
}

void lay(const QString& folder, const Files& files)
{
    for (const QString& name : QDir(folder).entryList(QDir::Files | QDir::Hidden))
        must(QFile::remove(folder + u'/' + name), "a file stays");
    for (const auto& [name, bytes] : files) {
        QFile file(folder + u'/' + QString::fromStdString(name));
        must(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size(), "a file is not laid");
    }
}

std::string saying(const char* what, const LogFailure& failure)
{
    return what + (u": "_s + failure.detail).toStdString();
}

bool same(const Event& event, const EventDraft& act)
{
    return event.repair == act.repair && event.person == act.person && event.at == act.at &&
           event.payload == stored(act.payload);
}

} // namespace

CutRepair::CutRepair() : m_acts(wholeRepair())
{
    must(QDir().mkpath(quick(u"recorded"_s)) && QDir().mkpath(quick(u"cut"_s)), "no folder");
    const QString path = quick(u"recorded/"_s + QString::fromLatin1(logName));
    m_steps = recorded([&](const auto& acknowledged) { work(path, m_acts, acknowledged); });
}

CutRepair::Counts CutRepair::cutAt(int part, int of, const Width& width, Syncs syncs)
{
    Counts counts;
    RecordedDisk disk;
    int acknowledged = -1; // the log itself comes first
    for (int step = 0; step <= int(m_steps.size()); ++step) {
        if (step % of == part)
            cut(disk, step, acknowledged, width, counts);
        if (step == int(m_steps.size()))
            break;
        const DiskStep& next = m_steps[std::size_t(step)];
        acknowledged += next.kind == DiskStep::Kind::Acknowledged ? 1 : 0;
        const bool syncing = next.kind == DiskStep::Kind::Sync || next.kind == DiskStep::Kind::SyncFolder;
        if (syncs == Syncs::Real || !syncing)
            disk.take(next);
    }
    return counts;
}

void CutRepair::cut(const RecordedDisk& disk, int step, int acknowledged, const Width& width, Counts& counts)
{
    ++counts.cuts;
    const std::string at = "cut before step " + std::to_string(step) + ", ";
    const auto with = [&](const std::string& how, const Fates& fates, std::uint32_t seed = 0) {
        one(disk.afterCut(fates, seed), at + how, acknowledged, counts);
    };
    with("all kept", [](int, int) { return Fate::Kept; });
    with("none kept", [](int, int) { return Fate::Dropped; });
    with("only the last kept", [](int i, int all) { return i == all - 1 ? Fate::Kept : Fate::Dropped; });
    with("only the last lost", [](int i, int all) { return i == all - 1 ? Fate::Dropped : Fate::Kept; });
    for (int i = 0; i < width.byChance; ++i) {
        const auto seed = std::uint32_t(step * 1000 + i);
        std::mt19937 chance(seed);
        with(
            "by chance, seed " + std::to_string(seed), [&](int, int) { return Fate(chance() % 3); }, seed);
    }
    for (int alone = 0; width.eachAlone && alone < disk.unsynced(); ++alone) {
        const auto number = std::to_string(alone);
        with("lost alone: " + number, [&](int i, int) { return i == alone ? Fate::Dropped : Fate::Kept; });
        with("kept alone: " + number, [&](int i, int) { return i == alone ? Fate::Kept : Fate::Dropped; });
        with(
            "torn alone: " + number, [&](int i, int) { return i == alone ? Fate::Torn : Fate::Kept; },
            std::uint32_t(step * 1000 + alone));
    }
}

/// Every acknowledged act is there, and at most the one that was in flight beyond them.
void CutRepair::one(const Files& files, const std::string& how, int acknowledged, Counts& counts)
{
    ++counts.variants;
    const Found& found = look(files, counts);
    std::string wrong = found.wrong;
    if (wrong.empty() && acknowledged > 0 && !found.log)
        wrong = "there is no log";
    if (wrong.empty() && (found.acts < acknowledged || found.acts > std::max(acknowledged, 0) + 1))
        wrong = std::to_string(found.acts) + " acts are there";
    if (wrong.empty())
        return;
    if (counts.lost++ == 0)
        counts.firstLoss = how + ", acknowledged " + std::to_string(acknowledged) + ": " + wrong;
}

const CutRepair::Found& CutRepair::look(const Files& files, Counts& counts)
{
    const QByteArray key = keyOf(files);
    const auto known = m_known.find(key);
    if (known != m_known.end())
        return known->second;
    ++counts.disks;
    return m_known[key] = open(files);
}

CutRepair::Found CutRepair::open(const Files& files) const
{
    Found found;
    const QString folder = quick(u"cut"_s);
    const QString path = folder + u'/' + QString::fromLatin1(logName);
    lay(folder, files);
    if (auto looking = RepairLog::open(path, LogMode::ReadOnly)) {
        found.log = true;
        read(**looking, found);
        const int read = found.acts;
        looking->reset();
        if (const auto report = verifyLog(path); found.wrong.empty() && (!report || !report->clean))
            found.wrong = report ? "before it was opened: " + (report->breaksAt + u' ' + report->where).toStdString()
                                 : saying("before it was opened", report.error());
        if (found.wrong.empty())
            goOn(found);
        if (found.wrong.empty() && found.acts != read)
            found.wrong = "a writer finds other acts than a reader";
        return found;
    }
    goOn(found);
    return found;
}

/// Counts the acts and holds each against what was written.
void CutRepair::read(RepairLog& log, Found& found) const
{
    const auto events = log.events(m_acts.front().repair);
    if (!events) {
        found.wrong = saying("the events do not read", events.error());
        return;
    }
    found.acts = int(events->size());
    for (std::size_t i = 0; i < events->size(); ++i)
        if (i >= m_acts.size() || (*events)[i].seq != qint64(i) + 1 || !same((*events)[i], m_acts[i]))
            found.wrong = "event " + std::to_string(i + 1) + " is not the act that was written";
}

/// Opens to write, counts, writes what comes next, and verifies.
void CutRepair::goOn(Found& found) const
{
    const QString path = quick(u"cut/"_s + QString::fromLatin1(logName));
    auto log = RepairLog::open(path, LogMode::ReadWrite);
    if (!log) {
        found.wrong = saying("it does not open", log.error());
        return;
    }
    read(**log, found);
    if (!found.wrong.empty())
        return;
    const auto at = std::size_t(found.acts);
    const auto event = (*log)->append(at < m_acts.size() ? m_acts[at] : oneMore());
    if (!event) {
        found.wrong = saying("the next act is not written", event.error());
        return;
    }
    log->reset();
    const auto report = verifyLog(path, QString::fromLatin1(event->hash.toHex()));
    if (!report)
        found.wrong = saying("it does not verify", report.error());
    else if (!report->clean || report->events != found.acts + 1)
        found.wrong = "it does not hold: " + (report->breaksAt + u' ' + report->where).toStdString();
}

} // namespace strandbench::test
