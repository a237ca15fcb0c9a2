// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/instrument_words.h"

#include <QCoreApplication>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::instruments {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(Instruments)
};

using Is = InstrumentView::Is;
using Why = SerialFault::Why;

QString portHeadline(const SerialFault& fault, const QString& port)
{
    switch (fault.why) {
    case Why::NotThere:
        return Says::tr("Nothing is plugged in at %1.").arg(port);
    case Why::InUse:
        return Says::tr("Another program has %1.").arg(port);
    case Why::NotAllowed:
        return Says::tr("This account may not open %1.").arg(port);
    case Why::Unplugged:
        return Says::tr("The instrument was pulled out.");
    case Why::Refused:
        break;
    }
    return Says::tr("%1 does not open.").arg(port);
}

QString portAdvice(const SerialFault& fault)
{
    switch (fault.why) {
    case Why::NotThere:
    case Why::Unplugged:
        return Says::tr("Plug it in and switch it on: it is taken up by itself.");
    case Why::InUse:
        return Says::tr("Close the other program: the port is taken up by itself.");
    case Why::NotAllowed:
        return Says::tr("Let the system’s keeper put this account in the group of serial ports.");
    case Why::Refused:
        break;
    }
    return fault.says.isEmpty() ? QString() : Says::tr("The system says: %1.").arg(fault.says);
}

} // namespace

QString weight(Mass mass, const Words& words)
{
    const bool us = words.units() == UnitSystem::UsCustomary;
    const double value = us ? inOunces(mass) : inGrams(mass);
    const int decimals = us ? 3 : 2;
    const double least = std::pow(10.0, -decimals) / 2;
    return words.number(std::abs(value) < least ? 0.0 : value, decimals) + QChar(0x00a0) + massUnit(words.units());
}

QString reading(const LineReading& reading, const Words& words)
{
    QStringList parts;
    if (reading.weight)
        parts << weight(*reading.weight, words);
    if (reading.temperature)
        parts << words.fineTemperature(*reading.temperature);
    if (reading.humidity)
        parts << words.percent(*reading.humidity);
    return parts.join(u", "_s);
}

QString headline(const InstrumentView& view, const InstrumentSetting& setting, const Words& words)
{
    switch (view.is) {
    case Is::Off:
        return Says::tr("No instrument is set up.");
    case Is::PatternWrong:
        return setting.pattern.isEmpty() ? Says::tr("No pattern is chosen for its lines.")
                                         : Says::tr("The pattern cannot be used.");
    case Is::Opening:
        return Says::tr("Connected: waiting for its lines.");
    case Is::Failed:
        return portHeadline(view.port, breakable(setting.port));
    case Is::Silent:
        return Says::tr("The instrument says nothing.");
    case Is::Garbled:
        return Says::tr("What comes is no plain text.");
    case Is::NoFit:
        return view.fault && view.fault->kind == FaultKind::OutOfRange ? Says::tr("What it says cannot be.")
                                                                       : Says::tr("Its line does not fit the pattern.");
    case Is::Unsteady:
        return Says::tr("%1, not steady yet").arg(reading(*view.live, words));
    case Is::Steady:
        return Says::tr("%1, steady").arg(reading(*view.steady, words));
    case Is::Stale:
        break;
    }
    return Says::tr("Its lines have stopped.");
}

QString advice(const InstrumentView& view, const Words& words)
{
    switch (view.is) {
    case Is::PatternWrong:
        return view.fault && view.fault->kind != FaultKind::Empty ? words.fault(*view.fault)
                                                                  : Says::tr("Choose one, or write it.");
    case Is::Failed:
        return portAdvice(view.port);
    case Is::Silent:
    case Is::Stale:
        return Says::tr("Look at cable and switch, and set it to send by itself.");
    case Is::Garbled:
        return Says::tr("Try another speed or frame.");
    case Is::NoFit:
        return Says::tr("Choose another pattern, or write one like the line.");
    default:
        return {};
    }
}

bool isTrouble(const InstrumentView& view)
{
    return view.is != Is::Off && view.is != Is::Opening && view.is != Is::Unsteady && view.is != Is::Steady;
}

QString breakable(const QString& text)
{
    QString shown;
    for (const QChar each : text) {
        shown += each;
        if (!each.isLetterOrNumber())
            shown += QChar(0x200b); // a line may end here
    }
    return shown;
}

} // namespace strandbench::instruments
