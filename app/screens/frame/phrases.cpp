// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/phrases.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench::phrases {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(Phrases)
};

} // namespace

QString massPair(const Mix& mix, const Words& words)
{
    return words.mass(mix.filler) + u" + "_s + words.hardener(mix.hardener);
}

QString beadBand(const Mix& mix, const ProductSheet& sheet, const Words& words)
{
    const double nominal = sheet.hardenerNominal.value();
    const Length low = mix.bead * (sheet.hardenerLow.value() / nominal);
    const Length high = mix.bead * (sheet.hardenerHigh.value() / nominal);
    return Says::tr("%1–%2 is fine")
        .arg(printLength(low, words.units(), words.locale()).figure,
             printLength(high, words.units(), words.locale()).figure);
}

QString batchOf(int batch, int all) { return Says::tr("batch %1 of %2").arg(batch).arg(all); }

QString stepOf(int step, int all) { return Says::tr("step %1 of %2").arg(step).arg(all); }

QString source(int batches, int otherLots)
{
    if (batches > 0)
        return Says::tr("from %n batch(es) of this lot", nullptr, batches);
    if (otherLots > 0)
        return Says::tr("from %n other lot(s) of this product", nullptr, otherLots);
    return Says::tr("from the sheet");
}

QString minuteTick(int minute) { return Says::tr("%1 min").arg(minute); }

QString moreMixes(int count) { return Says::tr("%n more mix(es) running", nullptr, count); }

QString noReading() { return Says::tr("air not read yet"); }

QStringList readingLines(const Reading& reading, TemperatureStep margin, Duration age, const Instant& now,
                         const Words& words)
{
    return {Says::tr("air %1, %2").arg(words.temperature(reading.air), words.percent(reading.humidity)),
            Says::tr("panel %1").arg(words.temperature(reading.panel)),
            Says::tr("%1 over dew point").arg(words.temperatureStep(margin)),
            Says::tr("%1 ago · %2").arg(words.age(age), words.clockTime(now))};
}

} // namespace strandbench::phrases
