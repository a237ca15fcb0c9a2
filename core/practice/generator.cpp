// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/generator.h"

#include "practice/drawing.h"
#include "practice/inference.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Hide = void (*)(Evidence&);

/// The tests that a panel may do without, where the others still tell it.
const std::vector<Hide>& hides()
{
    static const std::vector<Hide> all{
        [](Evidence& e) { e.magnetBare.reset(); }, [](Evidence& e) { e.zincHere.reset(); },
        [](Evidence& e) { e.zincBeside.reset(); }, [](Evidence& e) { e.conducts.reset(); },
        [](Evidence& e) { e.edge.reset(); },       [](Evidence& e) { e.tap.reset(); },
        [](Evidence& e) { e.sanded.reset(); },     [](Evidence& e) { e.bends.reset(); },
        [](Evidence& e) { e.fizzes.reset(); },     [](Evidence& e) { e.rub.reset(); },
        [](Evidence& e) { e.nailMarks.reset(); },  [](Evidence& e) { e.marking.reset(); },
    };
    return all;
}

/// Takes tests away, one by one, as long as the rest tells all.
void hideSome(PracticePanel& panel, practice::Dice& dice)
{
    for (const Hide hide : hides()) {
        if (!dice.percent(45))
            continue;
        PracticePanel poorer = panel;
        hide(poorer.shown);
        if (unanswered(poorer).isEmpty())
            panel = std::move(poorer);
    }
}

/// What makes a material one that cannot be told: neither edge nor sanding nor a marking.
void hideMaterial(Evidence& shown)
{
    shown.edge.reset();
    shown.sanded.reset();
    shown.marking.reset();
    shown.bends.reset();
    shown.tap.reset();
}

} // namespace

PracticePanel generatedPanel(quint64 seed)
{
    practice::Dice dice(seed);
    PracticePanel panel;
    panel.id = u"g"_s + QString::number(seed);
    panel.truth = practice::drawTruth(dice);
    panel.truth.panel = panel.id;
    panel.shown = practice::drawEvidence(panel.truth, dice);
    if (panel.truth.substrate == Substrate::Unknown)
        hideMaterial(panel.shown);
    hideSome(panel, dice);
    for (const auto& [trap, code] : Codes<TrapKind>::table)
        if (isLaid(trap, panel))
            panel.traps.push_back(trap);
    return panel;
}

} // namespace strandbench
