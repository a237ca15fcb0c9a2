// SPDX-License-Identifier: GPL-3.0-or-later
// Scenes of the tests before a repair is handed over.
#include "pictures/step_stage.h"

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

void straightedge(const StepStage& s)
{
    const double surface = s.section({10, 60, 180, 34}, s.finished());
    QPainterPath rule;
    rule.addRect(QRectF(12, surface - 22, 176, 18));
    s.fill(rule, Role::Card);
    s.outline(rule, Role::Ink, 0.6);
    for (double x = 20; x < 186; x += 8)
        s.line({x, surface - 4}, {x, surface - 9}, Role::Ink, 0.3);
    // Light shows where it does not touch.
    s.sign(Pictogram::Inspect, {150, 2, 30, 30});
    s.arrow({100, surface - 40}, {100, surface - 24}, Role::Action, 1.0);
}

void noPinholes(const StepStage& s)
{
    const double surface = s.section({10, 64, 180, 30}, s.finished());
    s.sign(Pictogram::Inspect, {16, 4, 44, 44});
    s.bothWays({66, 10}, {66, surface - 2});
    s.sign(Pictogram::PinholeNone, {118, 6, 48, 48});
}

void nailAndPaper(const StepStage& s)
{
    const double surface = s.section({10, 66, 180, 28}, s.finished());
    s.sign(Pictogram::Nail, {22, surface - 58, 64, 64});
    s.block({112, surface - 26}, 52, u"80"_s);
    s.dots({{104, surface - 6},
            {99, surface - 12},
            {106, surface - 18},
            {170, surface - 6},
            {176, surface - 13},
            {171, surface - 20},
            {181, surface - 5}},
           1.4, Role::FillerFleck); // it powders, it does not clog
}

void tapSound(const StepStage& s)
{
    const double surface = s.section({10, 66, 180, 28}, s.finished());
    for (const double x : {40.0, 100.0, 160.0}) {
        QPainterPath coin;
        coin.addEllipse(QPointF(x, surface - 22), 13, 13);
        s.fill(coin, Role::Card);
        s.outline(coin, Role::Ink, 0.8);
        QPainterPath inner;
        inner.addEllipse(QPointF(x, surface - 22), 8.5, 8.5);
        s.outline(inner, Role::Ink, 0.4);
        for (const double r : {17.0, 22.0}) {
            const QRectF circle(x - r, surface - 22 - r, 2 * r, 2 * r);
            QPainterPath wave;
            for (const double from : {-35.0, 145.0}) {
                wave.arcMoveTo(circle, from);
                wave.arcTo(circle, from, 70);
            }
            s.outline(wave, Role::Action, 0.7);
        }
    }
}

void noEdge(const StepStage& s)
{
    const double surface = s.section({10, 60, 180, 34}, s.finished());
    QPainterPath finger(QPointF(40, 4));
    finger.lineTo(72, surface - 16);
    finger.cubicTo(78, surface - 4, 90, surface - 1, 92, surface - 8);
    finger.cubicTo(93, surface - 14, 88, surface - 18, 84, surface - 22);
    finger.lineTo(62, 4);
    s.fill(finger, Role::Card);
    s.outline(finger, Role::Ink, 0.8);
    s.arrow({100, surface - 12}, {180, surface - 12}, Role::Action, 1.0);
    s.arrow({64, surface - 6}, {18, surface - 6}, Role::Action, 1.0);
}

void guideCoatGone(const StepStage& s)
{
    s.piece(QRectF(4, 16, 84, 68), Material::Finish);
    s.dots(StepStage::strewn({8, 20, 76, 60}, 45), 1.3, Role::Ink);
    s.arrow({92, 50}, {108, 50}, Role::Action, 1.2);
    s.piece(QRectF(112, 16, 84, 68), Material::Finish);
    s.sign(Pictogram::Tick, {139, 35, 30, 30});
}

const std::map<QString, Scene>& scenes()
{
    static const std::map<QString, Scene> all{
        {u"straightedge"_s, straightedge}, {u"no_pinholes"_s, noPinholes}, {u"nail_and_paper"_s, nailAndPaper},
        {u"tap_sound"_s, tapSound},        {u"no_edge"_s, noEdge},         {u"guide_coat_gone"_s, guideCoatGone},
    };
    return all;
}

} // namespace

Scene testingScene(const QString& code)
{
    const auto found = scenes().find(code);
    return found == scenes().end() ? nullptr : found->second;
}

QStringList testingCodes()
{
    QStringList codes;
    for (const auto& each : scenes())
        codes << each.first;
    return codes;
}

} // namespace strandbench
