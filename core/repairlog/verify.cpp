// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/checks.h"
#include "repairlog/failure.h"
#include "repairlog/probe.h"
#include "repairlog/schema.h"
#include "repairlog/transaction.h"

#include <functional>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The 32 bytes of a head in hexadecimal; empty for an empty text, nothing for anything else.
std::optional<QByteArray> parseHead(const QString& hex)
{
    const QByteArray digits = hex.trimmed().toLatin1().toLower();
    const QByteArray bytes = QByteArray::fromHex(digits);
    if (digits.isEmpty())
        return QByteArray();
    if (bytes.size() != 32 || bytes.toHex() != digits)
        return std::nullopt;
    return bytes;
}

/// The checks in the order in which a break is named. A missing trigger comes after what it would have kept
/// from happening: a changed event is worse than a guard that is off.
Finding firstBreak(const SqlConnection& connection, const QByteArray& expected, VerifyReport& report)
{
    const bool ours = report.schemaVersion <= currentVersion();
    std::optional<Break> headIsMissing;
    const std::vector<std::function<Finding()>> checks{
        [&] { return checkIntegrity(connection); },
        [&] { return ours ? checkTables(connection) : Finding(std::nullopt); },
        [&] {
            auto found = checkChains(connection, expected, report);
            if (found && *found && (*found)->at == u"expected_head"_s)
                headIsMissing = std::exchange(*found, std::nullopt);
            return found;
        },
        [&] { return checkRepairs(connection, report); },
        [&] { return checkBlobs(connection); },
        [&] { return ours ? checkMeta(connection) : Finding(std::nullopt); },
        [&] { return ours ? checkGuards(connection) : Finding(std::nullopt); },
    };
    for (const auto& check : checks)
        if (auto found = check(); !found || *found)
            return found;
    return headIsMissing;
}

VerifyReport broken(VerifyReport report, const Break& found)
{
    report.clean = false;
    report.breaksAt = found.at;
    report.where = found.where;
    return report;
}

/// A file whose pages do not hold is an answer, not a failure to verify.
Logged<VerifyReport> brokenOrFailed(const VerifyReport& report, const LogFailure& failure)
{
    if (failure.trouble == LogTrouble::Damaged)
        return broken(report, {u"integrity"_s, failure.detail});
    return tl::unexpected(failure);
}

Logged<VerifyReport> verifyFound(const Probe& found, const QByteArray& expected)
{
    VerifyReport report;
    const auto connection = openToRead(found);
    if (!connection)
        return brokenOrFailed(report, connection.error());
    const auto picture = Transaction::begin(**connection, Transaction::Kind::Read);
    if (!picture)
        return brokenOrFailed(report, picture.error());
    const auto version = (*connection)->value(u"PRAGMA user_version"_s);
    if (!version)
        return brokenOrFailed(report, version.error());
    report.schemaVersion = version->toInt();
    const auto result = firstBreak(**connection, expected, report);
    if (!result)
        return brokenOrFailed(report, result.error());
    if (*result)
        return broken(report, **result);
    report.clean = true;
    return report;
}

Logged<VerifyReport> verifyOnce(const QString& path, const QByteArray& expected, Access& reading)
{
    const auto found = probe(path);
    if (!found)
        return brokenOrFailed({}, found.error());
    reading = found->reading;
    return verifyFound(*found, expected);
}

} // namespace

Logged<VerifyReport> verifyLog(const QString& path, const QString& expectHead)
{
    const auto expected = parseHead(expectHead);
    if (!expected)
        return broken({}, {u"expected_head"_s, u"'%1' is not 64 hexadecimal digits"_s.arg(expectHead)});
    Access reading = Access::ReadOnly;
    auto report = verifyOnce(path, *expected, reading);
    // A still reading takes no lock: the program may have opened the log and written while it went on. Then
    // what looked like damage may be none, and the log is read again beside the program.
    if ((!report || !report->clean) && reading == Access::Still && hasWal(path))
        report = verifyOnce(path, *expected, reading);
    return report;
}

Logged<VerifyReport> verifiedLog(const QString& path)
{
    auto report = verifyLog(path);
    if (report && !report->clean)
        return failed(LogTrouble::Damaged, u"%1: %2"_s.arg(report->breaksAt, report->where));
    return report;
}

} // namespace strandbench
