// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sheet_csv.h"

#include "exchange/csv.h"
#include "exchange/sheet_draft.h"
#include "exchange/sheets.h"
#include "exchange/strict_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QStringDecoder>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QStringList& header()
{
    static const QStringList names{u"field"_s, u"value"_s, u"unit"_s};
    return names;
}

QByteArray row(const QString& field, const QString& value, const QString& unit)
{
    return csvRow({field, value, unit}).toUtf8();
}

/// The JSON value that a text is by itself: a number, true, false, a quoted text, a list. Undefined of any other text.
QJsonValue asJson(const QString& text)
{
    const QJsonArray list = QJsonDocument::fromJson('[' + text.toUtf8() + ']').array();
    return list.size() == 1 && !list.first().isNull() ? list.first() : QJsonValue(QJsonValue::Undefined);
}

QString shownJson(const QJsonValue& value)
{
    if (value.isString() && asJson(value.toString()).isUndefined())
        return value.toString();
    return QString::fromUtf8(compactJson(value));
}

QString shown(const QJsonValue& value)
{
    if (value.isBool())
        return value.toBool() ? u"true"_s : u"false"_s;
    return value.isDouble() ? plainNumber(value.toDouble()) : value.toString();
}

void writeRest(const QJsonObject& json, const QString& path, QByteArray& into)
{
    for (auto each = json.begin(); each != json.end(); ++each) {
        const QString name = path.isEmpty() ? each.key() : path + u'.' + each.key();
        if (each.value().isObject() && !each.value().toObject().isEmpty())
            writeRest(each.value().toObject(), name, into);
        else
            into += row(name, shownJson(each.value()), {});
    }
}

/// Takes the rows of a CSV text apart, character by character.
class CsvReader {
public:
    CsvReader(const QString& text, Faults& faults) : m_text(text), m_faults(faults) {}

    std::vector<QStringList> rows()
    {
        std::vector<QStringList> all;
        while (m_at < m_text.size() && m_faults.empty()) {
            ++m_line;
            all.push_back(fields());
        }
        return all;
    }

private:
    QStringList fields()
    {
        QStringList all;
        while (true) {
            all << (peek() == u'"' ? quotedField() : plainField());
            if (peek() != u',')
                break;
            ++m_at;
        }
        if (peek() == u'\r')
            ++m_at;
        if (m_at < m_text.size() && m_text.at(m_at) != u'\n')
            wrong();
        ++m_at;
        return all;
    }

    [[nodiscard]] QChar peek() const { return m_at < m_text.size() ? m_text.at(m_at) : QChar(u'\n'); }

    QString plainField()
    {
        const qsizetype from = m_at;
        while (m_at < m_text.size() && !QStringView(u",\"\r\n").contains(m_text.at(m_at)))
            ++m_at;
        if (peek() == u'"')
            wrong();
        return m_text.mid(from, m_at - from);
    }

    QString quotedField()
    {
        QString field;
        for (++m_at; m_at < m_text.size(); ++m_at) {
            if (m_text.at(m_at) != u'"') {
                field += m_text.at(m_at);
            } else if (m_at + 1 < m_text.size() && m_text.at(m_at + 1) == u'"') {
                field += m_text.at(m_at++);
            } else {
                ++m_at;
                return field;
            }
        }
        wrong();
        return field;
    }

    void wrong()
    {
        if (m_faults.empty())
            m_faults.push_back({u"line %1"_s.arg(m_line),
                                m_text.mid(m_at, 20),
                                FaultKind::NotReadable,
                                {u"density_g_per_ml,1.45,g/ml"_s}});
        m_at = m_text.size();
    }

    const QString& m_text;
    Faults& m_faults;
    qsizetype m_at = 0;
    int m_line = 0;
};

/// The value of a field of the table; a fault where the text is none of its kind.
QJsonValue valueOf(const SheetField& field, const QString& text, Faults& faults)
{
    if (field.kind == SheetFieldKind::Text || field.kind == SheetFieldKind::Filler)
        return text;
    const QJsonValue value = asJson(text.trimmed());
    const bool fits = field.kind == SheetFieldKind::Flag ? value.isBool() : value.isDouble();
    if (!fits)
        faults.push_back({field.path,
                          text,
                          FaultKind::WrongKind,
                          {field.kind == SheetFieldKind::Flag ? u"true or false"_s : u"number"_s}});
    return value;
}

void putInto(QJsonObject& json, const QStringList& path, const QJsonValue& value)
{
    if (path.size() == 1) {
        json[path.first()] = value;
        return;
    }
    QJsonObject inner = json[path.first()].toObject();
    putInto(inner, path.mid(1), value);
    json[path.first()] = inner;
}

class SheetRows {
public:
    explicit SheetRows(Faults& faults) : m_faults(faults) {}

    void take(const QStringList& row, int line)
    {
        if (row.size() != header().size())
            return fault(u"line %1"_s.arg(line), row.join(u','), FaultKind::NotReadable,
                         {u"density_g_per_ml,1.45,g/ml"_s});
        const QString path = row.at(0).trimmed();
        if (path.isEmpty())
            return fault(u"line %1"_s.arg(line), row.at(0), FaultKind::Empty, {});
        if (m_told.contains(path))
            return fault(path, row.at(1), FaultKind::Conflicts, {path, m_told.value(path)});
        m_told.insert(path, row.at(1));
        const SheetField* field = findSheetField(path);
        const QString unit = field ? field->unit : QString();
        if (row.at(2).trimmed() != unit)
            return fault(path, row.at(2), FaultKind::NotOneOf, {unit});
        if (field)
            m_draft.set(path, valueOf(*field, row.at(1), m_faults));
        else
            rest(path, row.at(1));
    }

    [[nodiscard]] SheetDraft draft() const { return m_draft; }

private:
    void fault(const QString& field, const QString& value, FaultKind kind, const QStringList& allowed)
    {
        m_faults.push_back({field, value, kind, allowed});
    }

    void rest(const QString& path, const QString& text)
    {
        const QJsonValue value = asJson(text);
        QJsonObject json = m_draft.rest();
        putInto(json, path.split(u'.'), value.isUndefined() ? QJsonValue(text) : value);
        m_draft.setRest(json);
    }

    Faults& m_faults;
    SheetDraft m_draft;
    QMap<QString, QString> m_told;
};

} // namespace

QByteArray sheetToCsv(const ProductSheet& sheet)
{
    const SheetDraft draft = SheetDraft::of(sheet);
    QByteArray csv = row(header().at(0), header().at(1), header().at(2));
    for (const SheetField& each : sheetFields())
        if (draft.holds(each.path))
            csv += row(each.path, shown(draft.value(each.path)), each.unit);
    writeRest(draft.rest(), {}, csv);
    return csv;
}

Checked<ProductSheet> readSheetCsv(const QByteArray& csv)
{
    const auto refused = [](const QString& field, const QString& value, FaultKind kind, const QStringList& allowed) {
        return tl::unexpected(Faults{{field, value, kind, allowed}});
    };
    if (csv.size() > longestSheetFile)
        return refused(u"file"_s, QString::number(csv.size()), FaultKind::TooLong, {QString::number(longestSheetFile)});
    QStringDecoder utf8(QStringDecoder::Utf8); // takes a byte order mark away
    const QString text = utf8(csv);
    if (utf8.hasError())
        return refused(u"file"_s, {}, FaultKind::NotReadable, {u"UTF-8"_s});
    Faults faults;
    const std::vector<QStringList> rows = CsvReader(text, faults).rows();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    if (rows.empty() || rows.front() != header())
        return refused(u"line 1"_s, rows.empty() ? QString() : rows.front().join(u','), FaultKind::NotReadable,
                       {header().join(u',')});
    SheetRows sheet(faults);
    for (std::size_t i = 1; i < rows.size(); ++i)
        sheet.take(rows[i], static_cast<int>(i) + 1);
    auto read = sheet.draft().sheet();
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return read;
}

} // namespace strandbench
