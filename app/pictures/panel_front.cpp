// SPDX-License-Identifier: GPL-3.0-or-later
// The face that is to be filled: the film on it, and what the damage looks like through it.
#include "pictures/panel_sides.h"

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

const QRectF panel(4, 8, 192, 84);
const QRectF damaged(56, 26, 88, 48); ///< where the damage is, and the film that matters

QPainterPath blob(const QRectF& box)
{
    QPainterPath path;
    const QPointF c = box.center();
    constexpr int corners = 9;
    for (int i = 0; i <= corners; ++i) {
        const double turn = 2 * M_PI * i / corners;
        const double out = 1 - 0.12 * ((i % corners) % 3);
        const QPointF at(c.x() + out * box.width() / 2 * std::cos(turn),
                         c.y() + out * box.height() / 2 * std::sin(turn));
        i == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    return path;
}

QPainterPath ellipse(const QRectF& box)
{
    QPainterPath path;
    path.addEllipse(box);
    return path;
}

QPainterPath box(const QRectF& rect)
{
    QPainterPath path;
    path.addRect(rect);
    return path;
}

/// A row of weld scales along the middle.
void beadRow(const StepStage& stage, double from, double to, double y)
{
    for (double x = from; x < to; x += 5) {
        stage.fill(ellipse({x, y - 5, 8, 10}), Role::MetalHatch);
        stage.outline(ellipse({x, y - 5, 8, 10}), Role::Ink, 0.25);
    }
}

void film(const StepStage& stage, FilmLook look)
{
    const QPainterPath patch = blob(damaged);
    switch (look) {
    case FilmLook::None:
        stage.fill(patch, Role::Card);
        stage.outline(patch, Role::Ink, 0.3, true);
        break;
    case FilmLook::EvenGrey:
        stage.fill(patch, Role::MetalFill);
        for (double y = damaged.top() + 6; y < damaged.bottom() - 6; y += 5)
            stage.line({damaged.left() + 16, y}, {damaged.right() - 16, y - 2}, Role::MutedInk, 0.2);
        break;
    case FilmLook::Gloss: {
        stage.fill(box(panel), Role::Action);
        QPainterPath shine(QPointF(14, 70));
        shine.quadTo(20, 18, 70, 15);
        stage.outline(shine, Role::OnAction, 1.2);
        break;
    }
    case FilmLook::Patch:
        stage.fill(box(panel), Role::Action, 0.75);
        stage.fill(patch, Role::FillerFill);
        stage.dots(StepStage::strewn(damaged.adjusted(14, 8, -14, -8), 18), 0.8, Role::FillerFleck);
        stage.outline(patch, Role::Ink, 0.3);
        break;
    case FilmLook::Rubbery:
        for (double y = 34; y <= 66; y += 8) {
            QPainterPath wave(QPointF(damaged.left() + 4, y));
            for (double x = damaged.left() + 4; x < damaged.right() - 8; x += 12)
                wave.cubicTo(x + 4, y - 5, x + 8, y + 5, x + 12, y);
            stage.outline(wave, Role::MutedInk, 1.6);
        }
        break;
    case FilmLook::BrownScale:
        stage.fill(patch, Role::FillerSecond);
        stage.dots(StepStage::strewn(damaged.adjusted(8, 4, -8, -4), 46), 1.7, Role::HardenerFill);
        break;
    case FilmLook::SmoothBlack:
        stage.fill(patch, Role::Ink);
        break;
    case FilmLook::Tint:
        stage.fill(box(panel.adjusted(12, 6, -12, -6)), Role::FinishFill, 0.6);
        for (double x = 24; x < 176; x += 9)
            stage.line({x, 82}, {x + 8, 18}, Role::FillerFleck, 0.2);
        break;
    case FilmLook::Glassy:
        for (double x = damaged.left() + 6; x < damaged.right() - 8; x += 15) {
            stage.outline(ellipse({x, 42, 12, 9}), Role::Ink, 0.35);
            stage.line({x + 3, 45}, {x + 6, 44}, Role::Ink, 0.5);
        }
        break;
    }
}

QPainterPath crackLine(double left, double right)
{
    QPainterPath path(QPointF(left, 52));
    const double step = (right - left) / 6;
    for (int i = 1; i <= 6; ++i)
        path.lineTo(left + i * step, 52 + (i % 2 == 0 ? 3.5 : -4));
    return path;
}

void mark(const StepStage& stage, FrontMark each, Role ink)
{
    switch (each) {
    case FrontMark::CrackLine:
        stage.outline(crackLine(72, 128), ink, 0.8);
        break;
    case FrontMark::Crazing:
        for (int i = 0; i < 16; ++i) {
            const double turn = 2 * M_PI * i / 16;
            const QPointF out(std::cos(turn), 0.55 * std::sin(turn));
            stage.line(QPointF(100, 51) + 16 * out, QPointF(100, 51) + (i % 2 == 0 ? 34 : 26) * out, ink, 0.3);
        }
        break;
    case FrontMark::Dish:
        for (const double inset : {0.0, 9.0, 18.0})
            stage.outline(ellipse(QRectF(62, 28, 76, 44).adjusted(inset, inset * 0.6, -inset, -inset * 0.6)), ink, 0.4,
                          inset > 0);
        break;
    case FrontMark::Furrow: {
        QPainterPath lens(QPointF(60, 58));
        lens.quadTo(100, 38, 142, 46);
        lens.quadTo(104, 56, 60, 58);
        stage.fill(lens, Role::SoftEdge);
        stage.outline(lens, ink, 0.5);
        break;
    }
    case FrontMark::ThroughHole:
        stage.fill(blob({78, 34, 44, 32}), Role::Hole);
        stage.outline(blob({78, 34, 44, 32}), ink, 0.5);
        break;
    case FrontMark::RustedThrough:
        stage.fill(blob({70, 28, 60, 44}), Role::HardenerFill, 0.7);
        stage.fill(blob({84, 38, 30, 24}), Role::Hole);
        break;
    case FrontMark::WeldBead:
        beadRow(stage, 10, 186, 50);
        break;
    case FrontMark::SpotRings:
        for (double x = 24; x <= 176; x += 30) {
            stage.outline(ellipse({x - 6, 56, 12, 12}), ink, 0.5);
            stage.fill(ellipse({x - 2, 60, 4, 4}), Role::MutedInk);
        }
        break;
    case FrontMark::SeamLine:
        stage.line({4, 50}, {196, 50}, ink, 0.7);
        break;
    case FrontMark::AdhesiveLine:
        stage.fill(box({4, 47, 192, 6}), Role::ZincFill);
        stage.line({4, 47}, {196, 47}, ink, 0.4);
        stage.line({4, 53}, {196, 53}, ink, 0.4);
        for (double x = 8; x < 196; x += 4)
            stage.line({x, 47.5}, {x, 52.5}, Role::MutedInk, 0.2);
        break;
    case FrontMark::SqueezeOut:
        for (double x = 20; x < 180; x += 22) {
            stage.fill(ellipse({x, 52, 17, 9}), Role::ZincFill);
            stage.outline(ellipse({x, 52, 17, 9}), ink, 0.35);
        }
        break;
    case FrontMark::Pores:
        for (const QPointF& at : StepStage::strewn({14, 46, 172, 8}, 16))
            stage.fill(ellipse({at.x() - 1.4, at.y() - 1.4, 2.8, 2.8}), Role::Hole);
        break;
    case FrontMark::SteelSpecks:
        stage.dots(StepStage::strewn(damaged.adjusted(4, 2, -4, -2), 24), 1.1, Role::HardenerFill);
        break;
    }
}

} // namespace

void drawPanelFront(const StepStage& stage, const Evidence& shown)
{
    stage.fill(box(panel), Role::SoftEdge);
    film(stage, shown.film);
    const Role ink = shown.film == FilmLook::SmoothBlack ? Role::Ground
                     : shown.film == FilmLook::Gloss     ? Role::OnAction
                                                         : Role::Ink;
    for (const FrontMark each : shown.front)
        mark(stage, each, ink);
    stage.outline(box(panel), Role::Ink, 0.35);
}

} // namespace strandbench
