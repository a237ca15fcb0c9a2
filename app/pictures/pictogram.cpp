// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/pictogram.h"

#include "pictures/drawing.h"

#include <array>
#include <stdexcept>
#include <utility>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::array<std::pair<Pictogram, const char*>, 23> drawings{{
    {Pictogram::TakeIn, "take_in"},
    {Pictogram::StopHand, "stop_hand"},
    {Pictogram::Caution, "caution"},
    {Pictogram::Tick, "tick"},
    {Pictogram::Spreader, "spreader"},
    {Pictogram::Knead, "knead"},
    {Pictogram::Mix, "mix"},
    {Pictogram::ClearEdges, "clear_edges"},
    {Pictogram::HandsOff, "hands_off"},
    {Pictogram::SandingBlock, "sanding_block"},
    {Pictogram::Harder, "harder"},
    {Pictogram::Turn, "turn"},
    {Pictogram::Finish, "finish"},
    {Pictogram::Inspect, "inspect"},
    {Pictogram::HandOver, "hand_over"},
    {Pictogram::Assess, "assess"},
    {Pictogram::Prepare, "prepare"},
    {Pictogram::Decide, "decide"},
    {Pictogram::Question, "question"},
    {Pictogram::Minus, "minus"},
    {Pictogram::Plus, "plus"},
    {Pictogram::Wait, "wait"},
    {Pictogram::Parked, "parked"},
}};

} // namespace

std::vector<Pictogram> allPictograms()
{
    std::vector<Pictogram> signs;
    for (const auto& each : drawings)
        signs.push_back(each.first);
    return signs;
}

QString drawingOf(Pictogram sign)
{
    for (const auto& [each, name] : drawings)
        if (each == sign)
            return u"signs/"_s + QLatin1StringView(name);
    throw std::invalid_argument("drawingOf: this is no sign");
}

void paintPictogram(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ink)
{
    if (sign != Pictogram::None)
        paintDrawing(painter, rect, drawingOf(sign), theme, {ink});
}

Pictogram signOf(Phase phase)
{
    switch (phase) {
    case Phase::Knead:
        return Pictogram::Knead;
    case Phase::Spread:
        return Pictogram::Spreader;
    case Phase::ClearEdges:
        return Pictogram::ClearEdges;
    case Phase::HandsOff:
        return Pictogram::HandsOff;
    case Phase::Sand:
        return Pictogram::SandingBlock;
    case Phase::Harder:
        return Pictogram::Harder;
    }
    Q_UNREACHABLE();
}

Pictogram signOf(Station station)
{
    switch (station) {
    case Station::Assess:
        return Pictogram::Assess;
    case Station::Decide:
        return Pictogram::Decide;
    case Station::Prepare:
        return Pictogram::Prepare;
    case Station::Mix:
        return Pictogram::Mix;
    case Station::Spread:
        return Pictogram::Spreader;
    case Station::Wait:
        return Pictogram::Wait;
    case Station::Sand:
        return Pictogram::SandingBlock;
    case Station::Turn:
        return Pictogram::Turn;
    case Station::Finish:
        return Pictogram::Finish;
    case Station::HandOver:
        return Pictogram::HandOver;
    case Station::Done:
        return Pictogram::Tick;
    case Station::Parked:
        return Pictogram::StopHand;
    case Station::Returned:
        return Pictogram::Caution;
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
