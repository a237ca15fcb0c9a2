// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/units.h"

#include <QRegularExpression>

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestText = 40;
/// What typed figures in one unit may miss of a limit that was set in another, as a share of the range.
constexpr double roundingSlack = 1e-12;

/// A unit as it is typed: base = (number - zero) * scale.
struct UnitWord {
    QStringView word;
    double scale;
    double zero = 0.0;
    bool fractions = false; ///< read as a fraction of the unit as well
};

// Scales are exact, NIST SP 811 (2008), appendix B.8. The first of each meaning is the one that is shown.
constexpr UnitWord lengths[] = {
    {u"mm", 1.0},
    {u"cm", 10.0},
    {u"m", 1000.0},
    {u"in", 25.4, 0.0, true},
    {u"\"", 25.4, 0.0, true},
    {u"″", 25.4, 0.0, true},
    {u"ft", 304.8},
    {u"'", 304.8},
    {u"′", 304.8},
};
constexpr UnitWord masses[] = {{u"g", 1.0}, {u"kg", 1000.0}, {u"oz", 28.349523125}, {u"lb", 453.59237}};
constexpr UnitWord temperatures[] = {
    {u"°C", 1.0},
    {u"C", 1.0},
    {u"°F", 1.0 / 1.8, 32.0},
    {u"F", 1.0 / 1.8, 32.0},
};
constexpr UnitWord bare[] = {{u"", 1.0}};
constexpr UnitWord percents[] = {{u"%", 1.0}};
constexpr UnitWord times[] = {{u"min", 60.0}, {u"s", 1.0}, {u"h", 3600.0}};

/// Everything that a reader knows of its quantity, in one base unit (mm, g, °C, %, s).
struct Reader {
    std::span<const UnitWord> units;
    QStringView usual; ///< the unit when none is typed
    double lowest;
    double highest;
    QString example;
};

struct Typed {
    double number = 0.0;
    bool fraction = false;
    QString unit;
};

tl::unexpected<Faults> fault(FaultKind kind, const QString& field, const QString& value, const QStringList& allowed)
{
    return tl::unexpected<Faults>(Faults{Fault{field, value, kind, allowed}});
}

std::optional<Typed> readFraction(const QString& text)
{
    static const QRegularExpression form(u"^(?:(\\d{1,4})[ -])?(\\d{1,3})/(\\d{1,3}) ?([^\\d.,/ +-]*)$"_s);
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const int whole = match.captured(1).toInt();
    const int numerator = match.captured(2).toInt();
    const int denominator = match.captured(3).toInt();
    const bool mixed = !match.captured(1).isEmpty();
    if (denominator == 0 || (mixed && numerator >= denominator))
        return std::nullopt;
    return Typed{whole + static_cast<double>(numerator) / denominator, true, match.captured(4)};
}

std::optional<Typed> readDecimal(const QString& text)
{
    static const QRegularExpression form(u"^([+-]?)(\\d*)(?:[.,](\\d*))? ?([^\\d.,/ +-]*)$"_s);
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch() || (match.captured(2).isEmpty() && match.captured(3).isEmpty()))
        return std::nullopt;
    const QString digits = u"0"_s + match.captured(2) + u'.' + match.captured(3) + u'0';
    const double number = digits.toDouble();
    // Without the test a typed "-0" would come back as a negative zero.
    return Typed{match.captured(1) == u"-"_s && number > 0.0 ? -number : number, false, match.captured(4)};
}

const UnitWord* findUnit(const Reader& reader, const QString& typed)
{
    const QStringView wanted = typed.isEmpty() ? reader.usual : QStringView(typed);
    const auto found = std::find_if(reader.units.begin(), reader.units.end(), [wanted](const UnitWord& each) {
        return wanted.compare(each.word, Qt::CaseInsensitive) == 0;
    });
    return found == reader.units.end() ? nullptr : &*found;
}

/// An end of the range in the unit that was typed, rounded inwards so that it can be typed back.
QString shownLimit(double base, const UnitWord& unit, bool lowest)
{
    constexpr double grain = 1e4;
    const double scaled = (base / unit.scale + unit.zero) * grain;
    const double nearest = std::round(scaled);
    const bool exact = std::abs(scaled - nearest) < 1e-6;
    const double inwards = exact ? nearest : lowest ? std::ceil(scaled) : std::floor(scaled);
    return QString::number(inwards / grain, 'f', QLocale::FloatingPointShortest);
}

Checked<double> inRange(double base, const UnitWord& unit, const Reader& reader, const QString& field,
                        const QString& text)
{
    const double slack = roundingSlack * (reader.highest - reader.lowest);
    if (base < reader.lowest - slack || base > reader.highest + slack)
        return fault(
            FaultKind::OutOfRange, field, text,
            {shownLimit(reader.lowest, unit, true), shownLimit(reader.highest, unit, false), unit.word.toString()});
    return std::clamp(base, reader.lowest, reader.highest);
}

/// White space made plain, the typographic minus made a hyphen.
QString tidied(const QString& text)
{
    QString tidy = text.simplified();
    tidy.replace(QChar(0x2212), u'-');
    return tidy;
}

/// The fault of a text that is not worth parsing; nothing when it is.
std::optional<tl::unexpected<Faults>> unfit(const QString& tidy, const QString& field, const QString& text)
{
    if (tidy.isEmpty())
        return fault(FaultKind::Empty, field, text, {});
    if (tidy.size() > longestText)
        return fault(FaultKind::TooLong, field, text, {QString::number(longestText)});
    return std::nullopt;
}

Checked<double> read(const QString& text, const QString& field, const Reader& reader)
{
    const QString tidy = tidied(text);
    if (const auto bad = unfit(tidy, field, text))
        return *bad;
    std::optional<Typed> typed = readDecimal(tidy);
    if (!typed)
        typed = readFraction(tidy);
    const UnitWord* unit = typed ? findUnit(reader, typed->unit) : nullptr;
    if (unit == nullptr || (typed->fraction && !unit->fractions))
        return fault(FaultKind::NotReadable, field, text, {reader.example});
    return inRange((typed->number - unit->zero) * unit->scale, *unit, reader, field, text);
}

/// Seconds of "mm:ss" or "h:mm:ss"; nothing when the text is neither.
std::optional<double> readClockForm(const QString& tidy)
{
    static const QRegularExpression form(u"^(?:(\\d{1,3}):(?=\\d\\d:))?(\\d{1,5}):(\\d\\d)$"_s);
    const QRegularExpressionMatch match = form.match(tidy);
    if (!match.hasMatch())
        return std::nullopt;
    const bool hours = !match.captured(1).isEmpty();
    const int minutes = match.captured(2).toInt();
    const int seconds = match.captured(3).toInt();
    if (seconds > 59 || (hours && minutes > 59))
        return std::nullopt;
    return match.captured(1).toInt() * 3600.0 + minutes * 60.0 + seconds;
}

bool isMetric(UnitSystem system) { return system == UnitSystem::Metric; }

} // namespace

Checked<double> parseNumber(const QString& text, const QString& field, const Range<double>& allowed)
{
    return read(text, field, {bare, u"", allowed.lowest, allowed.highest, u"2.5"_s});
}

Checked<Length> parseLength(const QString& text, UnitSystem system, const QString& field, const Range<Length>& allowed)
{
    return read(text, field,
                {lengths, isMetric(system) ? u"mm" : u"in", inMillimetres(allowed.lowest),
                 inMillimetres(allowed.highest), isMetric(system) ? u"12.5 mm"_s : u"2 5/16 in"_s})
        .map(millimetres);
}

Checked<Mass> parseMass(const QString& text, UnitSystem system, const QString& field, const Range<Mass>& allowed)
{
    return read(text, field,
                {masses, isMetric(system) ? u"g" : u"oz", inGrams(allowed.lowest), inGrams(allowed.highest),
                 isMetric(system) ? u"120.5 g"_s : u"4.25 oz"_s})
        .map(grams);
}

Checked<Temperature> parseTemperature(const QString& text, UnitSystem system, const QString& field,
                                      const Range<Temperature>& allowed)
{
    return read(text, field,
                {temperatures, isMetric(system) ? u"°C" : u"°F", inCelsius(allowed.lowest), inCelsius(allowed.highest),
                 isMetric(system) ? u"18.5 °C"_s : u"65 °F"_s})
        .map(celsius);
}

Checked<Fraction> parsePercent(const QString& text, const QString& field, const Range<Fraction>& allowed)
{
    return read(text, field, {percents, u"%", allowed.lowest.percent(), allowed.highest.percent(), u"52 %"_s})
        .map(Fraction::ofHundred);
}

Checked<Duration> parseDuration(const QString& text, const QString& field, const Range<Duration>& allowed)
{
    const Reader reader{times, u"min", inSeconds(allowed.lowest), inSeconds(allowed.highest), u"4:30"_s};
    if (const std::optional<double> clock = readClockForm(tidied(text)))
        return inRange(*clock, times[0], reader, field, text).map(seconds);
    return read(text, field, reader).map(seconds);
}

} // namespace strandbench
