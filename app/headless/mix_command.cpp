// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench mix: bead and both masses for a puddle, or puddle and bead for a mass.
#include "exchange/plan_json.h"
#include "exchange/sheets.h"
#include "headless/number_option.h"
#include "mix/mix.h"
#include "plan/assumptions.h"

#include <QJsonArray>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

/// The sheet named, by its id or by its filler class; the mixed-strand demo sheet when none is named.
const ProductSheet* sheetNamed(const Arguments& arguments, Faults& faults)
{
    const Catalogue& catalogue = demoCatalogue();
    const QString name = arguments.options.value(u"sheet"_s, codeOf(FillerClass::MixedStrand));
    const ProductSheet* sheet = catalogue.byId(name);
    if (const auto filler = fromCode<FillerClass>(name); !sheet && filler)
        sheet = catalogue.byClass(*filler);
    if (!sheet) {
        QStringList ids;
        for (const ProductSheet& each : catalogue.sheets())
            ids << each.id;
        faults.push_back({u"--sheet"_s, name, FaultKind::NotFound, ids});
    }
    return sheet;
}

/// Exactly one of the two sizes must be given.
void judgeSizes(const Arguments& arguments, Faults& faults)
{
    const QString puddle = u"puddle-mm"_s;
    const QString filler = u"filler-g"_s;
    const bool byPuddle = arguments.options.contains(puddle);
    const bool byFiller = arguments.options.contains(filler);
    if (byPuddle && byFiller)
        faults.push_back({u"--puddle-mm"_s,
                          arguments.options.value(puddle),
                          FaultKind::Conflicts,
                          {u"--filler-g"_s, arguments.options.value(filler)}});
    if (!byPuddle && !byFiller)
        faults.push_back({u"--puddle-mm | --filler-g"_s, {}, FaultKind::Missing, {u"number"_s}});
}

Outcome runMix(const Arguments& arguments, const Words& words)
{
    Faults faults;
    judgeSizes(arguments, faults);
    const auto puddle = numberOption(arguments, u"puddle-mm"_s, {5, 500, u"mm"_s}, faults);
    const auto filler = numberOption(arguments, u"filler-g"_s, {0.1, 20000, u"g"_s}, faults);
    const ProductSheet* sheet = sheetNamed(arguments, faults);
    if (!faults.empty())
        return refused(faults, words);

    const Mix mix = puddle ? mixForPuddle(millimetres(*puddle), *sheet) : mixForFiller(grams(*filler), *sheet);
    return {Status::Done,
            QJsonObject{{u"puddle_mm"_s, tidy(inMillimetres(mix.puddle))},
                        {u"puddle_height_mm"_s, tidy(inMillimetres(mix.puddleHeight))},
                        {u"bead_mm"_s, tidy(inMillimetres(mix.bead))},
                        {u"filler_g"_s, tidy(inGrams(mix.filler))},
                        {u"hardener_g"_s, tidy(inGrams(mix.hardener))},
                        {u"hardener_percent"_s, tidy(mix.hardenerShare.percent())},
                        {u"advice"_s, reasonsToJson(mixAdvice(mix, *sheet, Assumptions{}.board), words)}},
            {}};
}

} // namespace

Command mixCommand()
{
    return {
        "mix",
        QT_TRANSLATE_NOOP("Headless", "Bead and both masses for a puddle, or puddle and bead for a mass."),
        false,
        {{"puddle-mm", "D", QT_TRANSLATE_NOOP("Headless", "The puddle across, 5 to 500 mm.")},
         {"filler-g", "M", QT_TRANSLATE_NOOP("Headless", "The mass of filler instead, 0.1 to 20000 g.")},
         {"sheet", "ID", QT_TRANSLATE_NOOP("Headless", "The product sheet, by id or class; otherwise mixed strand.")}},
        runMix};
}

} // namespace strandbench::headless
