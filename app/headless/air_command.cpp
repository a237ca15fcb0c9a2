// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench air: dew point, margin, and whether filling may start.
#include "air/gate.h"
#include "exchange/plan_json.h"
#include "headless/number_option.h"

#include <QJsonArray>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

Outcome runAir(const Arguments& arguments, const Words& words)
{
    Faults faults;
    const auto air = requiredNumber(arguments, u"temperature-c"_s, {-30, 60, u"°C"_s}, faults);
    const auto humidity = requiredNumber(arguments, u"humidity-percent"_s, {0, 100, u"%"_s, true}, faults);
    const auto panel = requiredNumber(arguments, u"panel-c"_s, {-30, 100, u"°C"_s}, faults);
    if (!faults.empty())
        return refused(faults, words);

    const AirVerdict verdict = judgeAir({celsius(*air), celsius(*panel), Fraction::ofHundred(*humidity)});
    return {Status::Done,
            QJsonObject{{u"dew_point_c"_s, tidy(inCelsius(verdict.dewPoint))},
                        {u"margin_k"_s, tidy(inKelvinStep(verdict.margin))},
                        {u"may_fill"_s, verdict.mayFill},
                        {u"reasons"_s, reasonsToJson(verdict.stops, words)}},
            {}};
}

} // namespace

Command airCommand()
{
    return {"air",
            QT_TRANSLATE_NOOP("Headless", "Dew point, margin, and whether filling may start."),
            false,
            {{"temperature-c", "T", QT_TRANSLATE_NOOP("Headless", "Air temperature, −30 to 60 °C."), true},
             {"humidity-percent", "H", QT_TRANSLATE_NOOP("Headless", "Relative humidity, above 0 to 100 %."), true},
             {"panel-c", "P", QT_TRANSLATE_NOOP("Headless", "Panel temperature, −30 to 100 °C."), true}},
            runAir};
}

} // namespace strandbench::headless
