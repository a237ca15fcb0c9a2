// SPDX-License-Identifier: GPL-3.0-or-later
// The names of what is found, chosen and done, as they stand inside a sentence or on a line of their own.
#include "words/names.h"

#include "words/stops.h"
#include "words/table.h"

#include <QtGlobal>

namespace strandbench::words {
namespace {

constexpr const char* context = "Names";

constexpr Line substrates[] = {
    //: FRP: glass-fibre laminate
    {"frp", QT_TRANSLATE_NOOP("Names", "laminate")},
    //: sheet moulding compound; the trade's abbreviation
    {"smc", QT_TRANSLATE_NOOP("Names", "SMC")},
    {"steel", QT_TRANSLATE_NOOP("Names", "steel")},
    {"galvanised", QT_TRANSLATE_NOOP("Names", "galvanised steel")},
    {"aluminium", QT_TRANSLATE_NOOP("Names", "aluminium")},
    {"thermoplastic", QT_TRANSLATE_NOOP("Names", "thermoplastic")},
    {"flexible_polyurethane", QT_TRANSLATE_NOOP("Names", "flexible polyurethane")},
    {"carbon", QT_TRANSLATE_NOOP("Names", "carbon fibre")},
    {"cast_thermoset", QT_TRANSLATE_NOOP("Names", "cast plastic without fibre")},
    {"magnesium", QT_TRANSLATE_NOOP("Names", "magnesium")},
    {"unknown", QT_TRANSLATE_NOOP("Names", "not known")},
};

constexpr Line damages[] = {
    {"gouge", QT_TRANSLATE_NOOP("Names", "gouge")},         {"dent", QT_TRANSLATE_NOOP("Names", "dent")},
    {"crack", QT_TRANSLATE_NOOP("Names", "crack")},         {"hole", QT_TRANSLATE_NOOP("Names", "through hole")},
    {"rust_hole", QT_TRANSLATE_NOOP("Names", "rust hole")}, {"weld_seam", QT_TRANSLATE_NOOP("Names", "weld seam")},
    {"bond_seam", QT_TRANSLATE_NOOP("Names", "bond seam")},
};

constexpr Line welds[] = {
    {"solid", QT_TRANSLATE_NOOP("Names", "solid weld")},
    {"spot", QT_TRANSLATE_NOOP("Names", "spot welds")},
    {"stitch", QT_TRANSLATE_NOOP("Names", "stitch welds")},
};

constexpr Line surfaces[] = {
    {"bare", QT_TRANSLATE_NOOP("Names", "bare")},
    {"abraded_epoxy", QT_TRANSLATE_NOOP("Names", "abraded epoxy primer")},
    {"paint", QT_TRANSLATE_NOOP("Names", "paint")},
    {"old_filler", QT_TRANSLATE_NOOP("Names", "old filler")},
    {"sealer", QT_TRANSLATE_NOOP("Names", "sealer or underseal")},
    {"rust", QT_TRANSLATE_NOOP("Names", "rust")},
    {"rust_converter", QT_TRANSLATE_NOOP("Names", "rust converter")},
    {"etch_primer", QT_TRANSLATE_NOOP("Names", "acid-etch primer")},
    {"uncured_primer", QT_TRANSLATE_NOOP("Names", "uncured primer")},
    {"flux", QT_TRANSLATE_NOOP("Names", "solder with flux")},
};

constexpr Line zones[] = {
    {"cosmetic", QT_TRANSLATE_NOOP("Names", "looks only")},
    {"structural", QT_TRANSLATE_NOOP("Names", "carries load")},
    {"restraint", QT_TRANSLATE_NOOP("Names", "belts, seats, airbags")},
    {"sensor", QT_TRANSLATE_NOOP("Names", "in front of a sensor")},
    {"fuel_or_pressure", QT_TRANSLATE_NOOP("Names", "holds fuel or pressure")},
};

constexpr Line moistures[] = {
    {"dry", QT_TRANSLATE_NOOP("Names", "dry")},
    {"damp", QT_TRANSLATE_NOOP("Names", "damp")},
};

constexpr Line cores[] = {
    //: nothing between the skins of a laminate
    {"none", QT_TRANSLATE_NOOP("Names", "no core")},
    {"foam", QT_TRANSLATE_NOOP("Names", "foam")},
    {"dry_wood", QT_TRANSLATE_NOOP("Names", "dry wood")},
    {"wet_wood", QT_TRANSLATE_NOOP("Names", "wet wood")},
};

constexpr Line fillers[] = {
    {"short_strand", QT_TRANSLATE_NOOP("Names", "short strand, dense")},
    {"short_strand_light", QT_TRANSLATE_NOOP("Names", "short strand, light")},
    {"mixed_strand", QT_TRANSLATE_NOOP("Names", "mixed strand")},
    {"long_strand", QT_TRANSLATE_NOOP("Names", "long strand")},
    {"finish_smooth", QT_TRANSLATE_NOOP("Names", "finishing, smooth")},
    {"finish_fine", QT_TRANSLATE_NOOP("Names", "finishing, fine")},
};

constexpr Line faces[] = {
    {"front", QT_TRANSLATE_NOOP("Names", "front face")},
    {"back", QT_TRANSLATE_NOOP("Names", "back face")},
};

constexpr Line phases[] = {
    //: the phase of a running mix, on the ribbon: keep it short
    {"knead", QT_TRANSLATE_NOOP("Names", "knead")},
    {"spread", QT_TRANSLATE_NOOP("Names", "spread")},
    {"clear_edges", QT_TRANSLATE_NOOP("Names", "clear edges")},
    {"hands_off", QT_TRANSLATE_NOOP("Names", "hands off")},
    {"sand", QT_TRANSLATE_NOOP("Names", "sand")},
    //: it still sands, but harder than before
    {"harder", QT_TRANSLATE_NOOP("Names", "sands hard")},
};

constexpr Line stations[] = {
    //: what is next in a repair, on its job card: keep it short
    {"assess", QT_TRANSLATE_NOOP("Names", "assess")},
    {"decide", QT_TRANSLATE_NOOP("Names", "decide")},
    {"prepare", QT_TRANSLATE_NOOP("Names", "prepare")},
    {"mix", QT_TRANSLATE_NOOP("Names", "mix")},
    {"spread", QT_TRANSLATE_NOOP("Names", "spread")},
    {"wait", QT_TRANSLATE_NOOP("Names", "hands off")},
    {"sand", QT_TRANSLATE_NOOP("Names", "sand")},
    {"turn", QT_TRANSLATE_NOOP("Names", "turn the panel")},
    {"finish", QT_TRANSLATE_NOOP("Names", "finish")},
    {"hand_over", QT_TRANSLATE_NOOP("Names", "hand over")},
    {"done", QT_TRANSLATE_NOOP("Names", "handed over")},
    {"parked", QT_TRANSLATE_NOOP("Names", "parked")},
    //: by the supervisor, to be done again
    {"returned", QT_TRANSLATE_NOOP("Names", "returned")},
};

constexpr Line questions[] = {
    {"substrate", QT_TRANSLATE_NOOP("Names", "what the panel is made of")},
    {"damage_kind", QT_TRANSLATE_NOOP("Names", "kind of damage")},
    {"weld", QT_TRANSLATE_NOOP("Names", "kind of weld")},
    {"adhesive_cured", QT_TRANSLATE_NOOP("Names", "whether the adhesive has cured")},
    {"size", QT_TRANSLATE_NOOP("Names", "size of the damage")},
    {"rear_access", QT_TRANSLATE_NOOP("Names", "reach from behind")},
    {"surface", QT_TRANSLATE_NOOP("Names", "what is on the surface")},
    {"zone", QT_TRANSLATE_NOOP("Names", "what the zone is for")},
    {"moisture", QT_TRANSLATE_NOOP("Names", "dry or damp")},
    {"core", QT_TRANSLATE_NOOP("Names", "core of the laminate")},
    {"reading", QT_TRANSLATE_NOOP("Names", "air, panel and humidity")},
};

std::span<const Line> tableOf(NameOf what)
{
    switch (what) {
    case NameOf::Substrate:
        return substrates;
    case NameOf::Damage:
        return damages;
    case NameOf::Weld:
        return welds;
    case NameOf::Surface:
        return surfaces;
    case NameOf::Zone:
        return zones;
    case NameOf::Moisture:
        return moistures;
    case NameOf::Core:
        return cores;
    case NameOf::Filler:
        return fillers;
    case NameOf::Face:
        return faces;
    case NameOf::Phase:
        return phases;
    case NameOf::Station:
        return stations;
    case NameOf::Question:
        return questions;
    }
    Q_UNREACHABLE();
}

} // namespace

QString nameOf(NameOf what, const QString& code) { return lookUp(context, tableOf(what), code); }

QString nameOfAnyCode(const QString& code)
{
    for (const NameOf what : {NameOf::Substrate, NameOf::Damage, NameOf::Filler, NameOf::Question, NameOf::Surface,
                              NameOf::Zone, NameOf::Weld, NameOf::Core, NameOf::Moisture, NameOf::Face})
        if (holds(tableOf(what), code))
            return nameOf(what, code);
    if (const QString stop = stopHeadline(code); !stop.startsWith(u'['))
        return stop;
    return u'[' + code + u']';
}

} // namespace strandbench::words
