// SPDX-License-Identifier: GPL-3.0-or-later
// What at this bench does harm: the materials that meet a person, at which step, and what keeps them from it. The
// general table is data (resources/harm); a product's own safety data sheet wins over it, and comes first.
#pragma once

#include "harm/hazard_class.h"
#include "material/sheet.h"

#include <QByteArray>

namespace strandbench {

/// How well a material's classes are known (core's house rule): A looked up at its source, B a quotation of it was,
/// C remembered and not looked up.
enum class Confidence { A, B, C };

template <> struct Codes<Confidence> {
    static constexpr std::array<std::pair<Confidence, const char*>, 3> table{{
        {Confidence::A, "A"},
        {Confidence::B, "B"},
        {Confidence::C, "C"},
    }};
};

/// What a material is, as far as rules over all of them go.
enum class HarmKind {
    Paste,       ///< resin with styrene in it
    Peroxide,    ///< a hardener or a catalyst
    Accelerator, ///< what makes a peroxide fall apart at once
    Solvent,     ///< its vapour burns
    Dust,
    Other,
};

template <> struct Codes<HarmKind> {
    static constexpr std::array<std::pair<HarmKind, const char*>, 6> table{{
        {HarmKind::Paste, "paste"},
        {HarmKind::Peroxide, "peroxide"},
        {HarmKind::Accelerator, "accelerator"},
        {HarmKind::Solvent, "solvent"},
        {HarmKind::Dust, "dust"},
        {HarmKind::Other, "other"},
    }};
};

/// The panel that a material comes off; a material without one is met on every panel.
enum class PanelKind { Composite, Steel, Aluminium };

template <> struct Codes<PanelKind> {
    static constexpr std::array<std::pair<PanelKind, const char*>, 3> table{{
        {PanelKind::Composite, "composite"},
        {PanelKind::Steel, "steel"},
        {PanelKind::Aluminium, "aluminium"},
    }};
};

/// What must stand before the work begins.
enum class Measure {
    ExtractionOn,   ///< before the first stroke
    NoIgnition,     ///< no lamp, grinder or spark until it has flashed off
    FreshAir,       ///< or extraction, where vapour is
    NeverTogether,  ///< peroxide and accelerator
    NotAtSkin,      ///< compressed air
    SpreadLeftOver, ///< what is mixed and left over gets hot
};

template <> struct Codes<Measure> {
    static constexpr std::array<std::pair<Measure, const char*>, 6> table{{
        {Measure::ExtractionOn, "extraction_on"},
        {Measure::NoIgnition, "no_ignition"},
        {Measure::FreshAir, "fresh_air"},
        {Measure::NeverTogether, "never_together"},
        {Measure::NotAtSkin, "not_at_skin"},
        {Measure::SpreadLeftOver, "spread_left_over"},
    }};
};

struct HarmMaterial {
    QString code;
    HarmKind kind = HarmKind::Other;
    std::optional<PanelKind> onlyOn;
    std::vector<HazardClass> classes;
    std::vector<QString> precautions; ///< the few that matter at the bench
    QString gloves;                   ///< codes known to app/words
    QString respirator;
    QString firstAid;
    QString waste;
    std::vector<QString> neverWith; ///< codes of other materials; each names the other
    Confidence confidence = Confidence::C;
    QString source; ///< where the classes are from
};

/// A step or a station, and what is met there.
struct HarmPlace {
    QString code; ///< of a prep or finish step, or a station: "mix", "spread", "wait", "sand", "turn"
    std::vector<QString> materials;
    std::vector<Measure> first; ///< before the work begins
};

struct HarmTable {
    std::vector<HarmMaterial> materials;
    std::vector<HarmPlace> places;
    QByteArray source;
    QByteArray hash; ///< SHA-256 of source

    [[nodiscard]] const HarmMaterial* material(const QString& code) const;
    [[nodiscard]] const HarmPlace* place(const QString& code) const;
};

/// True when the two could meet at a place that names both: they come off no two different panels.
[[nodiscard]] bool canMeet(const HarmMaterial& one, const HarmMaterial& other);

/// The measures that a material calls for wherever it is met: extraction before dust, no spark near a solvent, never
/// together beside a peroxide. The reader refuses a place that lacks one.
[[nodiscard]] std::vector<Measure> measuresFor(HarmKind kind);

/// One material as it is shown: what the label says, and whose it is.
struct HarmShown {
    QString material;
    SignalWord signal = SignalWord::None;
    std::vector<GhsPictogram> pictograms;
    std::vector<QString> hazards;
    std::vector<QString> precautions;
    // Codes of the general lines; a sheet's own line stands instead where it has one.
    QString gloves, respirator, firstAid, waste;
    QString ownGloves, ownRespirator, ownFirstAid, ownWaste;
    bool bySheet = false; ///< the label is the product's own
};

/// What is met at a place on such a panel, with such a product in the hand. The product's own hazards win for the
/// filler ("filler") and its hardener ("hardener_paste"): label and statements whole, lines where it has some.
[[nodiscard]] std::vector<HarmShown> metAt(const HarmTable& table, const QString& place, std::optional<PanelKind> panel,
                                           const ProductSheet* sheet);

/// All pictograms of these, in the order of their codes.
[[nodiscard]] std::vector<GhsPictogram> pictogramsOf(const std::vector<HarmShown>& shown);

} // namespace strandbench
