// SPDX-License-Identifier: GPL-3.0-or-later
// Steps as an apprentice meets them: variants of one act, what harms, and which order matters (common practice, no
// source where none is named).
#include "practice/model_answer.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Pair = std::pair<QString, QString>;

/// Acts that stand each in the place of the other; to do the wrong one is one mistake.
const std::vector<Pair>& rivals()
{
    static const std::vector<Pair> all{{u"degrease"_s, u"degrease_little"_s},
                                       {u"bevel"_s, u"bevel_both"_s},
                                       {u"backing_behind"_s, u"backing_through"_s}};
    return all;
}

/// Acts of which neither spoils the other.
const std::vector<Pair>& free()
{
    static const std::vector<Pair> all{{u"own_tools"_s, u"wash"_s},
                                       {u"own_tools"_s, u"degrease"_s},
                                       {u"own_tools"_s, u"flash_off"_s},
                                       {u"squeeze_out_off"_s, u"dry"_s},
                                       {u"dress_weld"_s, u"dry"_s},
                                       {u"bevel"_s, u"abrade_back"_s},
                                       {u"bevel_both"_s, u"abrade_back"_s},
                                       {u"abrade_back"_s, u"dam"_s},
                                       {u"backing_behind"_s, u"abrade_80"_s},
                                       {u"backing_through"_s, u"abrade_80"_s},
                                       {u"dam"_s, u"abrade_80"_s},
                                       {u"dam"_s, u"dust_off"_s},
                                       {u"dam"_s, u"read_panel"_s}};
    return all;
}

} // namespace

const std::vector<QString>& harmfulSteps()
{
    static const std::vector<QString> all{u"water_on_open_fibre"_s,     u"solvent_on_ground_fibre"_s,
                                          u"blow_at_line_pressure"_s,   u"lamp_on_wet_filler"_s,
                                          u"steel_disc_on_aluminium"_s, u"fill_over_paint"_s};
    return all;
}

QString actOf(const QString& step)
{
    if (step == u"abrade_80_metal"_s)
        return u"abrade_80"_s;
    if (step == u"read_panel_metal"_s)
        return u"read_panel"_s;
    return step;
}

QString insteadOfStep(const QString& step)
{
    for (const auto& [one, other] : rivals()) {
        if (step == one)
            return other;
        if (step == other)
            return one;
    }
    return {};
}

bool orderMatters(const QString& before, const QString& after)
{
    return std::ranges::none_of(free(), [&](const Pair& each) {
        return (each.first == before && each.second == after) || (each.first == after && each.second == before);
    });
}

} // namespace strandbench
