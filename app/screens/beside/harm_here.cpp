// SPDX-License-Identifier: GPL-3.0-or-later
// What is met at the present step of a repair, and the key that says so there.
#include "exchange/harm.h"
#include "repair/mixing.h"
#include "screens/beside/ghs_sign.h"
#include "screens/beside/harm_screen.h"
#include "screens/job/in_hand.h"
#include "theme/sizes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(HarmScreen)
};

std::optional<PanelKind> panelOf(const Repair& repair)
{
    const auto substrate = repair.assessment.substrate;
    if (!substrate)
        return std::nullopt;
    switch (*substrate) {
    case Substrate::Laminate:
    case Substrate::Smc:
        return PanelKind::Composite;
    case Substrate::Steel:
    case Substrate::Galvanised:
        return PanelKind::Steel;
    case Substrate::Aluminium:
        return PanelKind::Aluminium;
    default:
        return std::nullopt; // none that is filled
    }
}

const ProductSheet* sheetOf(const Surroundings& around, const Repair& repair, const BatchRef& batch)
{
    if (const BatchRun* run = repair.run(batch))
        return around.bench.planning().catalogue.version(run->mixed.sheetId, run->mixed.sheetHash);
    return inhand::batchInUse(repair, batch, around).sheet;
}

QString placeOf(const Repair& repair, Stage stage, int index)
{
    if (stage == Stage::HandOver || !repair.plan)
        return {};
    const std::vector<Step>& steps = stage == Stage::Finish ? repair.plan->finishing : repair.plan->prep;
    return index < static_cast<int>(steps.size()) ? steps[static_cast<std::size_t>(index)].code : QString();
}

TapButton::Picture pictureOf(const HarmHere& here)
{
    return [pictograms = pictogramsOf(here.met)](QPainter& painter, const QRectF& room) {
        paintGhsPictograms(painter, room, pictograms);
    };
}

} // namespace

HarmHere harmHere(const Surroundings& around, const Repair& repair, const QString& place,
                  const std::optional<BatchRef>& batch)
{
    const ProductSheet* sheet = batch ? sheetOf(around, repair, *batch) : nullptr;
    return {place, sheet ? sheet->name : QString(), metAt(builtInHarm(), place, panelOf(repair), sheet)};
}

HarmHere harmHere(const Surroundings& around, const Repair& repair, const std::optional<Look>& look)
{
    if (look)
        return look->at == Look::At::Step
                   ? harmHere(around, repair, placeOf(repair, look->stage, look->index), std::nullopt)
                   : HarmHere{};
    const NextStep next = nextStep(repair);
    switch (next.station) {
    case Station::Prepare:
        return harmHere(around, repair, placeOf(repair, Stage::Prepare, next.index), std::nullopt);
    case Station::Finish:
        return harmHere(around, repair, placeOf(repair, Stage::Finish, next.index), std::nullopt);
    default:
        return harmHere(around, repair, codeOf(next.station), next.batch);
    }
}

std::optional<SideKey> harmKey(const HarmHere& here, const Ways& ways)
{
    if (!ways.harm || here.met.empty())
        return std::nullopt;
    SideKey key;
    key.name = u"harm"_s;
    key.title = Says::tr("Hazards");
    key.tapped = ways.harm;
    if (const auto pictograms = pictogramsOf(here.met); !pictograms.empty()) {
        key.picture = pictureOf(here);
        key.spoken = spokenPictograms(pictograms);
    } else {
        key.sign = Pictogram::Caution;
    }
    return key;
}

TapButton* makeHarmKey(const Theme& theme, const HarmHere& here, const Ways& ways, QWidget* parent)
{
    const auto key = harmKey(here, ways);
    return key ? makeSideKey(theme, *key, parent) : nullptr;
}

} // namespace strandbench
