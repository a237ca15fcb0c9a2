// SPDX-License-Identifier: GPL-3.0-or-later
// Scenes: gear, washing, degreasing, drying, dust, readings.
#include "pictures/signwriter.h"
#include "pictures/step_stage.h"

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

void blueDisc(const StepStage& s, QPointF c)
{
    QPainterPath disc;
    disc.addEllipse(c, 29, 29);
    s.fill(disc, Role::Action);
}

void gearOn(const StepStage& s)
{
    // Blue disc: this must be worn (the mandatory sign's shape and colour in ISO 3864-1).
    s.disc(Pictogram::Gear, {7, 21, 58, 58});
    blueDisc(s, {100, 50});
    QTransform hand;
    hand.translate(100 - 21.5, 50 - 22);
    hand.scale(1.8, 1.8);
    QPainterPath glove = hand.map(flatHand(0.94));
    s.fill(glove, Role::OnAction);
    s.line({91, 62}, {110, 62}, Role::Action, 0.6);
    blueDisc(s, {164, 50});
    QPainterPath mask(QPointF(146, 44));
    mask.cubicTo(154, 40, 160, 34, 164, 34);
    mask.cubicTo(168, 34, 174, 40, 182, 44);
    mask.cubicTo(182, 58, 176, 66, 164, 66);
    mask.cubicTo(152, 66, 146, 58, 146, 44);
    s.fill(mask, Role::OnAction);
    QPainterPath filters;
    filters.addEllipse(QPointF(155, 56), 4.4, 4.4);
    filters.addEllipse(QPointF(173, 56), 4.4, 4.4);
    s.outline(filters, Role::Action, 0.6);
    s.line({146, 45}, {139, 41}, Role::OnAction, 0.7);
    s.line({182, 45}, {189, 41}, Role::OnAction, 0.7);
}

void wash(const StepStage& s)
{
    s.panelFromAbove();
    s.drawDamage();
    QPainterPath keepOff; // water stays off open fibre
    keepOff.addEllipse(QPointF(100, 50), 42, 30);
    s.outline(keepOff, Role::Stop, 0.7, true);
    s.cloth({40, 56}, 22, true);
    s.drops({{22, 14}, {38, 18}, {54, 13}}, 12);
    s.arrow({60, 84}, {20, 84});
    s.arrow({140, 84}, {180, 84});
}

/// Two cloths: one wipes it on, the other takes it off.
void degrease(const StepStage& s)
{
    s.panelFromAbove();
    s.drawDamage();
    s.cloth({34, 50}, 20, true);
    s.drops({{22, 8}, {34, 12}, {46, 8}}, 14);
    s.cloth({168, 50}, 20, false);
    s.arrow({58, 82}, {142, 82});
    s.arrow({58, 20}, {142, 20});
}

/// Open fibre stays dry: around it, and a single drop.
void degreaseLittle(const StepStage& s)
{
    s.panelFromAbove();
    s.drawDamage();
    QPainterPath keepOff;
    keepOff.addEllipse(QPointF(100, 50), 42, 30);
    s.outline(keepOff, Role::Stop, 0.7, true);
    s.cloth({30, 52}, 18, true);
    s.drops({{30, 16}}, 10);
    s.cloth({170, 52}, 18, false);
    s.arrow({56, 88}, {144, 88});
}

/// Once across, the dry cloth right behind the wet one.
void wipeMetal(const StepStage& s)
{
    s.panelFromAbove();
    s.drawDamage();
    s.cloth({92, 50}, 20, true);
    s.cloth({42, 50}, 20, false);
    s.arrow({118, 50}, {188, 50}, Role::Action, 1.6);
}

void heatAbove(const StepStage& s) { s.sign(Pictogram::Lamp, {78, 2, 44, 44}); }

void dry(const StepStage& s)
{
    const double surface = s.section({10, 60, 180, 34}, s.asFound());
    heatAbove(s);
    s.drops({{34, surface - 18}, {154, surface - 18}}, 12);
    s.arrow({40, surface - 22}, {40, 14});
    s.arrow({160, surface - 22}, {160, 14});
}

void dustOff(const StepStage& s)
{
    s.panelFromAbove();
    s.drawDamage();
    QPainterPath nozzle;
    nozzle.addPolygon(QPolygonF{{40, 26}, {52, 62}, {26, 82}, {12, 46}});
    nozzle.closeSubpath();
    s.fill(nozzle, Role::Ink);
    s.line({20, 62}, {4, 72}, Role::Ink, 3.6);
    s.dots({{62, 40}, {70, 56}, {78, 34}, {86, 70}, {96, 26}, {108, 76}, {120, 28}, {134, 66}, {146, 40}}, 1.7,
           Role::FillerFleck);
    s.arrow({76, 48}, {58, 48});
    s.arrow({90, 60}, {60, 60});
}

void flashOff(const StepStage& s)
{
    const double surface = s.section({10, 60, 180, 34}, s.prepared());
    for (const double x : {40.0, 70.0, 130.0, 160.0}) {
        QPainterPath vapour(QPointF(x, surface - 5));
        vapour.cubicTo(x - 9, surface - 18, x + 9, surface - 28, x, surface - 40);
        s.outline(vapour, Role::Action, 0.9);
    }
    s.sign(Pictogram::CureClock, {82, 6, 36, 36});
}

void readPanel(const StepStage& s)
{
    const double surface = s.section({10, 66, 180, 28}, s.prepared());
    s.sign(Pictogram::Thermometer, {20, surface - 58, 58, 58});
    s.fill(dropAt({128, 8}, 30), Role::Action);
    s.outline(dropAt({128, 8}, 30), Role::Ink, 0.4);
    // The margin: panel above dew point.
    s.line({84, 23}, {150, 23}, Role::Ink, 0.5, true);
    s.line({84, surface - 2}, {176, surface - 2}, Role::Ink, 0.5, true);
    s.bothWays({164, 23}, {164, surface - 3});
}

const std::map<QString, Scene>& scenes()
{
    static const std::map<QString, Scene> all{
        {u"gear_on"_s, gearOn},       {u"wash"_s, wash},
        {u"degrease"_s, degrease},    {u"degrease_little"_s, degreaseLittle},
        {u"wipe_metal"_s, wipeMetal}, {u"dry"_s, dry},
        {u"dust_off"_s, dustOff},     {u"flash_off"_s, flashOff},
        {u"read_panel"_s, readPanel},
    };
    return all;
}

} // namespace

Scene cleaningScene(const QString& code)
{
    const auto found = scenes().find(code);
    return found == scenes().end() ? nullptr : found->second;
}

QStringList cleaningCodes()
{
    QStringList codes;
    for (const auto& each : scenes())
        codes << each.first;
    return codes;
}

} // namespace strandbench
