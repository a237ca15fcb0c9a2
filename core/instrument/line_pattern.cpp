// SPDX-License-Identifier: GPL-3.0-or-later
#include "instrument/line_pattern.h"

#include "quantity/units.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString weightUnits() { return u"g|kg|oz|lb"_s; }

/// At most seven digits before the point and four after it: more than any bench scale shows, and exact in a double.
QString numberExpression() { return u"([ \\t]*+[+-]?[ \\t]*+[0-9]{1,7}(?:[.,][0-9]{1,4})?)"_s; }

Fault faultOf(const QString& value, FaultKind kind, const QStringList& allowed)
{
    return {u"pattern"_s, value, kind, allowed};
}

QStringList names() { return {u"weight"_s, u"unit"_s, u"temperature"_s, u"humidity"_s, u"steady"_s, u"any"_s}; }

double number(const QString& text)
{
    QString plain = text;
    plain.remove(u' ').remove(u'\t').replace(u',', u'.');
    return plain.toDouble(); // it fits numberExpression: nothing else can be here
}

Mass weightOf(double value, const QString& unit)
{
    const QString name = unit.toLower();
    if (name == "kg"_L1)
        return grams(value * 1000);
    if (name == "oz"_L1)
        return ounces(value);
    if (name == "lb"_L1)
        return pounds(value);
    return grams(value);
}

template <class Q>
void keep(std::optional<Q>& kept, Q value, const Range<Q>& allowed, const QString& field, const QString& given,
          const QStringList& limits, Faults& faults)
{
    if (value >= allowed.lowest && value <= allowed.highest)
        kept = value;
    else
        faults.push_back({field, given, FaultKind::OutOfRange, limits});
}

} // namespace

/// From the pattern to a regular expression, part by part.
class LinePattern::Builder {
public:
    explicit Builder(const QString& text) : m_text(text) {}

    Checked<LinePattern> build()
    {
        for (m_at = 0; m_at < m_text.size() && m_faults.empty();) {
            const QChar here = m_text.at(m_at);
            if (here == u'{')
                name();
            else if (here == u'}')
                m_faults.push_back(faultOf(m_text, FaultKind::NotReadable, {u"{weight} {unit}"_s}));
            else if (here.isSpace())
                blanks();
            else
                m_expression += QRegularExpression::escape(QString(m_text.at(m_at++)));
        }
        if (m_faults.empty())
            judge();
        if (!m_faults.empty())
            return tl::unexpected(m_faults);
        m_made.m_text = m_text;
        m_made.m_names = m_seen;
        m_made.m_expression = QRegularExpression(u"\\A"_s + m_expression + u"\\z"_s);
        return m_made;
    }

private:
    void blanks()
    {
        while (m_at < m_text.size() && m_text.at(m_at).isSpace())
            ++m_at;
        m_expression += u"[ \\t]++"_s;
    }

    void name()
    {
        const qsizetype end = m_text.indexOf(u'}', m_at);
        const QString inside = end < 0 ? QString() : m_text.mid(m_at + 1, end - m_at - 1);
        if (end < 0 || inside.contains(u'{')) {
            m_faults.push_back(faultOf(m_text.mid(m_at), FaultKind::NotReadable, {u"{weight} {unit}"_s}));
            return;
        }
        m_at = end + 1;
        const QString name = inside.section(u':', 0, 0);
        const QString detail = inside.section(u':', 1);
        if (!names().contains(name))
            m_faults.push_back(faultOf(name, FaultKind::UnknownKey, names()));
        else if (name != "any"_L1 && m_seen.contains(name))
            m_faults.push_back(faultOf(m_text, FaultKind::Conflicts, {name, inside}));
        else
            take(name, detail);
    }

    void take(const QString& name, const QString& detail)
    {
        m_seen << name;
        if (name == "weight"_L1)
            measured(name, detail, weightUnits().split(u'|'), true, m_made.m_weightUnit);
        else if (name == "temperature"_L1)
            measured(name, detail, {u"C"_s, u"F"_s}, false, m_made.m_temperatureUnit);
        else if (name == "humidity"_L1)
            m_expression += u"(?<humidity>"_s + numberExpression() + u')';
        else if (name == "unit"_L1)
            m_expression += u"(?<unit>(?i:"_s + weightUnits() + u"))"_s;
        else if (name == "steady"_L1)
            steady(detail);
        else
            anything();
    }

    void anything()
    {
        const QChar next = m_at < m_text.size() ? m_text.at(m_at) : QChar(u' ');
        const bool sign = !next.isSpace() && next != u'{' && next != u'}';
        m_expression += u"[^ \\t"_s + (sign ? QRegularExpression::escape(QString(next)) : QString()) + u"]*+"_s;
    }

    void measured(const QString& name, const QString& unit, const QStringList& units, bool mayBeInLine, QString& kept)
    {
        if (!units.contains(unit) && !(unit.isEmpty() && mayBeInLine))
            m_faults.push_back(faultOf(unit, FaultKind::NotOneOf, units));
        kept = unit;
        m_expression += u"(?<"_s + name + u'>' + numberExpression() + u')';
    }

    void steady(const QString& words)
    {
        const QStringList both = words.split(u'|');
        if (both.size() != 2 || both[0].isEmpty() || both[0] == both[1]) {
            m_faults.push_back(faultOf(words, FaultKind::NotReadable, {u"{steady:ST|US}"_s}));
            return;
        }
        m_made.m_steadyWord = both[0];
        m_expression +=
            u"(?<steady>"_s + QRegularExpression::escape(both[0]) + u'|' + QRegularExpression::escape(both[1]) + u')';
    }

    /// What only the whole shows.
    void judge()
    {
        const bool reads =
            m_seen.contains(u"weight"_s) || m_seen.contains(u"temperature"_s) || m_seen.contains(u"humidity"_s);
        if (!reads)
            m_faults.push_back(
                faultOf(m_text, FaultKind::Missing, {u"{weight}"_s, u"{temperature:C}"_s, u"{humidity}"_s}));
        else if (m_seen.contains(u"weight"_s) && m_made.m_weightUnit.isEmpty() && !m_seen.contains(u"unit"_s))
            m_faults.push_back(faultOf(m_text, FaultKind::Missing, {u"{unit}"_s, u"{weight:g}"_s}));
        else if (m_seen.contains(u"unit"_s) && (!m_seen.contains(u"weight"_s) || !m_made.m_weightUnit.isEmpty()))
            m_faults.push_back(faultOf(m_text, FaultKind::Conflicts, {u"{unit}"_s, u"{weight}"_s}));
    }

    QString m_text;
    qsizetype m_at = 0;
    QString m_expression;
    QStringList m_seen;
    Faults m_faults;
    LinePattern m_made;
};

Checked<LinePattern> LinePattern::of(const QString& pattern)
{
    if (pattern.trimmed().isEmpty())
        return tl::unexpected(Faults{faultOf(pattern, FaultKind::Empty, {u"text"_s})});
    if (pattern.size() > longest)
        return tl::unexpected(Faults{faultOf(pattern, FaultKind::TooLong, {QString::number(longest)})});
    const auto plain = [](QChar c) { return c >= u' ' && c <= u'~'; };
    if (!std::all_of(pattern.cbegin(), pattern.cend(), plain)) // {any} stands for what a line has besides
        return tl::unexpected(Faults{faultOf(pattern, FaultKind::NotReadable, {u"{weight} {unit}"_s})});
    return Builder(pattern.trimmed()).build();
}

Checked<LineReading> LinePattern::read(const QByteArray& line) const
{
    const auto match = m_expression.match(QString::fromLatin1(line.trimmed()));
    if (!match.hasMatch())
        return tl::unexpected(Faults{{u"line"_s, QString::fromLatin1(line), FaultKind::NotReadable, {m_text}}});
    const auto part = [&](const char16_t* name) { return match.captured(QStringView(name)); };
    LineReading reading;
    Faults faults;
    if (const QString given = part(u"weight"); !given.isEmpty())
        keep(reading.weight, weightOf(number(given), m_weightUnit.isEmpty() ? part(u"unit") : m_weightUnit),
             {grams(-50'000), grams(50'000)}, u"weight"_s, given, {u"-50"_s, u"50"_s, u"kg"_s}, faults);
    if (const QString given = part(u"temperature"); !given.isEmpty())
        keep(reading.temperature, m_temperatureUnit == "F"_L1 ? fahrenheit(number(given)) : celsius(number(given)),
             {celsius(-40), celsius(85)}, u"temperature"_s, given, {u"-40"_s, u"85"_s, u"°C"_s}, faults);
    if (const QString given = part(u"humidity"); !given.isEmpty())
        keep(reading.humidity, Fraction::ofHundred(number(given)), anyPercent(), u"humidity"_s, given,
             {u"0"_s, u"100"_s, u"%"_s}, faults);
    if (!m_steadyWord.isEmpty())
        reading.steady = part(u"steady") == m_steadyWord;
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return reading;
}

} // namespace strandbench
