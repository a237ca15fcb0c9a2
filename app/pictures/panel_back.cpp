// SPDX-License-Identifier: GPL-3.0-or-later
// The back as a hand or a mirror finds it, and the edge as it broke.
#include "pictures/panel_sides.h"

#include <cmath>

namespace strandbench {
namespace {

const QRectF panel(4, 8, 192, 84);

QPainterPath box(const QRectF& rect, double radius = 0)
{
    QPainterPath path;
    path.addRoundedRect(rect, radius, radius);
    return path;
}

QPainterPath ellipse(const QRectF& rect)
{
    QPainterPath path;
    path.addEllipse(rect);
    return path;
}

/// Two rows of threads over and under each other.
void weave(const StepStage& stage, const QRectF& on, double pitch)
{
    stage.fill(box(on), Role::Hole);
    int row = 0;
    for (double y = on.top(); y + pitch <= on.bottom(); y += pitch, ++row)
        for (double x = on.left() + (row % 2) * pitch; x + pitch <= on.right(); x += 2 * pitch)
            stage.fill(box({x + 0.5, y + 0.5, pitch - 1, pitch - 1}, 1), Role::MutedInk);
}

void ribs(const StepStage& stage, double width)
{
    for (const double x : {38.0, 96.0, 154.0}) {
        stage.fill(box({x, 12, width, 76}), Role::SoftEdge);
        stage.outline(box({x, 12, width, 76}), Role::Ink, 0.4);
    }
}

void spots(const StepStage& stage)
{
    for (double x = 24; x <= 176; x += 30)
        stage.outline(ellipse({x - 6, 56, 12, 12}), Role::Ink, 0.5);
}

void bead(const StepStage& stage, double from, double to)
{
    for (double x = from; x < to; x += 5) {
        stage.fill(ellipse({x, 45, 8, 10}), Role::MetalHatch);
        stage.outline(ellipse({x, 45, 8, 10}), Role::Ink, 0.25);
    }
}

void mark(const StepStage& stage, BackMark each)
{
    switch (each) {
    case BackMark::MatTexture:
        for (const QPointF& at : StepStage::strewn(panel.adjusted(4, 4, -4, -4), 90)) {
            const double turn = at.x() * 7.3 + at.y() * 3.1;
            const QPointF along(6 * std::cos(turn), 6 * std::sin(turn));
            if (panel.contains(at - along) && panel.contains(at + along))
                stage.line(at - along, at + along, Role::MutedInk, 0.25);
        }
        break;
    case BackMark::MouldedRibs:
        ribs(stage, 7);
        break;
    case BackMark::BlackWeave:
        weave(stage, panel, 7);
        break;
    case BackMark::PressedSheet:
        stage.outline(box(panel.adjusted(20, 12, -20, -12), 8), Role::MutedInk, 0.6);
        stage.outline(box(panel.adjusted(26, 16, -26, -16), 6), Role::MutedInk, 0.3);
        break;
    case BackMark::CastRibs:
        ribs(stage, 12);
        stage.dots(StepStage::strewn(panel.adjusted(4, 4, -4, -4), 40), 0.7, Role::MutedInk);
        break;
    case BackMark::StitchBeads:
        stage.line({4, 50}, {196, 50}, Role::Ink, 0.5);
        for (const double from : {14.0, 82.0, 150.0})
            bead(stage, from, from + 32);
        break;
    case BackMark::SpotRings:
        spots(stage);
        break;
    case BackMark::ThroughBead:
        bead(stage, 10, 186);
        break;
    }
}

QPainterPath slab(double left, double right, double top, double bottom, bool ragged)
{
    QPainterPath path(QPointF(left, top));
    path.lineTo(right, top);
    for (int i = 1; ragged && i <= 5; ++i)
        path.lineTo(right - (i % 2 == 1 ? 7 : 0), top + (bottom - top) * (i - 0.3) / 5);
    path.lineTo(right - (ragged ? 4 : 0), bottom);
    path.lineTo(left, bottom);
    path.closeSubpath();
    return path;
}

void skin(const StepStage& stage, EdgeLook look, double top, double bottom)
{
    switch (look) {
    case EdgeLook::LayeredMat: {
        const double layer = (bottom - top) / 3;
        for (int i = 0; i < 3; ++i) {
            const double y = top + (i + 0.5) * layer;
            stage.line({150, y}, {176.0 + 5 * (i % 2), y - 3 + 3 * i}, Role::LaminateHatch, 0.5);
            stage.line({148, y + 2}, {182.0 - 6 * (i % 2), y + 2}, Role::LaminateHatch, 0.5);
        }
        stage.piece(slab(10, 160, top, bottom, true), Material::Laminate);
        for (int i = 1; i < 3; ++i)
            stage.line({10, top + i * layer}, {154, top + i * layer}, Role::Ink, 0.3);
        break;
    }
    case EdgeLook::ChoppedEven:
        stage.piece(slab(10, 166, top, bottom, true), Material::Smc);
        break;
    case EdgeLook::NoFibre:
        stage.fill(slab(10, 170, top, bottom, false), Role::ZincFill);
        stage.outline(slab(10, 170, top, bottom, false), Role::Ink, 0.35);
        break;
    case EdgeLook::BlackWeave:
        weave(stage, {10, top, 160, bottom - top}, std::max(3.0, (bottom - top) / 5));
        stage.outline(box({10, top, 160, bottom - top}), Role::Ink, 0.35);
        break;
    case EdgeLook::MetalEdge: {
        const double middle = (top + bottom) / 2;
        stage.fill(box({10, middle - 4, 160, 8}), Role::MetalFill);
        stage.outline(box({10, middle - 4, 160, 8}), Role::Ink, 0.35);
        break;
    }
    }
}

void inside(const StepStage& stage, InsideLook look, const QRectF& on)
{
    const bool foam = look == InsideLook::FoamCells;
    stage.fill(box(on), look == InsideLook::DarkWetWood ? Role::HardenerFill : foam ? Role::Card : Role::FinishFill);
    if (foam)
        for (const QPointF& at : StepStage::strewn(on.adjusted(3, 3, -3, -3), 70))
            stage.outline(ellipse({at.x() - 2.4, at.y() - 2.4, 4.8, 4.8}), Role::Ink, 0.2);
    else
        for (double y = on.top() + 4; y < on.bottom(); y += 4) {
            QPainterPath grain(QPointF(on.left(), y));
            grain.cubicTo(on.left() + 50, y - 3, on.left() + 100, y + 3, on.right(), y);
            stage.outline(grain, look == InsideLook::DarkWetWood ? Role::OnAction : Role::MutedInk, 0.3);
        }
    if (look == InsideLook::DarkWetWood)
        stage.drops({{on.left() + 40, on.bottom() + 2}, {on.left() + 90, on.bottom() + 2}}, 8);
    stage.outline(box(on), Role::Ink, 0.3);
}

} // namespace

void drawPanelBack(const StepStage& stage, const Evidence& shown)
{
    stage.fill(box(panel), Role::SoftEdge);
    if (shown.reach == BackReach::Closed) {
        for (double x = -60; x < 190; x += 14) {
            QPainterPath hatch(QPointF(std::max(4.0, x), x < 4 ? 92 - (4 - x) : 92));
            hatch.lineTo(std::min(196.0, x + 84), x + 84 > 196 ? 8 + (x + 84 - 196) : 8);
            stage.outline(hatch, Role::MutedInk, 0.3);
        }
        stage.outline(box(panel), Role::Ink, 0.35);
        return;
    }
    for (const BackMark each : shown.back)
        mark(stage, each);
    stage.outline(box(panel), Role::Ink, 0.35);
    if (shown.reach == BackReach::Mirror)
        stage.outline(ellipse({30, 4, 140, 92}), Role::Action, 1.4);
}

void drawPanelEdge(const StepStage& stage, const Evidence& shown)
{
    if (!shown.edge)
        return;
    if (shown.inside == InsideLook::Solid)
        return skin(stage, *shown.edge, 32, 68);
    inside(stage, shown.inside, {10, 30, 146, 40});
    skin(stage, *shown.edge, 16, 30);
    skin(stage, *shown.edge, 70, 84);
}

} // namespace strandbench
