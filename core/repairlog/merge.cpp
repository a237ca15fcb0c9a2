// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/merge.h"

#include "exchange/events.h"
#include "repairlog/checks.h"
#include "repairlog/disk.h"
#include "repairlog/failure.h"
#include "repairlog/gate.h"
#include "repairlog/probe.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"
#include "repairlog/transaction.h"
#include "repairlog/transfer.h"

#include <QDir>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Heads = std::vector<ChainHead>;

Logged<bool> alikeAt(const SqlConnection& here, const SqlConnection& there, const QString& origin, qint64 seq)
{
    const QString sql = u"SELECT hash FROM event WHERE origin = ? AND seq = ?"_s;
    const auto one = here.value(sql, {origin, seq});
    const auto other = there.value(sql, {origin, seq});
    if (!one || !other)
        return tl::unexpected(!one ? one.error() : other.error());
    return one->toByteArray() == other->toByteArray();
}

/// The first seq at which two chains differ; 0 when the shorter is the beginning of the longer. Chains that are alike
/// at one seq are alike in all before it, so it is found by halving.
Logged<qint64> partingOf(const SqlConnection& here, const SqlConnection& there, const QString& origin, qint64 common)
{
    if (common == 0)
        return 0;
    const auto last = alikeAt(here, there, origin, common);
    if (!last)
        return tl::unexpected(last.error());
    if (*last)
        return 0;
    qint64 alike = 0; // seq up to which they are known to be alike
    qint64 differ = common;
    while (differ - alike > 1) {
        const qint64 middle = alike + (differ - alike) / 2;
        const auto same = alikeAt(here, there, origin, middle);
        if (!same)
            return tl::unexpected(same.error());
        (*same ? alike : differ) = middle;
    }
    return differ;
}

/// The entry that a chain was brought in, at the end of this bench's own.
Logged<void> record(const SqlConnection& here, const QString& own, const MergedChain& chain, const MergedBy& by)
{
    const auto head = headOf(here, own);
    if (!head)
        return tl::unexpected(head.error());
    const Payload payload = LogMerged{chain.origin, chain.added, chain.there, chain.head};
    EventRecord record;
    record.previousHash = head->hash;
    record.origin = own;
    record.seq = head->count + 1;
    record.repair = textOf(benchSubject());
    record.kind = kindOf(payload);
    record.kindVersion = kindVersionOf(payload);
    record.at = by.at;
    record.person = by.person;
    record.localDay = localDay(by.at);
    record.payload = encodePayload(payload);
    record.hash = chainHash(record);
    return insertRecord(here, record);
}

class Merging {
public:
    Merging(const SqlConnection& here, const SqlConnection& there)
        : m_here(here), m_there(there), m_transfer(there, here)
    {}

    Logged<MergeReport> run(const Heads& heads, const std::optional<MergedBy>& by)
    {
        const auto own = metaValue(m_here, u"origin"_s);
        if (!own)
            return tl::unexpected(own.error());
        for (const ChainHead& each : heads)
            if (auto done = chain(each, *own); !done)
                return tl::unexpected(done.error());
        auto done = m_transfer.finish().and_then([&] { return refuseSharedRepairs(); }).and_then([&] {
            return findOpenTwice();
        });
        if (!done)
            return tl::unexpected(done.error());
        m_report.added = m_transfer.events();
        m_report.repairs = m_transfer.repairs();
        for (const MergedChain& each : m_report.chains)
            if (by && each.added > 0)
                if (auto told = record(m_here, *own, each, *by); !told)
                    return tl::unexpected(told.error());
        return m_report;
    }

private:
    Logged<void> chain(const ChainHead& theirs, const QString& own)
    {
        const auto ours = headOf(m_here, theirs.origin);
        if (!ours)
            return tl::unexpected(ours.error());
        const auto parting = partingOf(m_here, m_there, theirs.origin, std::min(ours->count, theirs.count));
        if (!parting)
            return tl::unexpected(parting.error());
        MergedChain chain{theirs.origin, theirs.origin == own, ours->count, theirs.count, 0, *parting, ours->hash};
        if (*parting == 0 && theirs.count > ours->count) {
            if (auto done = bringIn(theirs.origin, ours->count); !done)
                return done;
            chain.added = theirs.count - ours->count;
            chain.head = theirs.hash;
        }
        m_report.chains.push_back(chain);
        return {};
    }

    Logged<void> bringIn(const QString& origin, qint64 after)
    {
        return m_there.each(u"SELECT %1 FROM event WHERE origin = ? AND seq > ? ORDER BY seq"_s.arg(recordColumns()),
                            {origin, after}, [this](const Row& row) { return m_transfer.take(readRecord(row)); });
    }

    Logged<void> refuseSharedRepairs()
    {
        const auto shared = m_here.value(u"SELECT repair FROM event WHERE repair IN (SELECT repair FROM summary) "
                                         "GROUP BY repair HAVING count(DISTINCT origin) > 1 LIMIT 1"_s);
        if (!shared)
            return tl::unexpected(shared.error());
        if (shared->isValid())
            return failed(LogTrouble::Damaged, u"repair %1 has events of two benches"_s.arg(shared->toString()));
        return {};
    }

    Logged<void> findOpenTwice()
    {
        return m_here.each(u"SELECT min(job), min(panel) FROM summary WHERE open = 1 GROUP BY job_key, panel_key "
                           "HAVING count(*) > 1 ORDER BY 1, 2"_s,
                           {}, [this](const Row& row) -> Logged<void> {
                               m_report.openTwice.push_back({row.text(0), row.text(1)});
                               return {};
                           });
    }

    const SqlConnection& m_here;
    const SqlConnection& m_there;
    Transfer m_transfer;
    MergeReport m_report;
};

Logged<MergeReport> mergeInto(const SqlConnection& here, const SqlConnection& there, const Heads& heads,
                              const std::optional<MergedBy>& by)
{
    auto transaction = Transaction::begin(here, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    auto report = Merging(here, there).run(heads, by);
    if (!report)
        return report;
    if (auto done = transaction->commit(); !done)
        return tl::unexpected(done.error());
    return report;
}

} // namespace

bool MergeReport::conflicts() const
{
    return std::ranges::any_of(chains, [](const MergedChain& each) { return each.partsAt != 0; });
}

Logged<MergeReport> mergeLog(const QString& path, const QString& from, MergeMode mode,
                             const std::optional<MergedBy>& by)
{
    if (mode == MergeMode::DryRun) { // on a copy, which may be changed
        const disk::Temporary copy(disk::partNameFor(QDir::temp().filePath(u"strandbench"_s)));
        if (auto done = disk::copyLog(path, copy.path()); !done)
            return tl::unexpected(done.error());
        return mergeLog(copy.path(), from, MergeMode::Write);
    }
    const auto verified = verifiedLog(from);
    if (!verified)
        return tl::unexpected(verified.error());
    const auto found = probe(from);
    if (!found)
        return tl::unexpected(found.error());
    const auto there = openToRead(*found);
    if (!there)
        return tl::unexpected(there.error());
    const auto picture = Transaction::begin(**there, Transaction::Kind::Read);
    if (!picture)
        return tl::unexpected(picture.error());
    const auto here = openToWrite(path);
    if (!here)
        return tl::unexpected(here.error());
    return mergeInto(**here, **there, verified->heads, by);
}

} // namespace strandbench
