// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/demo_jobs.h"

using namespace Qt::StringLiterals;

namespace strandbench {

DemoJob skirtPanel()
{
    return {u"4421"_s,
            u"Skirt panel, right rear"_s,
            u"Ada"_s,
            {{u"substrate"_s, u"smc"_s},
             {u"damage_kind"_s, u"hole"_s},
             {u"rear_access"_s, u"yes"_s},
             {u"surface"_s, u"bare"_s},
             {u"zone"_s, u"cosmetic"_s},
             {u"moisture"_s, u"dry"_s}},
            {{u"length_mm"_s, u"52"_s},
             {u"width_mm"_s, u"38"_s},
             {u"panel_thickness_mm"_s, u"4"_s},
             {u"bevel_ratio"_s, u"4"_s},
             {u"air_c"_s, u"21"_s},
             {u"panel_c"_s, u"20.5"_s},
             {u"humidity_percent"_s, u"48"_s}},
            {{u"air_c"_s, u"22"_s}, {u"panel_c"_s, u"21"_s}, {u"humidity_percent"_s, u"46"_s}}};
}

DemoJob roofCap()
{
    return {u"4417"_s,
            u"Roof cap, front"_s,
            u"Ravi"_s,
            {{u"substrate"_s, u"frp"_s},
             {u"damage_kind"_s, u"gouge"_s},
             {u"surface"_s, u"bare"_s},
             {u"zone"_s, u"cosmetic"_s},
             {u"moisture"_s, u"dry"_s},
             {u"core"_s, u"none"_s}},
            {{u"length_mm"_s, u"140"_s},
             {u"width_mm"_s, u"60"_s},
             {u"depth_mm"_s, u"3"_s},
             {u"panel_thickness_mm"_s, u"5"_s},
             {u"air_c"_s, u"20"_s},
             {u"panel_c"_s, u"19.5"_s},
             {u"humidity_percent"_s, u"50"_s}},
            {{u"air_c"_s, u"20.5"_s}, {u"panel_c"_s, u"20"_s}, {u"humidity_percent"_s, u"50"_s}}};
}

DemoJob wheelArch()
{
    return {u"4402"_s, u"Wheel arch, left"_s,
            u"Ada"_s,  {{u"substrate"_s, u"steel"_s}, {u"damage_kind"_s, u"weld_seam"_s}, {u"weld"_s, u"spot"_s}},
            {},        {}};
}

Settings demoSettings()
{
    Settings settings;
    settings.people = {u"Ada"_s, u"Ravi"_s};
    settings.person = u"Ada"_s;
    return settings;
}

} // namespace strandbench
