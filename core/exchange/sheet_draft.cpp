// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sheet_draft.h"

#include "exchange/sheets.h"
#include "exchange/strict_json.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestId = 40;
constexpr double finishingTestPiece = 1; // mm: a thicker one of finishing filler heats itself

QJsonValue memberOf(const QJsonObject& json, const QString& path)
{
    const qsizetype dot = path.indexOf(u'.');
    return dot < 0 ? json.value(path) : json.value(path.left(dot)).toObject().value(path.mid(dot + 1));
}

} // namespace

SheetDraft SheetDraft::ofClass(FillerClass filler)
{
    SheetDraft draft;
    for (const SheetField& each : sheetFields()) {
        if (!each.assumed || !belongs(each, filler))
            continue;
        const bool flag = each.kind == SheetFieldKind::Flag;
        draft.m_values[each.path] = flag ? QJsonValue(*each.assumed != 0) : QJsonValue(*each.assumed);
        draft.m_assumed.insert(each.path);
    }
    draft.m_values[u"filler_class"_s] = codeOf(filler);
    draft.m_values[u"demo"_s] = false;
    if (!isFibreReinforced(filler))
        draft.m_values[u"sanding_test_mm"_s] = finishingTestPiece;
    return draft;
}

SheetDraft SheetDraft::of(const ProductSheet& sheet)
{
    SheetDraft draft;
    const QJsonObject json = parseObject(sheet.source).value_or(QJsonObject());
    draft.m_rest = json;
    for (const SheetField& each : sheetFields()) {
        const QJsonValue value = memberOf(json, each.path);
        if (!value.isUndefined())
            draft.m_values[each.path] = value;
        draft.m_rest.remove(each.path.section(u'.', 0, 0));
    }
    return draft;
}

QJsonValue SheetDraft::value(const QString& path) const
{
    const auto found = m_values.find(path);
    return found == m_values.end() ? QJsonValue(QJsonValue::Undefined) : found->second;
}

FillerClass SheetDraft::filler() const
{
    return fromCode<FillerClass>(value(u"filler_class"_s).toString()).value_or(FillerClass::MixedStrand);
}

void SheetDraft::set(const QString& path, const QJsonValue& value)
{
    m_assumed.remove(path);
    if (value.isUndefined())
        m_values.erase(path);
    else
        m_values[path] = value;
    if (path != u"filler_class"_s)
        return;
    for (const SheetField& each : sheetFields())
        if (!belongs(each, filler()))
            m_values.erase(each.path);
    if (isAssumed(u"sanding_test_mm"_s))
        m_values[u"sanding_test_mm"_s] = ofClass(filler()).value(u"sanding_test_mm"_s);
}

void SheetDraft::name(const QString& name, const QSet<QString>& taken)
{
    set(u"name"_s, name);
    set(u"id"_s, sheetIdFor(name, taken));
}

QByteArray SheetDraft::toJson() const
{
    QList<QByteArray> lines;
    QString open; // the object that the last line is of
    for (const SheetField& each : sheetFields()) {
        if (!holds(each.path))
            continue;
        const qsizetype dot = each.path.indexOf(u'.');
        const QString object = dot < 0 ? QString() : each.path.left(dot);
        const QByteArray member = compactJson(each.path.mid(dot + 1)) + ": " + compactJson(value(each.path));
        if (object.isEmpty())
            lines << "  " + member;
        else if (object == open)
            lines.back().replace(lines.back().size() - 1, 1, ", " + member + '}');
        else
            lines << "  " + compactJson(object) + ": {" + member + '}';
        open = object;
    }
    for (auto each = m_rest.begin(); each != m_rest.end(); ++each)
        lines << "  " + compactJson(each.key()) + ": " + compactJson(each.value());
    return "{\n" + lines.join(",\n") + "\n}\n";
}

Checked<ProductSheet> SheetDraft::sheet() const { return readSheet(toJson()); }

QString sheetIdFor(const QString& name, const QSet<QString>& taken)
{
    QString id;
    for (const QChar each : name.normalized(QString::NormalizationForm_KD).toLower()) {
        const bool plain = (each >= u'a' && each <= u'z') || (each >= u'0' && each <= u'9');
        if (plain)
            id += each;
        else if (each.category() != QChar::Mark_NonSpacing && !id.isEmpty() && !id.endsWith(u'_'))
            id += u'_';
    }
    if (id.endsWith(u'_'))
        id.chop(1);
    if (id.isEmpty())
        id = u"product"_s;
    QString unique = id.left(longestId);
    for (int number = 2; taken.contains(unique); ++number) {
        const QString behind = u"_%1"_s.arg(number);
        unique = id.left(longestId - behind.size()) + behind;
    }
    return unique;
}

} // namespace strandbench
