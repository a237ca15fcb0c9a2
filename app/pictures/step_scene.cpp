// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_scene.h"

#include "pictures/step_marks.h"

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// The face that is up lies two units below the top of its box in the drawings of the acts.
constexpr double surfaceInBox = 2;
constexpr QRectF low(10, 62, 180, 32);  // below a tool in use
constexpr QRectF high(10, 52, 180, 42); // a deeper section, where its edges matter
constexpr QRectF over(10, 22, 180, 46); // with room for what is put behind it

using enum SceneGround;

std::vector<StepScene> made()
{
    return {
        {"gear_on", None, {}, nullptr, nullptr},
        {"own_tools", None, {}, nullptr, nullptr},
        {"wash", Above, {}, marks::keepOff, nullptr},
        {"degrease", Above, {}, nullptr, nullptr},
        {"degrease_little", Above, {}, marks::keepOff, nullptr},
        {"flash_off", Prepared, low, nullptr, nullptr},
        {"strip_paint", AbovePainted, {}, marks::bareBeyond, nullptr},
        {"cut_to_sound", Above, {}, marks::soundLine, nullptr},
        {"find_cracks", Above, {}, marks::cracksToFind, nullptr},
        {"stop_drill", Above, {}, marks::tipsToDrill, marks::framesOfDrilling},
        {"squeeze_out_off", Prepared, high, marks::squeezedOut, nullptr},
        {"dress_weld", Prepared, low, marks::weldBead, nullptr},
        {"dry", AsFound, low, nullptr, nullptr},
        {"bevel", Prepared, high, marks::bevel, marks::framesOfBevelling},
        {"bevel_both", Prepared, high, marks::bevelBoth, marks::framesOfBevelling},
        {"open_gouge", Prepared, high, marks::gouge, nullptr},
        {"bevel_upper_panel", Prepared, high, marks::upperPanel, nullptr},
        {"abrade_back", PreparedBack, low, nullptr, nullptr},
        {"backing_behind", Prepared, over, nullptr, nullptr},
        {"backing_through", Prepared, over, nullptr, nullptr},
        {"dam", Prepared, over, nullptr, nullptr},
        {"abrade_80", Prepared, low, nullptr, nullptr},
        {"dust_off", Above, {}, nullptr, nullptr},
        {"wipe_metal", Above, {}, nullptr, nullptr},
        {"read_panel", Prepared, low, nullptr, nullptr},
        {"guide_coat", AboveFilled, {}, nullptr, nullptr},
        {"sand_180", Filled, low, nullptr, nullptr},
        {"sand_320", Filled, low, nullptr, nullptr},
        {"dust_off_finish", AboveFilled, {}, nullptr, nullptr},
        {"inspect", Filled, low, nullptr, nullptr},
        {"cure_before_primer", Filled, low, nullptr, nullptr},
        {"straightedge", Filled, low, nullptr, nullptr},
        {"no_pinholes", Filled, low, nullptr, nullptr},
        {"nail_and_paper", Filled, low, nullptr, nullptr},
        {"tap_sound", Filled, low, nullptr, nullptr},
        {"no_edge", Filled, low, nullptr, nullptr},
        {"guide_coat_gone", None, {}, nullptr, nullptr},
    };
}

/// The filled repair from above: filler under a skim, feathered into the panel.
void filledFromAbove(const StepStage& stage)
{
    stage.panelFromAbove();
    const DamageKind kind = stage.drawing().damage.kind;
    QPainterPath skim;
    if (kind == DamageKind::WeldSeam || kind == DamageKind::BondSeam)
        skim.addRect(QRectF(4, 30, 192, 40));
    else
        skim.addEllipse(QPointF(100, 50), 58, 33);
    stage.piece(skim, Material::Finish, 0.25);
}

/// Draws the panel; returns where its section stands.
StagedSection layGround(const StepStage& stage, const StepScene& scene)
{
    switch (scene.ground) {
    case None:
        break;
    case Above:
        stage.panelFromAbove();
        stage.drawDamage();
        break;
    case AbovePainted:
        stage.panelFromAbove(true);
        break;
    case AboveFilled:
        filledFromAbove(stage);
        break;
    case AsFound:
        return stage.staged(scene.section, stage.asFound());
    case Prepared:
        return stage.staged(scene.section, stage.prepared());
    case PreparedBack: {
        SectionProgress turned = stage.prepared();
        turned.turned = true;
        return stage.staged(scene.section, turned);
    }
    case Filled:
        return stage.staged(scene.section, stage.finished());
    }
    return {};
}

} // namespace

const std::vector<StepScene>& stepScenes()
{
    static const std::vector<StepScene> scenes = made();
    return scenes;
}

const StepScene* sceneOf(const QString& step)
{
    // Steps whose act is the same on another material or at another moment.
    static const std::map<QString, QString> same{{u"flash_off_metal"_s, u"flash_off"_s},
                                                 {u"read_panel_metal"_s, u"read_panel"_s},
                                                 {u"abrade_80_metal"_s, u"abrade_80"_s}};
    const auto other = same.find(step);
    const QString& code = other == same.end() ? step : other->second;
    for (const StepScene& each : stepScenes())
        if (code == QLatin1StringView(each.code))
            return &each;
    return nullptr;
}

void playScene(const StepStage& stage, const StepScene& scene, int frame)
{
    const StagedSection section = layGround(stage, scene);
    QPointF by;
    if (scene.mark)
        by = scene.mark(stage, section, frame);
    else if (!scene.section.isEmpty())
        by = {0, section.surface - scene.section.top() - surfaceInBox};
    stage.act(QLatin1StringView(scene.code), by);
}

} // namespace strandbench
