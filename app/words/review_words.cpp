// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/review_words.h"

#include "words/event_words.h"
#include "words/notes.h"
#include "words/stock_words.h"
#include "words/table.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line standings[] = {
    {"at_work", QT_TRANSLATE_NOOP("Review", "at work")},
    {"to_look_through", QT_TRANSLATE_NOOP("Review", "to sign off or return")},
    {"signed_off", QT_TRANSLATE_NOOP("Review", "signed off")},
    {"returned", QT_TRANSLATE_NOOP("Review", "returned")},
};

constexpr Line gaps[] = {
    {"substrate_not_identified", QT_TRANSLATE_NOOP("Review", "What the panel is made of was not found out.")},
    {"substrate_proof_lacking", QT_TRANSLATE_NOOP("Review", "Not told by what the substrate was found out.")},
    //: %1 is a moment: "as found"
    {"photo_lacking", QT_TRANSLATE_NOOP("Review", "No photo: %1.")},
    {"filler_lot_lacking", QT_TRANSLATE_NOOP("Review", "Lot of the filler not told.")},
    {"hardener_lot_lacking", QT_TRANSLATE_NOOP("Review", "Lot of the hardener not told.")},
    {"reading_lacking", QT_TRANSLATE_NOOP("Review", "No reading of air and panel before the first hardener.")},
    {"reading_keyed_in", QT_TRANSLATE_NOOP("Review", "Air and humidity were keyed in, not read by an instrument.")},
    {"hardener_not_weighed", QT_TRANSLATE_NOOP("Review", "Filler and hardener were not weighed.")},
    {"edges_not_told", QT_TRANSLATE_NOOP("Review", "Not told when the edges were clear.")},
    {"sands_not_told", QT_TRANSLATE_NOOP("Review", "Nail and paper test not told.")},
    //: %1 is a number
    {"tests_lacking", QT_TRANSLATE_NOOP("Review", "Tests of the hand-over not passed: %1.")},
    //: %1 is a number
    {"person_lacking", QT_TRANSLATE_NOOP("Review", "Acts without a name: %1.")},
    //: %1 is a stop: "Damp"
    {"override_nameless", QT_TRANSLATE_NOOP("Review", "Not told who allowed: %1.")},
};

constexpr Line spans[] = {
    {"assess", QT_TRANSLATE_NOOP("Review", "assessing")}, {"prepare", QT_TRANSLATE_NOOP("Review", "preparing")},
    {"lay", QT_TRANSLATE_NOOP("Review", "laying")},       {"wait", QT_TRANSLATE_NOOP("Review", "curing")},
    {"sand", QT_TRANSLATE_NOOP("Review", "sanding")},     {"turn", QT_TRANSLATE_NOOP("Review", "turning")},
    {"finish", QT_TRANSLATE_NOOP("Review", "finishing")}, {"parked", QT_TRANSLATE_NOOP("Review", "parked")},
};

constexpr Line narrowings[] = {
    {"nothing", QT_TRANSLATE_NOOP("Review", "All repairs")},
    {"bench", QT_TRANSLATE_NOOP("Review", "Bench")},
    {"person", QT_TRANSLATE_NOOP("Review", "Person")},
    {"product", QT_TRANSLATE_NOOP("Review", "Product")},
    {"lot", QT_TRANSLATE_NOOP("Review", "Lot")},
    {"substrate", QT_TRANSLATE_NOOP("Review", "Substrate")},
};

QString argumentText(RecordGap gap, const Argument& argument, const Words& words)
{
    if (const auto* count = std::get_if<Count>(&argument))
        return QString::number(count->value);
    const QString code = std::get<QString>(argument);
    if (const auto moment = fromCode<PhotoMoment>(code); moment && gap == RecordGap::PhotoLacking)
        return photoMomentInList(*moment);
    return words.stopHeadline(code);
}

} // namespace

QString standingText(Standing standing) { return words::lookUp("Review", standings, codeOf(standing)); }

QString lackingText(const Lacking& lacking, const Words& words)
{
    QStringList arguments;
    for (const Argument& each : lacking.arguments)
        arguments << argumentText(lacking.gap, each, words);
    const QString text = words::fillIn(words::lookUp("Review", gaps, codeOf(lacking.gap)), arguments);
    return lacking.batch ? batchName(*lacking.batch) + u": "_s + text : text;
}

QString spanName(SpanKind kind) { return words::lookUp("Review", spans, codeOf(kind)); }
QString narrowName(NarrowBy by) { return words::lookUp("Review", narrowings, codeOf(by)); }

QString narrowValue(const Narrowing& narrowing, const Catalogue& catalogue, const QString& ownBench, const Words& words)
{
    const QString& value = narrowing.value;
    if (narrowing.by == NarrowBy::Bench)
        return value == ownBench ? words::inLanguage("Review", QT_TRANSLATE_NOOP("Review", "This bench"))
                                 : words::fillIn(words::inLanguage("Review", QT_TRANSLATE_NOOP("Review", "Bench %1")),
                                                 {value.left(8)});
    if (value.isEmpty())
        return personText({}); // "not told"
    if (narrowing.by == NarrowBy::Product)
        return stockProductName(value, catalogue);
    if (narrowing.by == NarrowBy::Substrate)
        return Words::title(words.substrate(fromCode<Substrate>(value).value_or(Substrate::Unknown)));
    return value;
}

} // namespace strandbench
