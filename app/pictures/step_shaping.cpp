// SPDX-License-Identifier: GPL-3.0-or-later
// Scenes: stripping paint, cutting, cracks, bevelling, backing, dam, keying.
#include "pictures/step_stage.h"

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

void stripPaint(const StepStage& s)
{
    s.panelFromAbove(true);
    QPainterPath bare;
    bare.addRoundedRect(QRectF(42, 16, 116, 68), 24, 24);
    s.piece(bare, s.material());
    s.drawDamage();
    const QRectF damage = s.damageFromAbove().boundingRect().intersected(QRectF(42, 16, 116, 68));
    const double right = damage.right() < 150 ? damage.right() : 130;
    s.bothWays({right + 1, 50}, {157, 50}, Role::Stop);
    s.discSander({52, 26}, 15);
}

void cutToSound(const StepStage& s)
{
    s.panelFromAbove();
    s.drawDamage();
    QPainterPath sound;
    sound.addRoundedRect(s.damageFromAbove().boundingRect().adjusted(-9, -9, 9, 9).intersected(QRectF(14, 12, 172, 76)),
                         12, 12);
    s.outline(sound, Role::Stop, 1.0, true);
    // A blade along the line.
    const QRectF around = sound.boundingRect();
    const QPointF at(std::min(around.right() - 14, 138.0), std::max(around.top(), 24.0));
    QPainterPath blade;
    blade.addPolygon(
        QPolygonF{at, at + QPointF(10, -14), at + QPointF(52, -2), at + QPointF(48, 10), at + QPointF(12, 6)});
    blade.closeSubpath();
    s.fill(blade, Role::Card);
    s.outline(blade, Role::Ink, 0.6);
    QPainterPath handle;
    handle.addPolygon(QPolygonF{at + QPointF(28, -9), at + QPointF(52, -2), at + QPointF(48, 10), at + QPointF(26, 7)});
    handle.closeSubpath();
    s.fill(handle, Role::Ink);
}

struct Cracks {
    QPainterPath lines;
    std::vector<std::pair<QPointF, QPointF>> tips; ///< end of what is seen, and where the hole goes
};

/// Cracks that run from the damage: the crack itself, or three that radiate from a hole or a gouge.
Cracks cracksOf(const StepStage& s)
{
    Cracks cracks;
    const auto run = [&](std::initializer_list<QPointF> points, QPointF drill) {
        auto at = points.begin();
        cracks.lines.moveTo(*at);
        QPointF last = *at;
        for (++at; at != points.end(); ++at) {
            cracks.lines.lineTo(*at);
            last = *at;
        }
        cracks.tips.emplace_back(last, drill);
    };
    if (s.drawing().damage.kind == DamageKind::Crack) {
        cracks.lines = s.damageFromAbove();
        cracks.tips = {{{54, 56}, {36, 60}}, {{140, 46}, {160, 42}}};
        run({{86, 54}, {96, 70}, {112, 76}}, {128, 81});
        return cracks;
    }
    run({{76, 52}, {62, 58}, {46, 55}}, {30, 60});
    run({{126, 48}, {140, 40}, {150, 43}}, {168, 36});
    run({{99, 66}, {106, 74}, {118, 77}}, {136, 82});
    return cracks;
}

void findCracks(const StepStage& s)
{
    s.panelFromAbove();
    const Cracks cracks = cracksOf(s);
    if (s.drawing().damage.kind != DamageKind::Crack)
        s.drawDamage();
    s.outline(cracks.lines, Role::Ink, 0.8);
    // Light from the side, and a glass over a tip, where the crack shows larger.
    s.sign(Pictogram::Magnifier, {130, 16, 58, 58}, Role::Ink);
    for (const double y : {18.0, 30.0, 42.0})
        s.arrow({8, y - 6}, {40, y + 2}, Role::Caution, 1.2);
    for (const auto& tip : cracks.tips) {
        QPainterPath ring;
        ring.addEllipse(tip.first, 6, 6);
        s.outline(ring, Role::Stop, 0.8, true);
    }
}

void stopDrill(const StepStage& s)
{
    s.panelFromAbove();
    const Cracks cracks = cracksOf(s);
    if (s.drawing().damage.kind != DamageKind::Crack)
        s.drawDamage();
    s.outline(cracks.lines, Role::Ink, 1.0);
    for (const auto& [tip, drill] : cracks.tips) {
        s.line(tip, drill, Role::Ink, 0.4, true);
        QPainterPath hole;
        hole.addEllipse(drill, 3.6, 3.6);
        s.fill(hole, Role::Card);
        s.outline(hole, Role::Stop, 0.9);
    }
}

/// The cut and its angle, marked at both edges of this repair's own opening.
void markBevels(const StepStage& s, const QTransform& toStage, bool turned)
{
    const SectionDrawing& drawing = s.drawing();
    const double panel = inMillimetres(drawing.damage.panelThickness);
    const double half = inMillimetres(drawing.drawnOpening()) / 2;
    const double floor = inMillimetres(drawing.floorLength) / 2;
    const double height = inMillimetres(drawing.faceHeight);
    const double up = turned ? panel : 0.0; // the face that is being cut
    const double down = turned ? panel - height : height;
    for (const double side : {-1.0, 1.0}) {
        const QPointF edge = toStage.map(QPointF(side * half, up));
        const QPointF root = toStage.map(QPointF(side * floor, down));
        s.line(edge, root, Role::Action, 1.2);
        if (turned)
            continue; // the angle is shown once, on the upper face
        const double angle = QLineF(edge, root).angle();
        const QRectF circle(edge.x() - 14, edge.y() - 14, 28, 28);
        const double from = side < 0 ? 0.0 : 180.0;
        QPainterPath arc; // from the face down to the cut
        arc.arcMoveTo(circle, from);
        arc.arcTo(circle, from, side < 0 ? angle - 360 : angle - 180);
        s.outline(arc, Role::Action, 0.6);
        s.line(edge, edge + QPointF(side * -18, 0), Role::Action, 0.4, true);
    }
}

void bevelWith(const StepStage& s, bool bothFaces)
{
    const DamageKind kind = s.drawing().damage.kind;
    const StagedSection section = s.staged({10, 44, 180, 50}, s.prepared());
    if (kind != DamageKind::Dent && kind != DamageKind::WeldSeam) { // those are not bevelled
        markBevels(s, section.toStage, false);
        if (bothFaces)
            markBevels(s, section.toStage, true);
    }
    s.discSander({62, section.surface - 24}, 13);
    if (bothFaces)
        s.sign(Pictogram::Turn, {150, 4, 30, 30}, Role::Action);
}

void bevel(const StepStage& s) { bevelWith(s, false); }
void bevelBoth(const StepStage& s) { bevelWith(s, true); }

/// The groove is opened: its two flanks, with a scraper drawn along them, and what comes off.
void openGouge(const StepStage& s)
{
    const StagedSection section = s.staged({10, 50, 180, 44}, s.prepared());
    const double half = inMillimetres(s.drawing().drawnOpening()) / 2;
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(s.drawing().damage.depth)));
    for (const double side : {-1.0, 1.0})
        s.line(section.toStage.map(QPointF(side * half, 0)), root, Role::Action, 1.2);
    const QPointF tip(root.x(), root.y() - 1);
    QPainterPath blade;
    blade.addPolygon(QPolygonF{tip, tip + QPointF(-13, -22), tip + QPointF(13, -22)});
    blade.closeSubpath();
    s.fill(blade, Role::Card);
    s.outline(blade, Role::Ink, 0.7);
    QPainterPath shaft;
    shaft.addRoundedRect(QRectF(tip.x() - 5, 4, 10, tip.y() - 26), 4, 4);
    s.fill(shaft, Role::Ink);
    s.dots({{64, section.surface - 8},
            {72, section.surface - 16},
            {130, section.surface - 10},
            {140, section.surface - 18}},
           1.7, Role::FillerFleck);
    s.bothWays({114, 14}, {150, 14});
}

/// The upper panel alone takes a slight bevel; the measure beside it ends at half of its thickness.
void bevelUpperPanel(const StepStage& s)
{
    const StagedSection section = s.staged({10, 44, 180, 50}, s.prepared());
    const SectionDrawing& drawing = s.drawing();
    const double panel = inMillimetres(drawing.damage.panelThickness);
    const double half = inMillimetres(drawing.drawnOpening()) / 2;
    const QPointF edge = section.toStage.map(QPointF(half, 0));
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(drawing.damage.depth)));
    s.line(edge, root, Role::Action, 1.4);
    const QPointF middle = section.toStage.map(QPointF(half, panel / 2)); // never below this
    s.line({root.x(), middle.y()}, {186, middle.y()}, Role::Stop, 0.8, true);
    s.arrow({172, section.surface - 16}, {172, section.surface}, Role::Stop, 0.7);
    s.arrow({172, std::min(middle.y() + 16, 98.0)}, {172, middle.y()}, Role::Stop, 0.7);
    s.discSander({edge.x() - 22, section.surface - 20}, 13);
}

void abradeBack(const StepStage& s)
{
    SectionProgress progress = s.prepared();
    progress.turned = true;
    const double surface = s.section({10, 56, 180, 38}, progress);
    s.block({18, surface - 23}, 46, u"80"_s);
    s.bothWays({70, surface - 10}, {112, surface - 10});
    s.sign(Pictogram::Turn, {150, 4, 30, 30}, Role::Action);
}

void bondedBacking(const StepStage& s)
{
    s.section({10, 16, 180, 50}, s.prepared());
    const QRectF cloth(30, 70, 140, 9);
    s.piece(cloth, Material::Laminate);
    s.piece(QRectF(24, 80, 152, 9), Material::Laminate);
    s.arrow({40, 98}, {40, 91}, Role::Action, 1.0);
    s.arrow({100, 98}, {100, 91}, Role::Action, 1.0);
    s.arrow({160, 98}, {160, 91}, Role::Action, 1.0);
}

/// The backing goes in through the hole and is drawn up against the back.
void backingThrough(const StepStage& s)
{
    const double surface = s.section({10, 34, 180, 46}, s.prepared());
    s.piece(QRectF(40, 82, 120, 8), Material::Laminate);
    s.line({100, 82}, {100, surface - 26}, Role::Ink, 1.2);
    s.arrow({100, 60}, {100, surface - 30}, Role::Action, 1.4);
}

/// What stands proud is taken down level with the sheets.
void dressWeld(const StepStage& s)
{
    const StagedSection section = s.staged({10, 56, 180, 38}, s.prepared());
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(s.drawing().damage.depth)));
    QPainterPath proud(root - QPointF(14, 0)); // the bead as it was welded
    proud.quadTo(root - QPointF(0, 22), root + QPointF(14, 0));
    proud.closeSubpath();
    s.piece(proud, Material::Weld);
    s.line(root - QPointF(26, 1), root + QPointF(26, -1), Role::Stop, 0.9, true);
    s.discSander({root.x() + 2, root.y() - 26}, 14);
    s.bothWays({132, section.surface - 20}, {172, section.surface - 20});
}

/// Adhesive that was squeezed out is cut away along the seam.
void squeezeOutOff(const StepStage& s)
{
    const StagedSection section = s.staged({10, 52, 180, 42}, s.prepared());
    const double half = inMillimetres(s.drawing().drawnOpening()) / 4;
    const QPointF left = section.toStage.map(QPointF(-half, 0));
    const QPointF right = section.toStage.map(QPointF(half, 0));
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(s.drawing().damage.depth)));
    QPainterPath bead(left); // out of the joint, over both edges
    bead.cubicTo(left + QPointF(2, -22), right + QPointF(-2, -22), right);
    bead.lineTo(root);
    bead.closeSubpath();
    s.piece(bead, Material::Adhesive);
    const double surface = section.surface; // a scraper, flat on the panel
    const double at = std::max(left.x(), 78.0);
    QPainterPath blade;
    blade.addPolygon(QPolygonF{{at - 4, surface - 1}, {at - 44, surface - 13}, {at - 47, surface - 7}});
    blade.closeSubpath();
    s.fill(blade, Role::Ink);
    s.line({at - 45, surface - 10}, {at - 70, surface - 20}, Role::Ink, 2.4);
    s.arrow({at - 50, surface - 30}, {at - 8, surface - 30}, Role::Action, 1.4);
}

void dam(const StepStage& s)
{
    s.section({10, 18, 180, 52}, s.prepared());
    s.piece(QRectF(28, 73, 144, 4), Material::Tape);
    s.arrow({70, 96}, {70, 80}, Role::Action, 1.0);
    s.arrow({130, 96}, {130, 80}, Role::Action, 1.0);
}

void abrade80(const StepStage& s)
{
    const double surface = s.section({10, 54, 180, 40}, s.prepared());
    s.block({28, surface - 26}, 52, u"80"_s);
    s.bothWays({90, surface - 12}, {140, surface - 12});
}

void ownTools(const StepStage& s)
{
    s.sign(Pictogram::OwnTools, {12, 14, 72, 72}, Role::Ink);
    s.piece(QRectF(104, 24, 84, 14), Material::Aluminium);
    s.sign(Pictogram::Tick, {138, 19, 24, 24});
    s.piece(QRectF(104, 66, 84, 12), Material::Steel);
    s.line({116, 84}, {176, 60}, Role::Stop, 1.6);
    s.line({116, 60}, {176, 84}, Role::Stop, 1.6);
}

const std::map<QString, Scene>& scenes()
{
    static const std::map<QString, Scene> all{
        {u"strip_paint"_s, stripPaint},
        {u"cut_to_sound"_s, cutToSound},
        {u"find_cracks"_s, findCracks},
        {u"stop_drill"_s, stopDrill},
        {u"bevel"_s, bevel},
        {u"bevel_both"_s, bevelBoth},
        {u"open_gouge"_s, openGouge},
        {u"bevel_upper_panel"_s, bevelUpperPanel},
        {u"abrade_back"_s, abradeBack},
        {u"backing_behind"_s, bondedBacking},
        {u"dam"_s, dam},
        {u"abrade_80"_s, abrade80},
        {u"backing_through"_s, backingThrough},
        {u"dress_weld"_s, dressWeld},
        {u"squeeze_out_off"_s, squeezeOutOff},
        {u"own_tools"_s, ownTools},
    };
    return all;
}

} // namespace

Scene shapingScene(const QString& code)
{
    const auto found = scenes().find(code);
    return found == scenes().end() ? nullptr : found->second;
}

QStringList shapingCodes()
{
    QStringList codes;
    for (const auto& each : scenes())
        codes << each.first;
    return codes;
}

} // namespace strandbench
