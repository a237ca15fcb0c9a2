// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/air_words.h"

#include "words/table.h"

#include <QtGlobal>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::words {
namespace {

constexpr Line vapours[] = {
    {"styrene", QT_TRANSLATE_NOOP("Air", "Styrene")},
    {"acetone", QT_TRANSLATE_NOOP("Air", "Acetone")},
    {"naphtha", QT_TRANSLATE_NOOP("Air", "Wax remover, as naphtha")},
};

QString say(const char* text, const QStringList& arguments = {}) { return fillIn(inLanguage("Air", text), arguments); }

constexpr double leastShown = 0.1; // ppm: the box knows no better

/// Without its unit; tenths below ten.
QString figure(Fraction level, const Words& in)
{
    const double value = inPartsPerMillion(level);
    return in.number(value, value < 10 ? 1 : 0);
}

} // namespace

QString vapour(Vapour vapour) { return lookUp("Air", vapours, codeOf(vapour)); }

QString limitKind(LimitKind kind)
{
    switch (kind) {
    case LimitKind::TimeWeighted:
        return say(QT_TRANSLATE_NOOP("Air", "mean of 8 hours"));
    case LimitKind::ShortTerm:
        return say(QT_TRANSLATE_NOOP("Air", "mean of 15 minutes"));
    case LimitKind::Ceiling:
        return say(QT_TRANSLATE_NOOP("Air", "at any time"));
    case LimitKind::Peak:
        return say(QT_TRANSLATE_NOOP("Air", "mean of 5 minutes"));
    case LimitKind::LifeOrHealth:
        break;
    }
    return say(QT_TRANSLATE_NOOP("Air", "danger to life at once"));
}

QString ppm(Fraction level, const Words& in)
{
    if (level > Fraction() && inPartsPerMillion(level) < leastShown)
        //: so much of a vapour in the air; %1 is a figure
        return say(QT_TRANSLATE_NOOP("Air", "under %1 ppm"), {in.number(leastShown, 1)});
    return figure(level, in) + QChar(QChar::Nbsp) + u"ppm"_s;
}

QString ppm(const VapourRange& range, const Words& in)
{
    if (figure(range.least, in) == figure(range.most, in) || inPartsPerMillion(range.most) < leastShown)
        return ppm(range.most, in);
    //: from so much to so much of a vapour in the air
    return say(QT_TRANSLATE_NOOP("Air", "%1 to %2"), {figure(range.least, in), ppm(range.most, in)});
}

QString limitLine(const ExposureLimit& limit, const Words& in)
{
    //: a published limit: its name, what it is a mean of, how much
    return say(QT_TRANSLATE_NOOP("Air", "%1, %2: %3"), {limit.name, limitKind(limit.kind), ppm(limit.level, in)});
}

QString besideLine(const LimitBeside& beside, const Words& in)
{
    const QString box = ppm(beside.box, in);
    switch (beside.lies) {
    case BesideIt::Above:
        return say(QT_TRANSLATE_NOOP("Air", "Reckoned %1: above it. Ventilate now."), {box});
    case BesideIt::MayBeAbove:
        return say(QT_TRANSLATE_NOOP("Air", "Reckoned %1: may be above it. Ventilate now."), {box});
    case BesideIt::Below:
        break;
    }
    // Never rounded down.
    const double share = std::ceil(beside.box.most.value() / beside.limit.level.value() * 100 - 1e-9);
    return say(QT_TRANSLATE_NOOP("Air", "Reckoned %1: up to %2 of it"),
               {box, in.percent(Fraction::ofHundred(std::max(0.0, share)))});
}

QString fireLine(const FirePoint& point, const std::optional<Temperature>& air, const Words& in)
{
    if (point.by == FlashBy::Always)
        return say(QT_TRANSLATE_NOOP("Air", "Spray can: it can be lit at any temperature."));
    const QString flash = in.temperature(*point.flash);
    if (point.by == FlashBy::Class)
        return say(QT_TRANSLATE_NOOP("Air", "Flash point below %1 by its class: take it that it can be lit now."),
                   {flash});
    if (!air)
        return say(QT_TRANSLATE_NOOP("Air", "Flash point %1; air not read yet."), {flash});
    if (const auto below = belowFlash(point, *air))
        return say(QT_TRANSLATE_NOOP("Air", "Flash point %1; the air is %2 below it, a warm spot may not be."),
                   {flash, in.temperatureStep(*below)});
    return say(QT_TRANSLATE_NOOP("Air", "Flash point %1: it can be lit now."), {flash});
}

} // namespace strandbench::words
