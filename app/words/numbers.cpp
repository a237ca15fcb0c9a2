// SPDX-License-Identifier: GPL-3.0-or-later
// Figures with their unit: core/quantity prints, this hands over units and number format.
#include "words/words.h"

#include "words/names.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {

QString Words::length(Length value) const { return printLength(value, m_units, m_locale).joined(); }

QString Words::fineLength(Length value) const { return printFineLength(value, m_units, m_locale).joined(); }

QString Words::thickness(Length value) const { return printThickness(value, m_units, m_locale).joined(); }

QString Words::lengthPair(Length length, Length width) const
{
    return printLength(length, m_units, m_locale).figure + u" × "_s + printLength(width, m_units, m_locale).joined();
}

QString Words::mass(Mass value) const { return printMass(value, m_units, m_locale).joined(); }
QString Words::hardener(Mass value) const { return printHardener(value, m_units, m_locale).joined(); }
QString Words::volume(Volume value) const { return printVolume(value, m_units, m_locale).joined(); }

QString Words::temperature(Temperature value) const { return printTemperature(value, m_units, m_locale).joined(); }

QString Words::fineTemperature(Temperature value) const
{
    return printFineTemperature(value, m_units, m_locale).joined();
}

QString Words::temperatureStep(TemperatureStep value) const
{
    return printTemperatureStep(value, m_units, m_locale).joined();
}

QString Words::percent(Fraction value) const { return printPercent(value, m_locale).joined(); }
QString Words::duration(Duration value) const { return printDuration(value, DurationStyle::MinutesOn); }

QString Words::longDuration(Duration value) const
{
    const auto minutes = static_cast<long long>(std::llround(std::max(0.0, inMinutes(value))));
    if (minutes < 60)
        return QString::number(minutes) + QChar(0x00a0) + u"min"_s;
    const QString hours = QString::number(minutes / 60) + QChar(0x00a0) + u'h';
    return minutes % 60 == 0 ? hours : hours + u' ' + QString::number(minutes % 60) + QChar(0x00a0) + u"min"_s;
}

QString Words::age(Duration value) const
{
    return longDuration(value < minutes(60) ? minutes(std::floor(inMinutes(value)))
                                            : minutes(60 * std::floor(inMinutes(value) / 60)));
}

QString Words::clockTime(const Instant& at, Duration later) const
{
    constexpr qint64 minutesOfDay = 24 * 60;
    const qint64 ms = at.utcMs + at.utcOffsetSeconds * 1000LL + std::llround(inSeconds(later) * 1000.0);
    const qint64 minutes = ((ms / 60000) % minutesOfDay + minutesOfDay) % minutesOfDay;
    return u"%1:%2"_s.arg(minutes / 60, 2, 10, QChar(u'0')).arg(minutes % 60, 2, 10, QChar(u'0'));
}

QString Words::number(double value, int decimals) const { return printNumber(value, decimals, m_locale); }

namespace {

/// An argument inside a sentence.
class ArgumentText {
public:
    explicit ArgumentText(const Words& words) : m_words(words) {}

    QString operator()(Length value) const
    {
        // A sixteenth is too coarse for a drill or a panel's thickness.
        const bool fine = m_words.units() == UnitSystem::UsCustomary && value < millimetres(10);
        return fine ? m_words.fineLength(value) : m_words.length(value);
    }
    QString operator()(Mass value) const { return m_words.mass(value); }
    QString operator()(Volume value) const { return m_words.volume(value); }
    QString operator()(Duration value) const
    {
        return value < minutes(30) ? m_words.duration(value) : m_words.longDuration(value);
    }
    // Beside a limit that it may miss by little.
    QString operator()(Temperature value) const { return m_words.fineTemperature(value); }
    QString operator()(TemperatureStep value) const { return m_words.temperatureStep(value); }
    QString operator()(Fraction value) const { return m_words.percent(value); }
    QString operator()(Count value) const { return QString::number(value.value); }
    QString operator()(const QString& code) const { return words::nameOfAnyCode(code); }

private:
    const Words& m_words;
};

} // namespace

QStringList Words::arguments(const std::vector<Argument>& arguments) const
{
    QStringList texts;
    for (const Argument& each : arguments)
        texts << std::visit(ArgumentText(*this), each);
    return texts;
}

} // namespace strandbench
