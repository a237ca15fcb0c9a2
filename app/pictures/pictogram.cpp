// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/pictogram.h"

#include "pictures/signwriter.h"

#include <map>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

SignDrawer drawerOf(Pictogram sign)
{
    for (const auto find : {stateSign, plainSign, workSign, prepSign, finishSign})
        if (const SignDrawer drawer = find(sign))
            return drawer;
    throw std::logic_error("a pictogram without a drawing");
}

bool hasOwnGround(Pictogram sign)
{
    return sign == Pictogram::StopHand || sign == Pictogram::Caution || sign == Pictogram::Tick;
}

const std::map<QString, Pictogram>& stepSigns()
{
    static const std::map<QString, Pictogram> signs{
        {u"gear_on"_s, Pictogram::Gear},
        {u"wash"_s, Pictogram::Wash},
        {u"degrease"_s, Pictogram::Cloth},
        {u"degrease_little"_s, Pictogram::Cloth},
        {u"strip_paint"_s, Pictogram::StripPaint},
        {u"cut_to_sound"_s, Pictogram::CutToSound},
        {u"find_cracks"_s, Pictogram::Magnifier},
        {u"stop_drill"_s, Pictogram::Drill},
        {u"dry"_s, Pictogram::Dry},
        {u"bevel"_s, Pictogram::Bevel},
        {u"bevel_both"_s, Pictogram::BevelBack},
        {u"open_gouge"_s, Pictogram::Bevel},
        {u"bevel_upper_panel"_s, Pictogram::Bevel},
        {u"dress_weld"_s, Pictogram::SandingBlock},
        {u"squeeze_out_off"_s, Pictogram::CutToSound},
        {u"abrade_back"_s, Pictogram::AbradeBack},
        {u"backing_behind"_s, Pictogram::Backing},
        {u"backing_through"_s, Pictogram::Backing},
        {u"dam"_s, Pictogram::Dam},
        {u"abrade_80"_s, Pictogram::CoarsePaper},
        {u"dust_off"_s, Pictogram::Dust},
        {u"wipe_metal"_s, Pictogram::Wipe},
        {u"flash_off"_s, Pictogram::FlashOff},
        {u"own_tools"_s, Pictogram::OwnTools},
        {u"read_panel"_s, Pictogram::DewDrop},
        {u"guide_coat"_s, Pictogram::GuideCoat},
        {u"sand_180"_s, Pictogram::Paper},
        {u"sand_320"_s, Pictogram::FinePaper},
        {u"dust_off_finish"_s, Pictogram::AirGun},
        {u"inspect"_s, Pictogram::RakingLight},
        {u"cure_before_primer"_s, Pictogram::CureClock},
        {u"straightedge"_s, Pictogram::Straightedge},
        {u"no_pinholes"_s, Pictogram::PinholeNone},
        {u"nail_and_paper"_s, Pictogram::Nail},
        {u"tap_sound"_s, Pictogram::TapCoin},
        {u"no_edge"_s, Pictogram::NoEdge},
        {u"guide_coat_gone"_s, Pictogram::GuideCoatGone},
    };
    return signs;
}

} // namespace

std::vector<Pictogram> allPictograms()
{
    std::vector<Pictogram> signs;
    for (int each = static_cast<int>(Pictogram::None) + 1; each <= static_cast<int>(Pictogram::GuideCoatGone); ++each)
        signs.push_back(static_cast<Pictogram>(each));
    return signs;
}

void paintPictogram(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ink)
{
    if (sign == Pictogram::None || rect.isEmpty())
        return;
    const double side = std::min(rect.width(), rect.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.center().x() - side / 2, rect.center().y() - side / 2);
    painter.scale(side / Signwriter::side, side / Signwriter::side);
    drawerOf(sign)(Signwriter(painter, theme, ink));
    painter.restore();
}

void paintSignOnDisc(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ground,
                     const QColor& ink)
{
    const double side = std::min(rect.width(), rect.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(rect.center());
    if (sign == Pictogram::None || hasOwnGround(sign)) {
        paintPictogram(painter, square, sign, theme, ink);
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawEllipse(square);
    painter.restore();
    const double inset = side * 0.2;
    paintPictogram(painter, square.adjusted(inset, inset, -inset, -inset), sign, theme, ink);
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

Pictogram signOfStep(const QString& code)
{
    const auto found = stepSigns().find(code);
    return found == stepSigns().end() ? Pictogram::Prepare : found->second;
}

} // namespace strandbench
