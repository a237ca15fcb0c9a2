// SPDX-License-Identifier: GPL-3.0-or-later
// The walks: each substrate with the damage that it most often has in a bus depot.
#include "walk/demo_jobs.h"
#include "walk/every_job.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Entries = std::map<QString, QString>;

WalkedJob walked(const QString& name, DemoJob job, const Entries& answers, const Entries& figures)
{
    for (const auto& [question, answer] : answers)
        job.answers[question] = answer;
    for (const auto& [field, figure] : figures)
        job.figures[field] = figure;
    return {name, std::move(job)};
}

Entries damage(const QString& substrate, const QString& kind)
{
    return {{u"substrate"_s, substrate}, {u"damage_kind"_s, kind}};
}

Entries size(const QString& length, const QString& width, const QString& depth, const QString& thickness)
{
    return {
        {u"length_mm"_s, length}, {u"width_mm"_s, width}, {u"depth_mm"_s, depth}, {u"panel_thickness_mm"_s, thickness}};
}

WalkedJob holeFromOneFace()
{
    Entries answers = damage(u"frp"_s, u"hole"_s);
    answers[u"rear_access"_s] = u"no"_s;
    return walked(u"hole_frp_one_face"_s, anyJob(u"4432"_s, u"Bumper corner, left"_s), answers,
                  size(u"42"_s, u"34"_s, {}, u"5"_s));
}

WalkedJob galvanisedGouge(bool epoxyFirst)
{
    Entries answers = damage(u"galvanised"_s, u"gouge"_s);
    if (epoxyFirst)
        answers[u"surface"_s] = u"abraded_epoxy"_s;
    return walked(epoxyFirst ? u"gouge_galvanised_epoxy"_s : u"gouge_galvanised"_s,
                  anyJob(epoxyFirst ? u"4436"_s : u"4435"_s, u"Battery door"_s), answers,
                  size(u"120"_s, u"25"_s, u"0.8"_s, u"1.5"_s));
}

} // namespace

DemoJob anyJob(const QString& number, const QString& panel)
{
    return {number,
            panel,
            u"Ada"_s,
            {{u"substrate"_s, u"frp"_s},
             {u"damage_kind"_s, u"gouge"_s},
             {u"weld"_s, u"solid"_s},
             {u"adhesive_cured"_s, u"yes"_s},
             {u"rear_access"_s, u"yes"_s},
             {u"surface"_s, u"bare"_s},
             {u"zone"_s, u"cosmetic"_s},
             {u"moisture"_s, u"dry"_s},
             {u"core"_s, u"none"_s}},
            {{u"length_mm"_s, u"80"_s},
             {u"width_mm"_s, u"40"_s},
             {u"depth_mm"_s, u"2"_s},
             {u"panel_thickness_mm"_s, u"4"_s},
             {u"bevel_ratio"_s, u"4"_s},
             {u"air_c"_s, u"21"_s},
             {u"panel_c"_s, u"20.5"_s},
             {u"humidity_percent"_s, u"48"_s}},
            {{u"air_c"_s, u"22"_s}, {u"panel_c"_s, u"21"_s}, {u"humidity_percent"_s, u"46"_s}}};
}

const std::vector<WalkedJob>& everyWalk()
{
    static const std::vector<WalkedJob> all{
        walked(u"crack_frp"_s, anyJob(u"4431"_s, u"Front apron"_s), damage(u"frp"_s, u"crack"_s),
               size(u"120"_s, {}, u"2.5"_s, u"4"_s)),
        holeFromOneFace(),
        {u"gouge_frp"_s, roofCap()},
        walked(u"dent_steel"_s, anyJob(u"4433"_s, u"Wheel arch, right"_s), damage(u"steel"_s, u"dent"_s),
               size(u"160"_s, u"90"_s, u"3.5"_s, u"1.2"_s)),
        galvanisedGouge(false),
        galvanisedGouge(true),
        walked(u"dent_aluminium"_s, anyJob(u"4437"_s, u"Luggage door, left"_s), damage(u"aluminium"_s, u"dent"_s),
               size(u"90"_s, u"60"_s, u"2.5"_s, u"2"_s)),
        walked(u"weld_seam_steel"_s, anyJob(u"4438"_s, u"Engine cover"_s), damage(u"steel"_s, u"weld_seam"_s),
               size(u"400"_s, u"25"_s, u"1.5"_s, u"1.5"_s)),
        walked(u"bond_seam_frp"_s, anyJob(u"4439"_s, u"Skirt panel, left front"_s), damage(u"frp"_s, u"bond_seam"_s),
               size(u"300"_s, u"20"_s, u"1.5"_s, u"4"_s)),
        walked(u"bond_seam_smc"_s, anyJob(u"4440"_s, u"Luggage door, right"_s), damage(u"smc"_s, u"bond_seam"_s),
               size(u"240"_s, u"20"_s, u"1.5"_s, u"3"_s)),
        {u"hole_smc"_s, skirtPanel()},
        walked(u"hole_smc_with_dam"_s, anyJob(u"4441"_s, u"Bumper corner, right"_s), damage(u"smc"_s, u"hole"_s),
               size(u"40"_s, u"30"_s, {}, u"4"_s)),
    };
    return all;
}

} // namespace strandbench
