// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/practice_record.h"

#include "exchange/strict_json.h"

#include <QJsonDocument>

#include <limits>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestId = 80;

Checked<PracticeEntry> readEntry(const QByteArray& line)
{
    const auto object = parseObject(line);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    StrictObject json(*object, {}, faults);
    PracticeEntry entry;
    entry.utcMs = json.integer(u"utc_ms"_s, 0, std::numeric_limits<qint64>::max(), u"ms"_s);
    entry.person = json.textOrEmpty(u"person"_s);
    entry.panel = json.text(u"panel"_s, longestId);
    entry.passed = json.boolean(u"passed"_s);
    entry.filledAStop = json.boolean(u"filled_a_stop"_s);
    for (const std::vector<std::pair<QString, QJsonObject>> all = json.objects(u"answers"_s);
         const auto& [path, answer] : all) {
        StrictObject one(answer, path, faults);
        const auto decision = one.oneOf<DecisionPoint>(u"decision"_s);
        entry.answers.push_back({decision, one.boolean(u"right"_s)});
        one.finish();
    }
    json.finish();
    if (!faults.empty())
        return tl::unexpected(faults);
    return entry;
}

} // namespace

PracticeEntry entryOf(const QString& panel, const QString& person, qint64 utcMs, const Marking& marking)
{
    PracticeEntry entry{utcMs, person, panel, marking.outcome.passed(), marking.outcome.filledAStop, {}};
    for (const Mark& each : marking.marks)
        if (each.judged != Judged::NotReached)
            entry.answers.push_back({each.decision, each.judged == Judged::Right});
    return entry;
}

QByteArray writeEntry(const PracticeEntry& entry)
{
    QJsonArray answers;
    for (const PracticeEntry::Answer& each : entry.answers)
        answers << QJsonObject{{u"decision"_s, codeOf(each.decision)}, {u"right"_s, each.right}};
    const QJsonObject json{{u"utc_ms"_s, entry.utcMs},
                           {u"person"_s, entry.person},
                           {u"panel"_s, entry.panel},
                           {u"passed"_s, entry.passed},
                           {u"filled_a_stop"_s, entry.filledAStop},
                           {u"answers"_s, answers}};
    return QJsonDocument(json).toJson(QJsonDocument::Compact) + '\n';
}

ReadEntries readEntries(const QByteArray& lines)
{
    ReadEntries read;
    int number = 0;
    for (const QList<QByteArray> all = lines.split('\n'); const QByteArray& line : all) {
        ++number;
        if (line.isEmpty())
            continue;
        auto entry = readEntry(line);
        if (entry) {
            read.entries.push_back(*std::move(entry));
            continue;
        }
        for (Fault fault : entry.error()) {
            fault.field = u"line %1: %2"_s.arg(number).arg(fault.field);
            read.faults.push_back(std::move(fault));
        }
    }
    return read;
}

} // namespace strandbench
