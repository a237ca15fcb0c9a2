// SPDX-License-Identifier: GPL-3.0-or-later
#include "years/depot.h"

#include <QDate>

using namespace Qt::StringLiterals;

namespace strandbench::years {
namespace {

constexpr qint64 dayMs = 86'400'000;
constexpr int daysOfFiller = 3;
constexpr int daysOfHardener = 21;

QDate firstDay() { return {1990, 1, 1}; }

/// Local time less UTC, seconds: an hour more from April to October.
int offsetOf(qint64 day)
{
    const int month = firstDay().addDays(day).month();
    return (month >= 4 && month <= 10 ? -4 : -5) * 3600;
}

const QStringList& seen()
{
    static const QStringList all{u"pinholes"_s,       u"hairline crack"_s, u"soft spot"_s,    u"old filler"_s,
                                 u"loose fibres"_s,   u"dull edge"_s,      u"deep scratch"_s, u"lifted paint"_s,
                                 u"hollow sound"_s,   u"wet laminate"_s,   u"rust stain"_s,   u"low spot"_s,
                                 u"sticky surface"_s, u"ridge"_s,          u"delamination"_s, u"missing bolt"_s,
                                 u"bent bracket"_s,   u"grey primer"_s,    u"white haze"_s,   u"second impact"_s};
    return all;
}

const QStringList& places()
{
    static const QStringList all{u"at the upper edge"_s,     u"at the lower edge"_s,      u"beside the hinge"_s,
                                 u"near the lamp"_s,         u"behind the trim"_s,        u"around the fastener"_s,
                                 u"along the seam"_s,        u"in the corner"_s,          u"under the moulding"_s,
                                 u"next to the reflector"_s, u"across the whole width"_s, u"by the wheel arch"_s};
    return all;
}

const QStringList& done()
{
    static const QStringList all{u"opened and filled"_s,    u"ground back further"_s, u"dried overnight"_s,
                                 u"showed to supervisor"_s, u"customer informed"_s,   u"photographed"_s,
                                 u"cleaned again"_s,        u"left as it is"_s,       u"warmed with lamp"_s,
                                 u"sanded by hand"_s,       u"waits for parts"_s,     u"mixed once more"_s};
    return all;
}

} // namespace

const QStringList& technicians()
{
    static const QStringList all{u"Ada"_s,  u"Ravi"_s,  u"Ines"_s,  u"Tomas"_s, u"Wanda"_s, u"Kofi"_s,
                                 u"Lena"_s, u"Jorge"_s, u"Maeve"_s, u"Bruno"_s, u"Sunil"_s, u"Petra"_s};
    return all;
}

const QStringList& supervisors()
{
    static const QStringList all{u"Odile"_s, u"Marek"_s};
    return all;
}

const QStringList& panels()
{
    static const QStringList all{u"Skirt panel, left front"_s,
                                 u"Skirt panel, right front"_s,
                                 u"Skirt panel, left rear"_s,
                                 u"Skirt panel, right rear"_s,
                                 u"Wheel arch, left"_s,
                                 u"Wheel arch, right"_s,
                                 u"Bumper corner, left"_s,
                                 u"Bumper corner, right"_s,
                                 u"Luggage door, left"_s,
                                 u"Luggage door, right"_s,
                                 u"Roof cap, front"_s,
                                 u"Roof cap, rear"_s,
                                 u"Front apron"_s,
                                 u"Engine cover"_s,
                                 u"Battery door"_s};
    return all;
}

QString remark(Dice& dice)
{
    const QString what = dice.any(seen());
    const QString where = dice.any(places());
    const QString bus = QString::number(dice.from(3001, 3900));
    return u"%1 %2, bus %3, %4"_s.arg(what, where, bus, dice.any(done()));
}

QString correction(Dice& dice)
{
    const QString bus = QString::number(dice.from(3001, 3900));
    return u"was bus %1, keyed in wrongly; %2"_s.arg(bus, dice.any(done()));
}

QString fillerLot(qint64 day) { return u"F%1"_s.arg(10'001 + day / daysOfFiller); }

QString hardenerLot(qint64 day) { return u"H%1"_s.arg(5'001 + day / daysOfHardener); }

qint64 Calendar::beginsMs(qint64 day)
{
    static const qint64 firstMs = QDate(1970, 1, 1).daysTo(firstDay()) * dayMs;
    return firstMs + day * dayMs - qint64(offsetOf(day)) * 1000;
}

qint64 Calendar::dayOf(qint64 utcMs)
{
    // Nearly: the beginnings of days lie apart by a day, but for the hour of summer.
    qint64 day = (utcMs - beginsMs(0)) / dayMs;
    while (utcMs < beginsMs(day))
        --day;
    while (utcMs >= beginsMs(day + 1))
        ++day;
    return day;
}

Instant Calendar::ofUtc(qint64 utcMs)
{
    const qint64 day = dayOf(utcMs);
    if (day != m_day) {
        m_day = day;
        m_boot = Dice(m_seed * 1'000'003 + quint64(day)).uuid().toString(QUuid::WithoutBraces);
    }
    return {utcMs, utcMs - beginsMs(day), m_boot, offsetOf(day)};
}

Instant Calendar::at(qint64 day, double secondsOfDay) { return ofUtc(beginsMs(day) + qint64(secondsOfDay * 1000)); }

} // namespace strandbench::years
