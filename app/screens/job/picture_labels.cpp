// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/picture_labels.h"

#include <QCoreApplication>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(PictureLabels)
};

/// "74 mm over the bevel, 4 : 1", or the opening alone where nothing is bevelled: the one that the section shows.
QString openingLabel(const Assessment& assessment, const Words& words)
{
    const Damage& damage = *assessment.damage;
    const QString opening = words.length(SectionDrawing::of(assessment).drawnOpening());
    const bool bevelled =
        (damage.kind == DamageKind::Hole || damage.kind == DamageKind::Crack) && damage.bevelRatio > 0;
    if (!bevelled)
        return opening;
    return Says::tr("%1 over the bevel, %2 : 1").arg(opening, words.number(damage.bevelRatio, 1));
}

} // namespace

SectionLabels sectionLabels(const Assessment& assessment, const RepairPlan& plan, const Words& words)
{
    SectionLabels labels;
    for (const Lift& lift : plan.lifts)
        labels.lifts << Says::tr("%1: %2, %3")
                            .arg(words.face(lift.face), words.filler(lift.filler), words.fineLength(lift.thickness));
    labels.finish = Says::tr("finish %1 (limit %2)")
                        .arg(words.fineLength(plan.finish.thickness), words.fineLength(plan.finish.limitInAll));
    labels.opening = openingLabel(assessment, words);
    const QString panel = words.fineLength(assessment.damage->panelThickness);
    labels.exaggeration = [panel, &words](double times) {
        return std::abs(times - 1.0) < 0.01
                   ? Says::tr("%1 panel; depth drawn to the scale of the width").arg(panel)
                   : Says::tr("%1 panel; depth drawn %2 times as large as width").arg(panel, words.number(times, 1));
    };
    return labels;
}

PuddleLabels puddleLabels(const Mix& mix, const Words& words)
{
    return {Says::tr("True size"), Says::tr("not true size"), words.length(mix.bead), words.length(mix.puddle),
            words.units()};
}

} // namespace strandbench
