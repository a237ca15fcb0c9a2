// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/air/air_screen.h"

#include "air/gate.h"
#include "screens/frame/choice_screen.h"
#include "screens/frame/phrases.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(AirScreen)
};

} // namespace

QString airContext(const Surroundings& around)
{
    const auto newest = around.bench.newestReading();
    if (!newest)
        return phrases::noReading();
    const AirVerdict air = judgeAir(newest->reading, around.bench.assumptions().decision.filling);
    const Instant now = around.bench.clock().now();
    QStringList lines = phrases::readingLines(newest->reading, air.margin, elapsed(newest->at, now), now, around.words);
    lines.removeLast(); // its age stands in the ribbon, and goes on there
    return lines.join(u" · "_s);
}

Screen* makeAirScreen(const Surroundings& around, const AirWays& ways, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_air"_s;
    spec.context = airContext(around);
    spec.sentence = Says::tr("What about the air?");
    spec.ofARepair = false;
    const auto add = [&](const QString& name, const QString& title, const QString& second,
                         const std::function<void()>& tapped) {
        spec.tiles.push_back({name, title, second, {}, false, false, tapped});
    };
    add(u"air_dew"_s, Says::tr("Dew"), Says::tr("how far the panel was above its dew point, day by day"), ways.dew);
    add(u"air_vapour"_s, Says::tr("Vapour"), Says::tr("styrene and solvents in the room, beside published limits"),
        ways.vapour);
    add(u"air_fire"_s, Says::tr("Fire"), Says::tr("flash points, and what can light them"), ways.fire);
    return new ChoiceScreen(around, std::move(spec), parent);
}

} // namespace strandbench
