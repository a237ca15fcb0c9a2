// SPDX-License-Identifier: GPL-3.0-or-later
// Hazard classes of UN GHS as CLP (Regulation (EC) No 1272/2008) spells them, and what follows from one: statement,
// pictogram, signal word. Only classes that a material of resources/harm has. CLP Annex I, Tables 2.x and 3.x; the
// types of organic peroxides were looked up (Table 2.15.1), the others are remembered and were not looked up.
#pragma once

#include "material/hazards.h"

#include <optional>

namespace strandbench {

enum class HazardClass {
    FlammableLiquid2,
    FlammableLiquid3,
    FlammableSolid1,
    FlammableAerosol1,
    OrganicPeroxideB,
    OrganicPeroxideD,
    OrganicPeroxideE,
    WaterReactive2,
    AcuteOral3,
    AcuteOral4,
    AcuteInhaled4,
    SkinCorrosion1,
    SkinIrritation2,
    EyeIrritation2,
    SkinSensitiser1,
    RespiratorySensitiser1,
    Carcinogen1,
    Reproduction1,
    Reproduction2Unborn,
    Narcosis,
    OrgansRepeated1,
    OrgansRepeated2,
    Aspiration1,
    AquaticChronic1,
    AquaticChronic2,
    DrySkin,
};

template <> struct Codes<HazardClass> {
    static constexpr std::array<std::pair<HazardClass, const char*>, 26> table{{
        {HazardClass::FlammableLiquid2, "flam_liq_2"},
        {HazardClass::FlammableLiquid3, "flam_liq_3"},
        {HazardClass::FlammableSolid1, "flam_sol_1"},
        {HazardClass::FlammableAerosol1, "aerosol_1"},
        {HazardClass::OrganicPeroxideB, "org_perox_b"},
        {HazardClass::OrganicPeroxideD, "org_perox_d"},
        {HazardClass::OrganicPeroxideE, "org_perox_e"},
        {HazardClass::WaterReactive2, "water_react_2"},
        {HazardClass::AcuteOral3, "acute_tox_3_oral"},
        {HazardClass::AcuteOral4, "acute_tox_4_oral"},
        {HazardClass::AcuteInhaled4, "acute_tox_4_inhaled"},
        {HazardClass::SkinCorrosion1, "skin_corr_1"},
        {HazardClass::SkinIrritation2, "skin_irrit_2"},
        {HazardClass::EyeIrritation2, "eye_irrit_2"},
        {HazardClass::SkinSensitiser1, "skin_sens_1"},
        {HazardClass::RespiratorySensitiser1, "resp_sens_1"},
        {HazardClass::Carcinogen1, "carc_1"},
        {HazardClass::Reproduction1, "repr_1"},
        {HazardClass::Reproduction2Unborn, "repr_2_unborn"},
        {HazardClass::Narcosis, "stot_se_3_narcosis"},
        {HazardClass::OrgansRepeated1, "stot_re_1"},
        {HazardClass::OrgansRepeated2, "stot_re_2"},
        {HazardClass::Aspiration1, "asp_tox_1"},
        {HazardClass::AquaticChronic1, "aquatic_chronic_1"},
        {HazardClass::AquaticChronic2, "aquatic_chronic_2"},
        {HazardClass::DrySkin, "dry_skin"},
    }};
};

/// What one class puts on a label.
struct LabelElement {
    HazardClass hazard;
    const char* statement;                 ///< "H226"
    std::optional<GhsPictogram> pictogram; ///< some classes have none
    SignalWord signal;
};

[[nodiscard]] const LabelElement& labelElement(HazardClass hazard);

/// The pictograms of a mixture, in the order of their codes, after CLP Article 26(1): with GHS06 no GHS07 (b); with
/// GHS05 no GHS07 for skin or eye irritation (c); with GHS08 for respiratory sensitisation no GHS07 for skin
/// sensitisation or for skin or eye irritation (d). Remembered, not looked up.
[[nodiscard]] std::vector<GhsPictogram> pictogramsOf(const std::vector<HazardClass>& classes);

/// 'Danger' where any class asks for it, and then 'Warning' not beside it (CLP Article 20(3)).
[[nodiscard]] SignalWord signalOf(const std::vector<HazardClass>& classes);

} // namespace strandbench
