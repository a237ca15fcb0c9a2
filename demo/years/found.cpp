// SPDX-License-Identifier: GPL-3.0-or-later
#include "years/found.h"

using namespace Qt::StringLiterals;

namespace strandbench::years {
namespace {

using Answers = std::map<Question, AnswerValue>;

struct Size {
    double length; ///< all in mm
    double width;
    double depth;
    double thickness;
};

struct Air {
    double air; ///< °C
    double panel;
    double humidity; ///< percent
};

Found found(const QString& name, Substrate substrate, DamageKind kind, const Size& size, const Air& air,
            const Answers& other = {})
{
    Answers answers{
        {Question::Substrate, substrate},
        {Question::DamageKind, kind},
        {Question::Weld, WeldKind::Solid},
        {Question::AdhesiveCured, true},
        {Question::Size, DamageSize{millimetres(size.length), millimetres(size.width), millimetres(size.depth),
                                    millimetres(size.thickness), 4.0}},
        {Question::RearAccess, true},
        {Question::Surface, SurfaceState::Bare},
        {Question::Zone, Zone::Cosmetic},
        {Question::Moisture, Moisture::Dry},
        {Question::Core, CoreMaterial::None},
        {Question::Reading, Reading{celsius(air.air), celsius(air.panel), Fraction::ofHundred(air.humidity)}}};
    for (const auto& [question, value] : other)
        answers.insert_or_assign(question, value);
    return {name, answers};
}

/// Of a steel dent that could be filled, but for one answer.
Found but(const QString& name, const Answers& other)
{
    return found(name, Substrate::Steel, DamageKind::Dent, {120, 70, 2.5, 1.2}, {21, 20, 45}, other);
}

} // namespace

const std::vector<Found>& fillable()
{
    static const std::vector<Found> all{
        found(u"gouge_frp"_s, Substrate::Laminate, DamageKind::Gouge, {80, 40, 2, 4}, {21, 20.5, 48}),
        found(u"crack_frp"_s, Substrate::Laminate, DamageKind::Crack, {120, 0, 2.5, 4}, {17, 16.5, 55}),
        found(u"dent_steel"_s, Substrate::Steel, DamageKind::Dent, {160, 90, 3.5, 1.2}, {19, 18, 50}),
        found(u"weld_seam_steel"_s, Substrate::Steel, DamageKind::WeldSeam, {400, 25, 1.5, 1.5}, {23, 22, 40}),
        found(u"dent_aluminium"_s, Substrate::Aluminium, DamageKind::Dent, {90, 60, 2.5, 2}, {26, 25.5, 38}),
        found(u"gouge_galvanised"_s, Substrate::Galvanised, DamageKind::Gouge, {120, 25, 0.8, 1.5}, {20, 19, 52}),
        found(u"bond_seam_smc"_s, Substrate::Smc, DamageKind::BondSeam, {240, 20, 1.5, 3}, {22, 21, 44}),
        found(u"hole_smc"_s, Substrate::Smc, DamageKind::Hole, {60, 40, 3.5, 3.5}, {18.5, 17.5, 52}),
    };
    return all;
}

const std::vector<Found>& refused()
{
    static const std::vector<Found> all{
        but(u"carbon"_s, {{Question::Substrate, Substrate::Carbon}}),
        but(u"thermoplastic"_s, {{Question::Substrate, Substrate::Thermoplastic}}),
        but(u"polyurethane"_s, {{Question::Substrate, Substrate::FlexiblePolyurethane}}),
        but(u"rust_hole"_s, {{Question::DamageKind, DamageKind::RustHole}}),
        but(u"metal_crack"_s, {{Question::DamageKind, DamageKind::Crack}}),
        but(u"metal_hole"_s, {{Question::Substrate, Substrate::Aluminium}, {Question::DamageKind, DamageKind::Hole}}),
        but(u"weld_spot"_s, {{Question::DamageKind, DamageKind::WeldSeam}, {Question::Weld, WeldKind::Spot}}),
        but(u"weld_stitch"_s, {{Question::DamageKind, DamageKind::WeldSeam}, {Question::Weld, WeldKind::Stitch}}),
        but(u"structural"_s, {{Question::Zone, Zone::Structural}}),
        but(u"damp"_s, {{Question::Moisture, Moisture::Damp}}),
    };
    return all;
}

} // namespace strandbench::years
