// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/theme.h"

#include "theme/fonts.h"

#include <QStringList>

#include <algorithm>
#include <stdexcept>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

// Colours keep their meaning after ISO 3864 in both palettes; at night red and green are light enough to be
// read on the dark card, and what stands on them is dark.
QRgb dayColor(Role role)
{
    switch (role) {
    case Role::Ground:
        return 0xFFF2F0EA;
    case Role::Card:
        return 0xFFFFFFFF;
    case Role::Ink:
        return 0xFF16202B;
    case Role::MutedInk:
        return 0xFF3F4A55;
    case Role::Edge:
        return 0xFF16202B;
    case Role::SoftEdge:
        return 0xFFBDB7A8;
    case Role::Action:
        return 0xFF0A4D86;
    case Role::OnAction:
        return 0xFFFFFFFF;
    case Role::Go:
        return 0xFF075A31;
    case Role::OnGo:
        return 0xFFFFFFFF;
    case Role::Caution:
        return 0xFFF7C21A;
    case Role::OnCaution:
        return 0xFF16202B;
    case Role::Stop:
        return 0xFF9C1218;
    case Role::OnStop:
        return 0xFFFFFFFF;
    case Role::RibbonGround:
        return 0xFF16202B;
    case Role::OnRibbon:
        return 0xFFFFFFFF;
    case Role::OnRibbonMuted:
        return 0xFFC5CDD6;
    case Role::RibbonBlock:
        return 0xFF2B3644;
    case Role::Rail:
        return 0xFF8B97A3;
    case Role::Pressed:
        return 0x3816202B;
    case Role::LaminateFill:
        return 0xFFB9D2C6;
    case Role::LaminateHatch:
        return 0xFF2F6B57;
    case Role::SmcFill:
        return 0xFFAAB7AF;
    case Role::SmcFleck:
        return 0xFF3C4A44;
    case Role::MetalFill:
        return 0xFFAEB6C1;
    case Role::MetalHatch:
        return 0xFF4A5462;
    case Role::ZincFill:
        return 0xFFE3E8EE;
    case Role::FillerFill:
        return 0xFFD98B5B;
    case Role::FillerFleck:
        return 0xFF8A4420;
    case Role::FillerSecond:
        return 0xFFECB390;
    case Role::FinishFill:
        return 0xFFE8CFAE;
    case Role::HardenerFill:
        return 0xFF7A1F2B;
    case Role::Hole:
        return 0xFFF2F0EA;
    }
    throw std::invalid_argument("dayColor: no such role");
}

QRgb nightColor(Role role)
{
    switch (role) {
    case Role::Ground:
        return 0xFF0B1015;
    case Role::Card:
        return 0xFF141B22;
    case Role::Ink:
        return 0xFFF2F0EA;
    case Role::MutedInk:
        return 0xFFBFC8D1;
    case Role::Edge:
        return 0xFFBFC8D1;
    case Role::SoftEdge:
        return 0xFF46525F;
    case Role::Action:
        return 0xFF7DBBF2;
    case Role::OnAction:
        return 0xFF06121D;
    case Role::Go:
        return 0xFF6FCF97;
    case Role::OnGo:
        return 0xFF04150B;
    case Role::Caution:
        return 0xFFF7C21A;
    case Role::OnCaution:
        return 0xFF16202B;
    case Role::Stop:
        return 0xFFFF8A80;
    case Role::OnStop:
        return 0xFF1F0304;
    case Role::RibbonGround:
        return 0xFF05080B;
    case Role::OnRibbon:
        return 0xFFFFFFFF;
    case Role::OnRibbonMuted:
        return 0xFFBFC8D1;
    case Role::RibbonBlock:
        return 0xFF222C37;
    case Role::Rail:
        return 0xFF6C7885;
    case Role::Pressed:
        return 0x40F2F0EA;
    case Role::LaminateFill:
        return 0xFF28493C;
    case Role::LaminateHatch:
        return 0xFF7FB8A2;
    case Role::SmcFill:
        return 0xFF3D4A44;
    case Role::SmcFleck:
        return 0xFFAAB7AF;
    case Role::MetalFill:
        return 0xFF3E4753;
    case Role::MetalHatch:
        return 0xFF98A3B0;
    case Role::ZincFill:
        return 0xFF596575;
    case Role::FillerFill:
        return 0xFF6E3E1E;
    case Role::FillerFleck:
        return 0xFFD98B5B;
    case Role::FillerSecond:
        return 0xFF87552F;
    case Role::FinishFill:
        return 0xFF6B5A3E;
    case Role::HardenerFill:
        return 0xFFF78F9A;
    case Role::Hole:
        return 0xFF0B1015;
    }
    throw std::invalid_argument("nightColor: no such role");
}

} // namespace

Theme::Theme(Metrics metrics, DayNight dayNight, Hand hand, bool reducedMotion)
    : m_metrics(metrics), m_dayNight(dayNight), m_hand(hand), m_reducedMotion(reducedMotion)
{
    if (!(metrics.pixelsPerMillimetre() > 0))
        throw std::invalid_argument("Theme: pixels per millimetre must be above 0");
}

QColor Theme::color(Role role) const
{
    return QColor::fromRgba(m_dayNight == DayNight::Day ? dayColor(role) : nightColor(role));
}

TextSize Theme::size(TextRole role)
{
    switch (role) {
    case TextRole::Sentence:
        return {8.4, 7.0};
    case TextRole::Figure:
        return {22.0, 18.0};
    case TextRole::BigFigure:
        return {10.0, 5.0};
    case TextRole::Title:
        return {6.0, 4.0};
    case TextRole::Body:
        return {4.6, 3.4};
    case TextRole::Small:
        return {4.2, 3.4};
    }
    throw std::invalid_argument("Theme::size: no such role");
}

QFont Theme::font(double emMillimetres, bool bold) const
{
    leaveOutMonospacedB612(); // done by now; the call keeps its file in every program that has a font
    QFont font;
    // B612's figures all have the same advance, so no font feature is needed; a missing B612 leaves the
    // platform's sans by the style hint.
    font.setFamilies({u"B612"_s});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(std::max(1, px(emMillimetres)));
    font.setBold(bold);
    return font;
}

} // namespace strandbench
