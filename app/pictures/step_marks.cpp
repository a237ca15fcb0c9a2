// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_marks.h"

#include <algorithm>

namespace strandbench::marks {
namespace {

// Where the tool touches in the drawing of each act, in the stage's units.
constexpr QPointF atBevel(72, 54);      // the disc's edge
constexpr QPointF atWeld(100, 54);      // the disc's lowest point
constexpr QPointF atSqueezeOut(78, 54); // the blade's edge
constexpr QPointF atGouge(100, 84);     // the scraper's tip
constexpr QPointF atTip(100, 50);       // the drill's point
constexpr QPointF atCut(138, 24);       // the blade's point

constexpr int bevelFrames = 4;

void around(const StepStage& stage, const QPointF& centre, double radius, Role role, bool dashed)
{
    QPainterPath ring;
    ring.addEllipse(centre, radius, radius);
    stage.outline(ring, role, 0.8, dashed);
}

struct Cracks {
    QPainterPath lines;
    std::vector<std::pair<QPointF, QPointF>> tips; ///< end of what is seen, and where the hole goes
};

/// Cracks that run from the damage: the crack itself, or three that radiate from a hole or a gouge.
Cracks cracksOf(const StepStage& stage)
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
    if (stage.drawing().damage.kind == DamageKind::Crack) {
        cracks.lines = stage.damageFromAbove();
        cracks.tips = {{{54, 56}, {36, 60}}, {{140, 46}, {160, 42}}};
        run({{86, 54}, {96, 70}, {112, 76}}, {128, 81});
        return cracks;
    }
    run({{76, 52}, {62, 58}, {46, 55}}, {30, 60});
    run({{126, 48}, {140, 40}, {150, 43}}, {168, 36});
    run({{99, 66}, {106, 74}, {118, 77}}, {136, 82});
    return cracks;
}

bool isBevelled(const SectionDrawing& drawing)
{
    return drawing.damage.kind != DamageKind::Dent && drawing.damage.kind != DamageKind::WeldSeam;
}

/// The left cut of the face that is up or down, from the face to its floor.
QLineF cutOf(const StepStage& stage, const QTransform& toStage, double side, bool back)
{
    const SectionDrawing& drawing = stage.drawing();
    const double panel = inMillimetres(drawing.damage.panelThickness);
    const double half = inMillimetres(drawing.drawnOpening()) / 2;
    const double floor = inMillimetres(drawing.floorLength) / 2;
    const double height = inMillimetres(drawing.faceHeight);
    const double up = back ? panel : 0.0;
    const double down = back ? panel - height : height;
    return {toStage.map(QPointF(side * half, up)), toStage.map(QPointF(side * floor, down))};
}

/// The cuts of a face on both sides of this repair's own opening; the angle is shown once, on the upper face.
void markBevels(const StepStage& stage, const QTransform& toStage, bool back)
{
    for (const double side : {-1.0, 1.0}) {
        const QLineF cut = cutOf(stage, toStage, side, back);
        stage.line(cut.p1(), cut.p2(), Role::Action, 1.2);
        if (back || side < 0)
            continue;
        const QRectF circle(cut.x1() - 14, cut.y1() - 14, 28, 28);
        QPainterPath arc; // from the face down to the cut
        arc.arcMoveTo(circle, 180);
        arc.arcTo(circle, 180, cut.angle() - 180);
        stage.outline(arc, Role::Action, 0.6);
        stage.line(cut.p1(), cut.p1() + QPointF(-18, 0), Role::Action, 0.4, true);
    }
}

QPointF bevelWith(const StepStage& stage, const StagedSection& section, int frame, bool both)
{
    if (!isBevelled(stage.drawing()))
        return {0, section.surface - atBevel.y()};
    markBevels(stage, section.toStage, false);
    if (both)
        markBevels(stage, section.toStage, true);
    const QLineF cut = cutOf(stage, section.toStage, -1, false);
    return cut.pointAt(0.2 * (frame - 1)) - atBevel;
}

} // namespace

/// Water and solvent stay off open fibre.
QPointF keepOff(const StepStage& stage, const StagedSection&, int)
{
    QPainterPath ring;
    ring.addEllipse(QPointF(100, 50), 42, 30);
    stage.outline(ring, Role::Stop, 0.8, true);
    return {};
}

QPointF bareBeyond(const StepStage& stage, const StagedSection&, int)
{
    const QRectF patch(42, 16, 116, 68);
    QPainterPath bare;
    bare.addRoundedRect(patch, 24, 24);
    stage.piece(bare, stage.material());
    stage.drawDamage();
    const QRectF damage = stage.damageFromAbove().boundingRect().intersected(patch);
    const double right = damage.right() < 150 ? damage.right() : 130;
    stage.bothWays({right + 1, 50}, {157, 50}, Role::Stop);
    return {};
}

QPointF soundLine(const StepStage& stage, const StagedSection&, int)
{
    QPainterPath sound;
    sound.addRoundedRect(
        stage.damageFromAbove().boundingRect().adjusted(-9, -9, 9, 9).intersected(QRectF(14, 12, 172, 76)), 12, 12);
    stage.outline(sound, Role::Stop, 1.0, true);
    const QRectF box = sound.boundingRect();
    return QPointF(std::min(box.right() - 10, 138.0), std::max(box.top(), 24.0)) - atCut;
}

QPointF cracksToFind(const StepStage& stage, const StagedSection&, int)
{
    const Cracks cracks = cracksOf(stage);
    stage.outline(cracks.lines, Role::Ink, 0.8);
    for (const auto& tip : cracks.tips)
        around(stage, tip.first, 6, Role::Stop, true);
    return {};
}

int framesOfDrilling(const SectionDrawing&) { return 4; } // the drawing as drilled, and the three tips

QPointF tipsToDrill(const StepStage& stage, const StagedSection&, int frame)
{
    const Cracks cracks = cracksOf(stage);
    stage.outline(cracks.lines, Role::Ink, 1.0);
    // At rest all are drilled and the drill stands at the last; in motion it goes from tip to tip.
    const auto last = static_cast<int>(cracks.tips.size());
    const int drilled = frame == 1 ? last : frame - 1;
    for (int i = 0; i < last; ++i) {
        const auto& [tip, drill] = cracks.tips[static_cast<std::size_t>(i)];
        stage.line(tip, drill, Role::Ink, 0.4, true);
        if (i >= drilled)
            continue;
        QPainterPath hole;
        hole.addEllipse(drill, 3.6, 3.6);
        stage.fill(hole, Role::Card);
        stage.outline(hole, Role::Stop, 0.9);
    }
    return cracks.tips[static_cast<std::size_t>(drilled - 1)].second - atTip;
}

/// Adhesive that was squeezed out of the joint, over both edges.
QPointF squeezedOut(const StepStage& stage, const StagedSection& section, int)
{
    const double half = inMillimetres(stage.drawing().drawnOpening()) / 4;
    const QPointF left = section.toStage.map(QPointF(-half, 0));
    const QPointF right = section.toStage.map(QPointF(half, 0));
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(stage.drawing().damage.depth)));
    QPainterPath bead(left);
    bead.cubicTo(left + QPointF(2, -22), right + QPointF(-2, -22), right);
    bead.lineTo(root);
    bead.closeSubpath();
    stage.piece(bead, Material::Adhesive);
    return QPointF(std::max(left.x(), 78.0) - 2, section.surface) - atSqueezeOut;
}

/// What stands proud of the sheets.
QPointF weldBead(const StepStage& stage, const StagedSection& section, int)
{
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(stage.drawing().damage.depth)));
    QPainterPath proud(root - QPointF(14, 0));
    proud.quadTo(root - QPointF(0, 22), root + QPointF(14, 0));
    proud.closeSubpath();
    stage.piece(proud, Material::Weld);
    stage.line(root - QPointF(26, 1), root + QPointF(26, -1), Role::Stop, 0.9, true);
    return root - QPointF(0, 10) - atWeld;
}

int framesOfBevelling(const SectionDrawing& drawing) { return isBevelled(drawing) ? bevelFrames : 1; }

QPointF bevel(const StepStage& stage, const StagedSection& section, int frame)
{
    return bevelWith(stage, section, frame, false);
}

QPointF bevelBoth(const StepStage& stage, const StagedSection& section, int frame)
{
    return bevelWith(stage, section, frame, true);
}

/// The groove's two flanks.
QPointF gouge(const StepStage& stage, const StagedSection& section, int)
{
    const double half = inMillimetres(stage.drawing().drawnOpening()) / 2;
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(stage.drawing().damage.depth)));
    for (const double side : {-1.0, 1.0})
        stage.line(section.toStage.map(QPointF(side * half, 0)), root, Role::Action, 1.2);
    return QPointF(root.x(), std::min(root.y() - 1, atGouge.y())) - atGouge;
}

/// The upper panel alone takes a slight bevel; the measure beside it ends at half of its thickness.
QPointF upperPanel(const StepStage& stage, const StagedSection& section, int)
{
    const double panel = inMillimetres(stage.drawing().damage.panelThickness);
    const double half = inMillimetres(stage.drawing().drawnOpening()) / 2;
    const QPointF edge = section.toStage.map(QPointF(half, 0));
    const QPointF root = section.toStage.map(QPointF(0, inMillimetres(stage.drawing().damage.depth)));
    const QPointF middle = section.toStage.map(QPointF(half, panel / 2)); // never below this
    stage.line(edge, root, Role::Action, 1.4);
    stage.line({root.x(), middle.y()}, {186, middle.y()}, Role::Stop, 0.8, true);
    stage.bothWays({180, section.surface}, {180, middle.y()}, Role::Stop);
    return QPointF(edge + (root - edge) * 0.2) - atBevel;
}

} // namespace strandbench::marks
