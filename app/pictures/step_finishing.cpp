// SPDX-License-Identifier: GPL-3.0-or-later
// Scenes of finishing: guide coat, the grits, pinholes, waiting before primer.
#include "pictures/step_stage.h"

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The filled repair from above: filler under a skim, feathered into the panel.
void filledFromAbove(const StepStage& s)
{
    s.panelFromAbove();
    QPainterPath skim;
    if (s.drawing().damage.kind == DamageKind::WeldSeam || s.drawing().damage.kind == DamageKind::BondSeam)
        skim.addRect(QRectF(4, 30, 192, 40));
    else
        skim.addEllipse(QPointF(100, 50), 58, 33);
    s.piece(skim, Material::Finish, 0.25);
}

void guideCoat(const StepStage& s)
{
    filledFromAbove(s);
    s.dots(StepStage::strewn({46, 18, 110, 66}, 70), 1.2, Role::Ink);
    QPainterPath can;
    can.addRoundedRect(QRectF(10, 44, 20, 44), 3, 3);
    can.addRect(QRectF(15, 36, 10, 8));
    s.fill(can, Role::Card);
    s.outline(can, Role::Ink, 0.6);
    for (const double dy : {-9.0, 0.0, 9.0})
        s.line({28, 39}, {44, 39 + dy}, Role::Ink, 0.5, true);
}

void sandWith(const StepStage& s, const QString& grit)
{
    const double surface = s.section({10, 54, 180, 40}, s.finished());
    s.block({64, surface - 28}, 56, grit);
    s.bothWays({16, surface - 12}, {58, surface - 12});
    s.bothWays({126, surface - 12}, {184, surface - 12});
}

void sand180(const StepStage& s) { sandWith(s, u"180"_s); }
void sand320(const StepStage& s) { sandWith(s, u"320"_s); }

void blowOff(const StepStage& s)
{
    filledFromAbove(s);
    s.sign(Pictogram::AirGun, {134, 28, 54, 54}, Role::Ink);
    s.dots({{24, 30}, {34, 52}, {20, 66}, {46, 40}, {40, 72}, {58, 26}, {62, 60}}, 1.8, Role::FillerFleck);
    s.arrow({126, 30}, {74, 30});
    s.arrow({126, 46}, {70, 50});
}

void inspect(const StepStage& s)
{
    const double surface = s.section({10, 62, 180, 32}, s.finished());
    QPainterPath lamp;
    lamp.addPolygon(QPolygonF{{8, surface - 34}, {26, surface - 44}, {34, surface - 30}, {16, surface - 20}});
    lamp.closeSubpath();
    s.fill(lamp, Role::Ink);
    QPainterPath beam; // nearly along the surface, so that every low spot throws a shadow
    beam.addPolygon(QPolygonF{{34, surface - 34}, {186, surface - 8}, {186, surface - 1}, {26, surface - 22}});
    beam.closeSubpath();
    s.fill(beam, Role::Caution, 0.75);
    s.outline(beam, Role::Ink, 0.25);
    s.sign(Pictogram::Inspect, {128, 2, 44, 44});
}

void cureBeforePrimer(const StepStage& s)
{
    s.section({10, 62, 180, 32}, s.finished());
    s.sign(Pictogram::CureClock, {30, 8, 46, 46});
    s.sign(Pictogram::Thermometer, {86, 10, 42, 42});
    s.sign(Pictogram::HandsOff, {138, 10, 42, 42});
}

const std::map<QString, Scene>& scenes()
{
    static const std::map<QString, Scene> all{
        {u"guide_coat"_s, guideCoat},    {u"sand_180"_s, sand180}, {u"sand_320"_s, sand320},
        {u"dust_off_finish"_s, blowOff}, {u"inspect"_s, inspect},  {u"cure_before_primer"_s, cureBeforePrimer},
    };
    return all;
}

} // namespace

Scene finishingScene(const QString& code)
{
    const auto found = scenes().find(code);
    return found == scenes().end() ? nullptr : found->second;
}

QStringList finishingCodes()
{
    QStringList codes;
    for (const auto& each : scenes())
        codes << each.first;
    return codes;
}

} // namespace strandbench
