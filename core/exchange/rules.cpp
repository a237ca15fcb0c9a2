// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/rules.h"

#include "exchange/strict_json.h"

#include <QCryptographicHash>
#include <QHash>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestCode = 60;

void readRow(FillerClass filler, const QJsonObject& json, const QString& path, DecisionTable::Cells& cells,
             Faults& faults)
{
    StrictObject row(json, path, faults);
    for (const QString& column : DecisionTable::columns()) {
        const std::size_t before = faults.size();
        const QJsonObject cellJson = row.object(column);
        if (faults.size() != before)
            continue;
        StrictObject cell(cellJson, row.pathOf(column), faults);
        const auto suitability = cell.oneOf<Suitability>(u"suitability"_s);
        cells[{filler, column}] = {suitability, cell.text(u"reason"_s, longestCode)};
        cell.finish();
    }
    row.finish();
}

QStringList toStringList(const std::vector<QString>& texts) { return {texts.cbegin(), texts.cend()}; }

/// The words of a list, each of which must be one of `allowed`; a leading '!' is passed over when `negatable`.
std::vector<QString> readWords(StrictObject& step, const QString& key, const QStringList& allowed, bool negatable)
{
    const QStringList words = step.texts(key, longestCode);
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString& word = words.at(i);
        if (!allowed.contains(negatable && word.startsWith(u'!') ? word.mid(1) : word))
            step.fault(u"%1[%2]"_s.arg(key).arg(i), word, FaultKind::NotOneOf, allowed);
    }
    return {words.cbegin(), words.cend()};
}

StepRule readStep(StrictObject& json)
{
    StepRule step;
    constexpr double longestHandsOn = 4 * 3600;
    constexpr double longestWaiting = 7 * 24 * 3600;
    step.code = json.text(u"code"_s, longestCode);
    step.handsOn = seconds(json.number(u"hands_on_s"_s, 0, longestHandsOn, u"s"_s));
    step.waiting = seconds(json.number(u"waiting_s"_s, 0, longestWaiting, u"s"_s));
    const QStringList cautions = json.texts(u"cautions"_s, longestCode);
    step.cautions = {cautions.cbegin(), cautions.cend()};
    step.when = readWords(json, u"when"_s, toStringList(knownStepConditions()), true);
    step.arguments = readWords(json, u"arguments"_s, toStringList(knownStepArguments()), false);
    json.finish();
    return step;
}

std::vector<StepRule> readSteps(StrictObject& root, const QString& key, QHash<QString, QString>& codes, Faults& faults)
{
    std::vector<StepRule> steps;
    for (const auto& [path, json] : root.objects(key)) {
        StrictObject object(json, path, faults);
        StepRule step = readStep(object);
        if (const QString first = codes.value(step.code); !step.code.isEmpty() && !first.isEmpty())
            object.fault(u"code"_s, step.code, FaultKind::Conflicts, {first, step.code});
        codes.insert(step.code, object.pathOf(u"code"_s));
        steps.push_back(std::move(step));
    }
    return steps;
}

QByteArray sha256(const QByteArray& bytes) { return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256); }

} // namespace

Checked<DecisionTable> readDecisionTable(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    DecisionTable::Cells cells;
    StrictObject root(*object, {}, faults);
    for (const auto& [filler, code] : Codes<FillerClass>::table) {
        if (!isFibreReinforced(filler))
            continue;
        const std::size_t before = faults.size();
        const QString key = QString::fromLatin1(code);
        const QJsonObject row = root.object(key);
        if (faults.size() == before)
            readRow(filler, row, key, cells, faults);
    }
    root.finish();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return DecisionTable(std::move(cells), json, sha256(json));
}

Checked<StepBook> readStepBook(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    QHash<QString, QString> codes; // code to the path of its first entry
    StepBook book;
    StrictObject root(*object, {}, faults);
    book.prepare = readSteps(root, u"prepare"_s, codes, faults);
    book.finish = readSteps(root, u"finish"_s, codes, faults);
    root.finish();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    book.source = json;
    book.hash = sha256(json);
    return book;
}

} // namespace strandbench
