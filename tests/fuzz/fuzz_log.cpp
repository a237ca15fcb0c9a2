// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged log: verified, opened to look, its open repairs folded, backed up. The file is never written; a log that is
// clean reads and folds whole, and only such a one is backed up.
#include "repairlog/repair_log.h"
#include "scratch_file.h"

#include <QCoreApplication>

namespace strandbench::fuzz {
namespace {

void checkReport(const Logged<VerifyReport>& report)
{
    if (!report)
        return require(!report.error().detail.isEmpty(), "a failure says more than its code");
    require(report->clean == report->breaksAt.isEmpty(), "clean, or where it breaks");
    require(report->events >= 0 && report->repairs >= 0 && report->repairs <= report->events, "counts");
}

/// What the bench does when it opens. `clean`: nothing of it may fail.
void readAll(const QString& path, bool clean)
{
    const auto log = RepairLog::open(path, LogMode::ReadOnly);
    if (!log)
        return require(!clean, "a clean log opens");
    const auto open = (*log)->openRepairs();
    require(open.has_value() || !clean, "a clean log lists its repairs");
    if (!open)
        return;
    for (const RepairSummary& each : *open) {
        const auto events = (*log)->events(each.repair);
        require(events.has_value() || !clean, "a clean log's events read");
        if (!events)
            continue;
        const Checked<Repair> repair = foldRepair(*events);
        require(repair.has_value() || !clean, "a clean log folds");
        if (repair)
            (void)nextStep(*repair);
        else
            requireTold(repair.error());
    }
    for (const auto& events : {(*log)->eventsOfLots({}), (*log)->clockJumps({}), (*log)->after(0)})
        require(events.has_value() || !clean, "a clean log's other events read");
    require(((*log)->head().has_value() && (*log)->lastWritten().has_value()) || !clean, "a clean log has a head");
}

void checkBackup(const QString& path, const Logged<VerifyReport>& report)
{
    const QString copy = scratch().filePath(QStringLiteral("copy.db"));
    const auto backup = backupLog(path, copy);
    const bool clean = report && report->clean;
    require(backup.has_value() == clean, "what is clean is backed up, and nothing else");
    require(QFile::exists(copy) == clean, "no copy stays of a backup that failed");
    if (!clean)
        return;
    require(backup->events == report->events && backup->heads == report->heads, "the copy holds the same");
    QFile::remove(copy);
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    static int count = 1;
    static char name[] = "fuzz_log";
    static char* arguments[] = {name, nullptr};
    static const QCoreApplication application(count, arguments); // Qt finds its SQL drivers through one
    const QByteArray bytes = fuzz::bytesOf(data, size);
    const QString path = fuzz::scratch().filePath(QStringLiteral("log.db"));
    fuzz::writeFile(path, bytes);
    const auto report = verifyLog(path);
    fuzz::checkReport(report);
    fuzz::readAll(path, report && report->clean);
    fuzz::checkBackup(path, report);
    fuzz::require(fuzz::readFile(path) == bytes, "the file is as it was");
    fuzz::require(QDir(fuzz::scratch().path()).entryList(QDir::Files | QDir::Hidden).size() == 1, "nothing beside it");
    return 0;
}
