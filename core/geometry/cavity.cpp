// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/cavity.h"

#include <QtGlobal>

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace strandbench {
namespace {

constexpr double pi = std::numbers::pi;

bool isHole(const Damage& damage) { return damage.kind == DamageKind::Hole || damage.kind == DamageKind::RustHole; }

/// Volume of a bevelled elliptic hole from its floor up to z: the ellipse a x b grown by B z all round.
Volume holeUpTo(const Damage& damage, Length z)
{
    const Length a = damage.length * 0.5;
    const Length b = damage.width * 0.5;
    const double run = damage.bevelRatio;
    return pi * (a * b * z + (a + b) * run * z * z * 0.5 + run * run * z * z * z / 3.0);
}

/// Volume of a crack ground to a V up to z: a prism along the crack and half a cone at each end.
Volume crackUpTo(const Damage& damage, Length z)
{
    const double run = damage.bevelRatio;
    return run * z * z * damage.length + pi * run * run * z * z * z / 3.0;
}

} // namespace

Cavity::Cavity(const Damage& damage, bool rearAccess) : m_damage(damage), m_height(damage.depth), m_faces(1)
{
    if (!isHole(damage))
        return;
    m_height = rearAccess ? Length(damage.panelThickness * 0.5) : damage.panelThickness;
    m_faces = rearAccess ? 2 : 1;
}

int Cavity::faces() const { return m_faces; }
Length Cavity::height() const { return m_height; }
Volume Cavity::volume() const { return volumeUpTo(m_height); }

Volume Cavity::volumeUpTo(Length height) const
{
    // Lifts that add up to the height may miss it by a rounding.
    const Length z = std::clamp(height, Length(), m_height);
    const Length l = m_damage.length;
    const Length w = m_damage.width;
    const double share = m_height.value() > 0 ? z.value() / m_height.value() : 0.0;
    switch (m_damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
        return holeUpTo(m_damage, z);
    case DamageKind::Crack:
        return crackUpTo(m_damage, z);
    case DamageKind::Dent:
        return pi / 8.0 * l * w * m_height * share * share;
    case DamageKind::Gouge:
    case DamageKind::BondSeam:
        return l * w * m_height * 0.5 * share * share;
    case DamageKind::WeldSeam:
        return 2.0 / 3.0 * l * w * m_height * std::pow(share, 1.5);
    }
    Q_UNREACHABLE();
}

Length Cavity::heightOf(Volume filled) const
{
    if (filled.value() <= 0.0)
        return {};
    if (filled >= volume())
        return m_height;
    const auto over = [&](double z) { return (volumeUpTo(Length::from_value(z)) - filled).value(); };
    const auto found =
        boost::math::tools::bisect(over, 0.0, m_height.value(), boost::math::tools::eps_tolerance<double>());
    return Length::from_value((found.first + found.second) / 2.0);
}

Length Cavity::openingLength() const
{
    const Length run = m_height * m_damage.bevelRatio;
    const bool widened = isHole(m_damage) || m_damage.kind == DamageKind::Crack;
    return widened ? Length(m_damage.length + 2.0 * run) : m_damage.length;
}

Length Cavity::openingWidth() const
{
    const Length run = m_height * m_damage.bevelRatio;
    if (isHole(m_damage))
        return m_damage.width + 2.0 * run;
    if (m_damage.kind == DamageKind::Crack)
        return 2.0 * run;
    return m_damage.width;
}

Area Cavity::opening() const
{
    const Area box = openingLength() * openingWidth();
    switch (m_damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
    case DamageKind::Dent:
        return box * (pi / 4.0);
    case DamageKind::Crack: {
        const Length run = m_height * m_damage.bevelRatio;
        return 2.0 * run * m_damage.length + pi * run * run;
    }
    case DamageKind::Gouge:
    case DamageKind::WeldSeam:
    case DamageKind::BondSeam:
        break;
    }
    return box;
}

Length Cavity::floorWidth() const { return isHole(m_damage) ? m_damage.length : Length(); }

} // namespace strandbench
