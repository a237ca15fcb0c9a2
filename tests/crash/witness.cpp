// SPDX-License-Identifier: GPL-3.0-or-later
#include "witness.h"

#include "repairlog/repair_log.h"

#include <QDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Every marked act of a log with its place; one that stands there twice is a fault.
template <class Place> QString readPlaces(const QString& path, std::map<QString, Place>& found)
{
    const auto log = RepairLog::open(path, LogMode::ReadOnly);
    if (!log)
        return u"it does not open: "_s + log.error().detail;
    const auto events = (*log)->after(0);
    if (!events)
        return u"it does not read: "_s + events.error().detail;
    for (const Event& each : *events)
        if (!each.person.isEmpty() && !found.emplace(each.person, Place{each.seq, each.hash}).second)
            return u"act %1 is there twice"_s.arg(each.person);
    return {};
}

QString faultOfVerifying(const QString& path)
{
    const auto report = verifyLog(path);
    if (!report)
        return u"it does not verify: "_s + report.error().detail;
    return report->clean ? QString() : u"it breaks at %1: %2"_s.arg(report->breaksAt, report->where);
}

} // namespace

void Witness::hear(const std::vector<QByteArray>& lines)
{
    for (const QByteArray& each : lines)
        take(each);
}

void Witness::take(const QByteArray& line)
{
    const QStringList words = QString::fromUtf8(line).split(u' ');
    const QString& what = words.front();
    if (what == u"done"_s && words.size() == 3)
        m_owed[words[1]] = words[2].toLongLong();
    else if (what == u"at"_s && words.size() == 4)
        m_told[words[1]] = {words[2].toLongLong(), QByteArray::fromHex(words[3].toLatin1())};
    else if (what == u"backup"_s && words.size() == 2)
        for (const auto& [mark, seq] : m_owed)
            m_begun[words[1]].insert(mark);
    else if (what == u"backed"_s && words.size() == 2)
        m_made.insert(words[1]);
    else if (what == u"unbacked"_s) {
        ++m_refused;
        m_refusals << QString::fromUtf8(line);
    } else if (what != u"phase"_s)
        m_trouble = QString::fromUtf8(line);
}

QString Witness::holdToWhatWasSaid(const std::map<QString, Place>& found) const
{
    for (const auto& [mark, seq] : m_owed) {
        const auto there = found.find(mark);
        if (there == found.end())
            return u"act %1 was confirmed and is not there"_s.arg(mark);
        if (seq != 0 && there->second.seq != seq)
            return u"act %1 was confirmed as seq %2 and is %3"_s.arg(mark).arg(seq).arg(there->second.seq);
    }
    for (const auto* before : {&m_told, &m_seen})
        for (const auto& [mark, place] : *before)
            if (const auto there = found.find(mark); there == found.end() || there->second != place)
                return u"act %1 was seq %2 and is gone or another"_s.arg(mark).arg(place.seq);
    return {};
}

QString Witness::faultOfLog()
{
    if (!m_trouble.isEmpty())
        return m_trouble;
    const bool owes = !m_owed.empty() || !m_seen.empty() || !m_told.empty();
    // Not there, or its making was cut off: only then has it a rollback journal. Whether it can be made all the same
    // the next writer shows.
    if (!owes && (QFileInfo(m_log).size() == 0 || QFileInfo::exists(m_log + u"-journal"_s)))
        return {};
    if (const QString fault = faultOfVerifying(m_log); !fault.isEmpty())
        return fault;
    std::map<QString, Place> found;
    if (const QString fault = readPlaces(m_log, found); !fault.isEmpty())
        return fault;
    const QString fault = holdToWhatWasSaid(found);
    m_seen = std::move(found);
    return fault;
}

QString Witness::faultOfBackup(const QString& path, const std::set<QString>& owed) const
{
    if (const QString fault = faultOfVerifying(path); !fault.isEmpty())
        return fault;
    std::map<QString, Place> found;
    if (const QString fault = readPlaces(path, found); !fault.isEmpty())
        return fault;
    for (const QString& mark : owed)
        if (!found.contains(mark))
            return u"act %1 was confirmed before it began and is not in it"_s.arg(mark);
    return {};
}

QString Witness::faultOfBackups()
{
    QDir folder = QFileInfo(m_log).absoluteDir();
    for (const QString& name : folder.entryList({u"*.backup"_s, u"*.part-*"_s}, QDir::Files)) {
        const QString path = folder.filePath(name);
        if (!name.endsWith(u".backup"_s))
            ++m_halfMade;
        else if (const QString fault = faultOfBackup(path, m_begun[name]); !fault.isEmpty())
            return u"backup %1: %2"_s.arg(name, fault);
        else {
            ++m_backups;
            m_made.erase(name);
        }
        QFile::remove(path);
    }
    if (!m_made.empty())
        return u"backup %1 was said to be there and is not"_s.arg(*m_made.begin());
    m_begun.clear();
    return {};
}

} // namespace strandbench::test
