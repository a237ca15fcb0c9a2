// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/questions.h"

#include "words/table.h"

#include <QtGlobal>

namespace strandbench::words {
namespace {

constexpr const char* context = "Questions";

constexpr Line sentences[] = {
    {"substrate", QT_TRANSLATE_NOOP("Questions", "What is this panel made of?")},
    {"damage_kind", QT_TRANSLATE_NOOP("Questions", "What is wrong with it?")},
    {"weld", QT_TRANSLATE_NOOP("Questions", "How is this seam welded?")},
    {"adhesive_cured", QT_TRANSLATE_NOOP("Questions", "Has the adhesive in this seam cured?")},
    {"size", QT_TRANSLATE_NOOP("Questions", "How large is the damage?")},
    {"rear_access", QT_TRANSLATE_NOOP("Questions", "Can you reach it from behind?")},
    {"surface", QT_TRANSLATE_NOOP("Questions", "What is on the surface now?")},
    {"zone", QT_TRANSLATE_NOOP("Questions", "What is this part of the vehicle for?")},
    {"moisture", QT_TRANSLATE_NOOP("Questions", "Is it dry right through?")},
    {"core", QT_TRANSLATE_NOOP("Questions", "What is inside the laminate?")},
    {"reading", QT_TRANSLATE_NOOP("Questions", "Read the air, the panel and the humidity")},
};

constexpr Line substrates[] = {
    //: how to tell the answer: one line on its button
    {"frp", QT_TRANSLATE_NOOP("Questions", "glass cloth or mat at the broken edge")},
    {"smc", QT_TRANSLATE_NOOP("Questions", "short loose strands, smooth on both faces")},
    {"steel", QT_TRANSLATE_NOOP("Questions", "a magnet holds, the zinc gauge reads nothing")},
    {"galvanised", QT_TRANSLATE_NOOP("Questions", "a magnet holds, the zinc gauge reads zinc")},
    {"aluminium", QT_TRANSLATE_NOOP("Questions", "no magnet holds, bright and soft under a file")},
    {"thermoplastic", QT_TRANSLATE_NOOP("Questions", "marked on the back, such as >PP< or >ABS<")},
    {"flexible_polyurethane", QT_TRANSLATE_NOOP("Questions", "bends in the hand, marked >PUR<")},
    {"carbon", QT_TRANSLATE_NOOP("Questions", "black strands, the ohmmeter shows a path")},
    {"cast_thermoset", QT_TRANSLATE_NOOP("Questions", "breaks like china, no fibre at the edge")},
    {"magnesium", QT_TRANSLATE_NOOP("Questions", "no magnet holds, very light, marked Mg")},
    {"unknown", QT_TRANSLATE_NOOP("Questions", "none of these is certain")},
};

constexpr Line damages[] = {
    {"gouge", QT_TRANSLATE_NOOP("Questions", "a groove that does not go through")},
    {"dent", QT_TRANSLATE_NOOP("Questions", "pushed in, not torn")},
    {"crack", QT_TRANSLATE_NOOP("Questions", "split, nothing missing")},
    {"hole", QT_TRANSLATE_NOOP("Questions", "goes right through, material is missing")},
    {"rust_hole", QT_TRANSLATE_NOOP("Questions", "rust has eaten through")},
    {"weld_seam", QT_TRANSLATE_NOOP("Questions", "sheets joined by welding")},
    {"bond_seam", QT_TRANSLATE_NOOP("Questions", "panels joined by adhesive")},
};

constexpr Line welds[] = {
    {"solid", QT_TRANSLATE_NOOP("Questions", "one weld without a gap from end to end")},
    {"spot", QT_TRANSLATE_NOOP("Questions", "round spots, the sheets loose between them")},
    {"stitch", QT_TRANSLATE_NOOP("Questions", "short welds with gaps between them")},
};

constexpr Line surfaces[] = {
    {"bare", QT_TRANSLATE_NOOP("Questions", "the panel itself, nothing on it")},
    {"abraded_epoxy", QT_TRANSLATE_NOOP("Questions", "cured right through and sanded dull")},
    {"paint", QT_TRANSLATE_NOOP("Questions", "any paint where filler is to go")},
    {"old_filler", QT_TRANSLATE_NOOP("Questions", "filler that nobody knows")},
    {"sealer", QT_TRANSLATE_NOOP("Questions", "soft, takes a nail mark")},
    {"rust", QT_TRANSLATE_NOOP("Questions", "brown or black, in the pits too")},
    {"rust_converter", QT_TRANSLATE_NOOP("Questions", "black or blue film over old rust")},
    {"etch_primer", QT_TRANSLATE_NOOP("Questions", "thin, acid, often yellow or grey-green")},
    {"uncured_primer", QT_TRANSLATE_NOOP("Questions", "smells, or smears under a solvent cloth")},
    {"flux", QT_TRANSLATE_NOOP("Questions", "soft grey metal, brown residue")},
};

constexpr Line zones[] = {
    {"cosmetic", QT_TRANSLATE_NOOP("Questions", "skin, skirt, fairing: nothing depends on it")},
    {"structural", QT_TRANSLATE_NOOP("Questions", "pillar, rail, or within 30 cm of brake, steering, suspension")},
    {"restraint", QT_TRANSLATE_NOOP("Questions", "belt or seat mounting, glass flange, airbag, high voltage")},
    {"sensor", QT_TRANSLATE_NOOP("Questions", "radar, camera or ultrasound looks through it")},
    {"fuel_or_pressure", QT_TRANSLATE_NOOP("Questions", "tank, line or air vessel")},
};

constexpr Line moistures[] = {
    {"dry", QT_TRANSLATE_NOOP("Questions", "no mist under taped film, front and back")},
    {"damp", QT_TRANSLATE_NOOP("Questions", "wet, dark, or mist under taped film")},
};

constexpr Line cores[] = {
    {"none", QT_TRANSLATE_NOOP("Questions", "solid laminate, nothing between two skins")},
    {"foam", QT_TRANSLATE_NOOP("Questions", "two skins with foam between them")},
    {"dry_wood", QT_TRANSLATE_NOOP("Questions", "two skins with sound, dry wood")},
    {"wet_wood", QT_TRANSLATE_NOOP("Questions", "wood that is dark, soft or wet")},
};

constexpr Line yes[] = {
    {"adhesive_cured", QT_TRANSLATE_NOOP("Questions", "Cured")},
    {"rear_access", QT_TRANSLATE_NOOP("Questions", "Yes, both faces")},
};
constexpr Line no[] = {
    {"adhesive_cured", QT_TRANSLATE_NOOP("Questions", "Not cured")},
    {"rear_access", QT_TRANSLATE_NOOP("Questions", "No, one face only")},
};
constexpr Line yesHints[] = {
    {"adhesive_cured", QT_TRANSLATE_NOOP("Questions", "its sheet’s time is over, a nail leaves no mark")},
    {"rear_access", QT_TRANSLATE_NOOP("Questions", "hand and tool get there")},
};
constexpr Line noHints[] = {
    {"adhesive_cured", QT_TRANSLATE_NOOP("Questions", "soft, or nobody knows when it was laid")},
    {"rear_access", QT_TRANSLATE_NOOP("Questions", "closed behind, or too tight to work")},
};

} // namespace

QString questionSentence(const QString& code) { return lookUp(context, sentences, code); }

QString hintOf(NameOf what, const QString& code)
{
    switch (what) {
    case NameOf::Substrate:
        return lookUp(context, substrates, code);
    case NameOf::Damage:
        return lookUp(context, damages, code);
    case NameOf::Weld:
        return lookUp(context, welds, code);
    case NameOf::Surface:
        return lookUp(context, surfaces, code);
    case NameOf::Zone:
        return lookUp(context, zones, code);
    case NameOf::Moisture:
        return lookUp(context, moistures, code);
    case NameOf::Core:
        return lookUp(context, cores, code);
    case NameOf::Filler:
    case NameOf::Face:
    case NameOf::Phase:
    case NameOf::Station:
    case NameOf::Question:
        break;
    }
    return u'[' + code + u']';
}

QString yesNoTitle(const QString& question, bool answer)
{
    return answer ? lookUp(context, yes, question) : lookUp(context, no, question);
}

QString yesNoHint(const QString& question, bool answer)
{
    return answer ? lookUp(context, yesHints, question) : lookUp(context, noHints, question);
}

} // namespace strandbench::words
