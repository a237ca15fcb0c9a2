// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/lot_words.h"

#include "words/event_words.h"
#include "words/table.h"
#include "words/words.h"

#include <QCoreApplication>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line reasons[] = {
    {"lots_mixed_up", QT_TRANSLATE_NOOP("Lots", "Lots were mixed up")},
    {"told_wrong", QT_TRANSLATE_NOOP("Lots", "Gels were told too late or too early")},
    {"hardener_off", QT_TRANSLATE_NOOP("Lots", "Hardener was laid wrong")},
    {"kept_wrong", QT_TRANSLATE_NOOP("Lots", "The tube has been too hot or too cold")},
};

QString say(const char* text, const QStringList& arguments = {})
{
    return words::fillIn(words::inLanguage("Lots", text), arguments);
}

/// Whole per cent faster; below 0: slower. Its times are shorter by 1 / (1 + that).
int percentFaster(LogRate rate) { return static_cast<int>(std::lround((rate.multiplier() - 1) * 100)); }

/// "8 % faster"
QString speedText(LogRate rate, const Words& words)
{
    const int percent = percentFaster(rate);
    const QString share = words.percent(Fraction::ofHundred(std::abs(percent)));
    if (percent == 0)
        return say(QT_TRANSLATE_NOOP("Lots", "as the sheet says"));
    return percent > 0 ? say(QT_TRANSLATE_NOOP("Lots", "%1 faster"), {share})
                       : say(QT_TRANSLATE_NOOP("Lots", "%1 slower"), {share});
}

} // namespace

QString rateText(LogRate rate, const Words& words)
{
    const int percent = percentFaster(rate);
    const QString share = words.percent(Fraction::ofHundred(std::abs(percent)));
    if (percent == 0)
        return say(QT_TRANSLATE_NOOP("Lots", "cures as its sheet says"));
    return percent > 0 ? say(QT_TRANSLATE_NOOP("Lots", "cures %1 faster than its sheet"), {share})
                       : say(QT_TRANSLATE_NOOP("Lots", "cures %1 slower than its sheet"), {share});
}

QString rateRangeText(const LogRateRange& range, const Words& words)
{
    //: of how fast a batch cures: "6 % slower to 23 % faster"
    return say(QT_TRANSLATE_NOOP("Lots", "%1 to %2"), {speedText(range.low, words), speedText(range.high, words)});
}

QString lessonText(BatchLesson lesson)
{
    switch (lesson) {
    case BatchLesson::Silent:
        return say(QT_TRANSLATE_NOOP("Lots", "no gel told: teaches nothing"));
    case BatchLesson::Counted:
        return say(QT_TRANSLATE_NOOP("Lots", "counts"));
    case BatchLesson::Bound:
        return say(QT_TRANSLATE_NOOP("Lots", "counts: cured at least so fast"));
    case BatchLesson::Held:
        return say(QT_TRANSLATE_NOOP("Lots", "held: too far off, three in a row would count"));
    case BatchLesson::Before:
        return say(QT_TRANSLATE_NOOP("Lots", "no longer counts: the lot proved to be different"));
    }
    Q_UNREACHABLE();
}

QString batchOfLotName(const BatchOfLot& batch, const Words& words)
{
    if (batch.isPat())
        return say(QT_TRANSLATE_NOOP("Lots", "Test pat"));
    const QString name = batchName(batch.batch);
    return batch.job.isEmpty() ? name : words.jobLabel(batch.job) + u", "_s + name;
}

QString batchOfLotTold(const BatchOfLot& batch, const Words& words)
{
    QStringList told;
    const auto add = [&](const char* text, const std::optional<Instant>& at, Duration bySheet) {
        if (at)
            told << say(text, {words.duration(elapsed(batch.hardenerIn, *at)), words.duration(bySheet)});
    };
    add(QT_TRANSLATE_NOOP("Lots", "board set after %1, by the sheet %2"), batch.boardGelled, batch.predicted.boardGel);
    add(QT_TRANSLATE_NOOP("Lots", "panel set after %1, by the sheet %2"), batch.panelGelled, batch.predicted.gel);
    if (told.isEmpty())
        add(QT_TRANSLATE_NOOP("Lots", "sanded from %1, by the sheet %2"), batch.sands, batch.predicted.sand);
    return told.join(u"; "_s);
}

QString forgetReasonText(const QString& code) { return words::lookUp("Lots", reasons, code); }

} // namespace strandbench
