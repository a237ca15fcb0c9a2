// SPDX-License-Identifier: GPL-3.0-or-later
// A refusal in words: what is wrong and why. What to do instead stands in stop_ways.cpp.
#include "words/stops.h"

#include "words/table.h"

#include <QLatin1StringView>
#include <QtGlobal>

#include <algorithm>
#include <array>

namespace strandbench::words {
namespace {

/// headline: at most eight words; wrong: one short sentence; why: at most two.
struct StopLine {
    const char* code;
    const char* headline;
    const char* wrong;
    const char* why;
};

constexpr const char* thisPanel = QT_TRANSLATE_NOOP("Stops", "Do not fill this panel");
constexpr const char* thisZone = QT_TRANSLATE_NOOP("Stops", "Do not fill in this zone");
constexpr const char* thisSurface = QT_TRANSLATE_NOOP("Stops", "Do not fill on this surface");
constexpr const char* thisCore = QT_TRANSLATE_NOOP("Stops", "Do not fill over this core");
constexpr const char* thisSeam = QT_TRANSLATE_NOOP("Stops", "Do not fill this seam");
constexpr const char* thisHole = QT_TRANSLATE_NOOP("Stops", "Do not fill this hole");
constexpr const char* notYet = QT_TRANSLATE_NOOP("Stops", "Do not fill yet");
constexpr const char* badSheet = QT_TRANSLATE_NOOP("Stops", "This sheet cannot be used");
constexpr const char* noFit = QT_TRANSLATE_NOOP("Stops", "These answers do not fit together");

constexpr std::array<StopLine, 44> lines{{
    {"not_assessed", QT_TRANSLATE_NOOP("Stops", "Not assessed yet"),
     //: %1 is a question of the assessment: "kind of weld"
     QT_TRANSLATE_NOOP("Stops", "Not assessed: %1."),
     QT_TRANSLATE_NOOP("Stops", "A question without an answer never counts as yes.")},
    {"substrate_thermoplastic", thisPanel, QT_TRANSLATE_NOOP("Stops", "It is a thermoplastic."),
     QT_TRANSLATE_NOOP("Stops", "Polyester does not bond to it and peels off as the panel bends.")},
    {"substrate_flexible_polyurethane", thisPanel, QT_TRANSLATE_NOOP("Stops", "It is a flexible plastic."),
     QT_TRANSLATE_NOOP("Stops", "Hard filler cracks off a part that bends.")},
    {"substrate_carbon", thisPanel, QT_TRANSLATE_NOOP("Stops", "It is carbon fibre."),
     QT_TRANSLATE_NOOP("Stops", "Its fibres carry load, and filler hides damage between the plies.")},
    {"substrate_cast_thermoset", thisPanel, QT_TRANSLATE_NOOP("Stops", "It is cast plastic without fibre."),
     QT_TRANSLATE_NOOP("Stops", "It is brittle: the crack runs on beside the filler.")},
    {"substrate_magnesium", thisPanel, QT_TRANSLATE_NOOP("Stops", "It is magnesium."),
     QT_TRANSLATE_NOOP("Stops", "Its dust burns, and it corrodes under filler.")},
    {"substrate_unknown", thisPanel, QT_TRANSLATE_NOOP("Stops", "Nobody knows what it is made of."),
     QT_TRANSLATE_NOOP("Stops", "The filler, the solvent and the tools all depend on it.")},
    {"zone_structural", thisZone, QT_TRANSLATE_NOOP("Stops", "This part carries load."),
     QT_TRANSLATE_NOOP("Stops", "Filler has no strength in a crash and hides what failed.")},
    {"zone_restraint", thisZone, QT_TRANSLATE_NOOP("Stops", "Belts, seats, glass, airbags or high voltage are here."),
     QT_TRANSLATE_NOOP("Stops", "People depend on this part as it was built.")},
    {"zone_sensor", thisZone, QT_TRANSLATE_NOOP("Stops", "A driver-assistance sensor looks through here."),
     QT_TRANSLATE_NOOP("Stops", "Filler and thick paint bend or block its beam.")},
    {"zone_fuel_or_pressure", thisZone, QT_TRANSLATE_NOOP("Stops", "It holds fuel or pressure."),
     QT_TRANSLATE_NOOP("Stops", "Filler does not seal it, and grinding can set it alight.")},
    {"surface_paint", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is paint where the filler goes."),
     QT_TRANSLATE_NOOP("Stops", "The filler holds only as well as the paint. Its edge shows later.")},
    {"surface_old_filler", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is old filler of an unknown kind."),
     QT_TRANSLATE_NOOP("Stops", "Nobody knows what it is or how it holds.")},
    {"surface_sealer", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is sealer or underseal."),
     QT_TRANSLATE_NOOP("Stops", "It stays soft, and filler slides on it.")},
    {"surface_rust", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is live rust."),
     QT_TRANSLATE_NOOP("Stops", "It goes on growing under the filler and lifts it off.")},
    {"surface_rust_converter", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is rust converter."),
     QT_TRANSLATE_NOOP("Stops", "Its acid keeps the filler above it from curing.")},
    {"surface_etch_primer", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is acid-etch primer."),
     QT_TRANSLATE_NOOP("Stops", "Its acid keeps the filler above it from curing.")},
    {"surface_uncured_primer", thisSurface, QT_TRANSLATE_NOOP("Stops", "The primer has not cured."),
     QT_TRANSLATE_NOOP("Stops", "The filler softens it, and both come off together.")},
    {"surface_flux", thisSurface, QT_TRANSLATE_NOOP("Stops", "There is solder with flux."),
     QT_TRANSLATE_NOOP("Stops", "Flux is acid and greasy: nothing holds on it.")},
    {"moisture_damp", QT_TRANSLATE_NOOP("Stops", "Do not fill while it is damp"),
     QT_TRANSLATE_NOOP("Stops", "The panel is damp."),
     QT_TRANSLATE_NOOP("Stops", "Water keeps the filler from wetting the surface, then makes blisters.")},
    {"core_foam", thisCore, QT_TRANSLATE_NOOP("Stops", "There is a foam core under the laminate."),
     QT_TRANSLATE_NOOP("Stops", "Styrene and heat attack foam, and the skin loses its support.")},
    {"core_wet_wood", thisCore, QT_TRANSLATE_NOOP("Stops", "There is a wet wood core under the laminate."),
     QT_TRANSLATE_NOOP("Stops", "The water stays in, and the wood rots on below.")},
    {"weld_spot", thisSeam, QT_TRANSLATE_NOOP("Stops", "It is spot-welded: a joint, not damage."),
     QT_TRANSLATE_NOOP("Stops",
                       "The panels move and hold water between the spots. The line shows through later, and rust "
                       "creeps in.")},
    {"weld_stitch", thisSeam, QT_TRANSLATE_NOOP("Stops", "It is stitch-welded: a joint, not damage."),
     QT_TRANSLATE_NOOP("Stops",
                       "The panels move and hold water in the gaps. The line shows through later, and rust creeps "
                       "in.")},
    {"weld_seam_not_on_metal", noFit, QT_TRANSLATE_NOOP("Stops", "A weld seam cannot be on %1."),
     QT_TRANSLATE_NOOP("Stops", "Either the seam is bonded, or the panel is metal.")},
    {"rust_hole_not_on_metal", noFit, QT_TRANSLATE_NOOP("Stops", "A rust hole cannot be in %1."),
     QT_TRANSLATE_NOOP("Stops", "Either the hole has another cause, or the panel is metal.")},
    {"bond_seam_not_cured", QT_TRANSLATE_NOOP("Stops", "Do not fill this seam yet"),
     QT_TRANSLATE_NOOP("Stops", "The adhesive has not cured."),
     QT_TRANSLATE_NOOP("Stops", "It still shrinks and swells, and its line shows through the paint.")},
    {"metal_crack", QT_TRANSLATE_NOOP("Stops", "Do not fill this crack"),
     QT_TRANSLATE_NOOP("Stops", "A crack in metal is fatigue or tearing."),
     QT_TRANSLATE_NOOP("Stops", "It runs on under the filler and opens again.")},
    {"metal_hole", thisHole, QT_TRANSLATE_NOOP("Stops", "It is a hole in metal."),
     QT_TRANSLATE_NOOP("Stops", "Sheet metal has no section to bevel, so nothing holds the filler.")},
    {"rust_hole", thisHole, QT_TRANSLATE_NOOP("Stops", "Rust has eaten through the metal."),
     QT_TRANSLATE_NOOP("Stops", "The metal around it is thin and goes on rusting from behind.")},
    {"dent_too_deep", QT_TRANSLATE_NOOP("Stops", "Do not fill this dent yet"),
     QT_TRANSLATE_NOOP("Stops", "It is %1 deep; filling ends at %2."),
     QT_TRANSLATE_NOOP("Stops", "Thick filler on sheet metal shrinks, cracks and shows.")},
    {"hole_too_large", thisHole, QT_TRANSLATE_NOOP("Stops", "It is %1 across; filling ends at %2."),
     QT_TRANSLATE_NOOP("Stops", "Filler does not replace that much of a panel.")},
    {"no_filler_fits", QT_TRANSLATE_NOOP("Stops", "No filler fits here"),
     //: %1 is a substrate, %2 a damage
     QT_TRANSLATE_NOOP("Stops", "No loaded filler suits %1 with this damage: %2."),
     QT_TRANSLATE_NOOP("Stops", "No loaded sheet allows it, and nothing defaults to yes.")},
    {"gels_too_fast", notYet, QT_TRANSLATE_NOOP("Stops", "It would gel in %1; kneading alone takes %2."),
     QT_TRANSLATE_NOOP("Stops", "It would set before it is spread. Less hardener is not the way.")},
    {"overheats_in_any_lift", notYet, QT_TRANSLATE_NOOP("Stops", "Even a thin lift would pass %1 as it cures."),
     QT_TRANSLATE_NOOP("Stops", "Too hot a lift shrinks, cracks and shows through later.")},
    {"never_sands", notYet, QT_TRANSLATE_NOOP("Stops", "It would not sand within %1."),
     QT_TRANSLATE_NOOP("Stops", "Filler that cures so slowly may stay soft.")},
    {"sheet_times_unfit", badSheet,
     //: %1 and %2 are the earliest and the latest sanding time
     QT_TRANSLATE_NOOP("Stops", "Sanding from %1 to %2 would fit; its sheet says otherwise."),
     QT_TRANSLATE_NOOP("Stops", "No cure runs like that: a slip in one of the two times is likely.")},
    {"sheet_never_sands", badSheet, QT_TRANSLATE_NOOP("Stops", "By its sheet it never cures enough to be sanded."),
     QT_TRANSLATE_NOOP("Stops", "Its greatest conversion is too low: a slip in the sheet is likely.")},
    {"cure_unsolved", badSheet, QT_TRANSLATE_NOOP("Stops", "Its cure could not be worked out beyond %1."),
     QT_TRANSLATE_NOOP("Stops", "The sheet’s figures make it run away faster than can be told.")},
    {"panel_near_dew_point", notYet,
     QT_TRANSLATE_NOOP("Stops", "The panel’s margin over the dew point is %1; it needs %2."),
     QT_TRANSLATE_NOOP("Stops", "Water you cannot see settles on it and keeps filler off.")},
    {"panel_too_cold", notYet, QT_TRANSLATE_NOOP("Stops", "The panel is at %1; filling starts at %2."),
     QT_TRANSLATE_NOOP("Stops", "Filler on a cold panel stays soft and does not grip.")},
    {"panel_too_hot", notYet, QT_TRANSLATE_NOOP("Stops", "The panel is at %1; filling ends at %2."),
     QT_TRANSLATE_NOOP("Stops", "Filler on a hot panel gels before it wets the surface.")},
    {"air_too_cold", notYet, QT_TRANSLATE_NOOP("Stops", "The air is at %1; filling starts at %2."),
     QT_TRANSLATE_NOOP("Stops", "Cold filler and hardener cure slowly and unevenly.")},
    {"air_too_hot", notYet, QT_TRANSLATE_NOOP("Stops", "The air is at %1; filling ends at %2."),
     QT_TRANSLATE_NOOP("Stops", "The mix gels on the board before it is spread.")},
}};

const StopLine* find(const QString& code)
{
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [&](const StopLine& line) { return code == QLatin1StringView(line.code); });
    return found == lines.end() ? nullptr : &*found;
}

QString part(const QString& code, const char* StopLine::*member)
{
    const StopLine* line = find(code);
    return line ? inLanguage("Stops", line->*member) : u'[' + code + u']';
}

} // namespace

bool isStop(const QString& code) { return find(code) != nullptr; }

QString stopHeadline(const QString& code) { return part(code, &StopLine::headline); }

QString stopWrong(const QString& code) { return part(code, &StopLine::wrong); }

QString stopWhy(const QString& code) { return part(code, &StopLine::why); }

} // namespace strandbench::words
