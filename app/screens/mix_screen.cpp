// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/mix_screen.h"

#include "pictures/puddle_picture.h"
#include "screens/phrases.h"
#include "screens/picture_labels.h"
#include "screens/caution_list.h"
#include "theme/sizes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

bool weighed(const Mix& mix, const ProductSheet* sheet) { return sheet && mix.filler < smallestBeadMix(*sheet); }

} // namespace

const QString& sheetIdOf(const RepairPlan& plan, BatchRef ref)
{
    return ref.finishing ? plan.finishSheetId : plan.sheetId;
}

const Batch& batchOf(const RepairPlan& plan, BatchRef ref)
{
    const std::vector<Batch>& batches = ref.finishing ? plan.finish.batches : plan.batches;
    return batches.at(static_cast<std::size_t>(ref.index));
}

QString batchContext(const Repair& repair, BatchRef ref, const Words& words)
{
    const RepairPlan& plan = *repair.plan;
    const std::vector<Batch>& batches = ref.finishing ? plan.finish.batches : plan.batches;
    const QString which = phrases::batchOf(ref.index + 1, static_cast<int>(batches.size()));
    if (ref.finishing)
        return which + u" · "_s + words.filler(plan.finish.filler);
    const Lift& lift = plan.lifts.at(static_cast<std::size_t>(batchOf(plan, ref).lift));
    return which + u" · "_s + words.face(lift.face) + u" · "_s + words.filler(lift.filler);
}

std::optional<BatchForecast> forecastOf(const Repair& repair, BatchRef ref, Fraction hardener,
                                        const PlanningSet& planning)
{
    const RepairPlan& plan = *repair.plan;
    const Batch& batch = batchOf(plan, ref);
    const std::optional<CureCase>& layer =
        ref.finishing ? plan.finish.cureCase : plan.lifts.at(static_cast<std::size_t>(batch.lift)).cureCase;
    const ProductSheet* sheet = planning.catalogue.byId(sheetIdOf(plan, ref));
    if (!layer || !sheet || !repair.lastReading)
        return std::nullopt;
    const CureAnswer<BatchForecast> forecast =
        forecastBatch({batch, *layer, *sheet}, *repair.lastReading, hardener, planning.engine);
    return forecast ? std::optional(*forecast) : std::nullopt;
}

HardenerIn hardenerIn(const Repair& repair, BatchRef ref, Mass hardener, const std::optional<BatchForecast>& forecast)
{
    const Batch& batch = batchOf(*repair.plan, ref);
    HardenerIn act{ref, batch.mix.filler, hardener, sheetIdOf(*repair.plan, ref), {}, batch.times, std::nullopt};
    if (forecast) {
        act.times = forecast->times;
        act.cureCase = forecast->cureCase;
    }
    return act;
}

MixScreen::MixScreen(const Surroundings& around, const Repair& repair, BatchRef ref, const Ways& ways, QWidget* parent)
    : Screen(around, u"screen_mix"_s, parent), m_ways(ways)
{
    const Batch& batch = batchOf(*repair.plan, ref);
    const PlanningSet& planning = around.bench.planning();
    const ProductSheet* sheet = planning.catalogue.byId(sheetIdOf(*repair.plan, ref));
    const Fraction share = batch.mix.hardenerShare;
    m_forecast = forecastOf(repair, ref, share, planning);
    const auto less = forecastOf(repair, ref, Fraction::ofOne(share.value() * 0.75), planning);
    const auto more = forecastOf(repair, ref, Fraction::ofOne(share.value() * 1.25), planning);
    if (less && more)
        m_quarterOff = tr("a quarter less gels in %1, a quarter more in %2")
                           .arg(words().duration(less->times.gel), words().duration(more->times.gel));
    buildFrame(contextOf(repair, words()) + u" · "_s + batchContext(repair, ref, words()),
               weighed(batch.mix, sheet) ? tr("Knead both, then weigh these two")
                                         : tr("Knead both, then lay this puddle and bead"));
    buildCards(batch, sheet);
    answers()->setWayOn(tr("Hardener in: start"), TapButton::Kind::Way);
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, repair, ref, hardener = batch.mix.hardener] {
        Q_EMIT acts({hardenerIn(repair, ref, hardener, m_forecast)});
    });
}

void MixScreen::buildCards(const Batch& batch, const ProductSheet* sheet)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(px(2));
    const std::vector<CautionText> cautions = words().cautionsAt(Station::Mix);
    column->addWidget(cautionStrip(cautions, theme(), this, around().upright ? 2 : static_cast<int>(cautions.size())));
    auto* row = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    row->setSpacing(px(sizes::gap));
    row->addWidget(puddleCard(batch), 5);
    row->addWidget(figuresCard(batch, sheet), 5);
    if (m_forecast && sheet)
        row->addWidget(beadKey(), 3);
    column->addLayout(row, 1);
    content()->addLayout(column, 1);
}

QWidget* MixScreen::beadKey()
{
    auto* key = new TapButton(theme(), u"bead_as_laid"_s, TapButton::Kind::Plain, this);
    key->setTitle(tr("More or less hardener?"));
    key->setSecondLine(m_quarterOff);
    connect(key, &TapButton::clicked, this, [this] { m_ways.beadAsLaid(); });
    return key;
}

QWidget* MixScreen::puddleCard(const Batch& batch)
{
    auto* box = card(u"puddle_card"_s);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(px(2), px(1), px(2), px(1));
    column->setSpacing(px(1));
    auto* picture = new PuddlePicture(theme(), u"puddle"_s, box);
    picture->setMix(batch.mix, puddleLabels(batch.mix, words()));
    picture->setAccessibleName(tr("Puddle and bead, drawn to size"));
    column->addWidget(picture, 1);
    column->addWidget(label(u"mix_how"_s, TextRole::Small,
                            tr("Hold the board beside the glass. Straight bead, puddle %1 high.")
                                .arg(words().fineLength(batch.mix.puddleHeight)),
                            Role::MutedInk));
    return box;
}

QWidget* MixScreen::figuresCard(const Batch& batch, const ProductSheet* sheet)
{
    auto* box = card(u"mix_card"_s);
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    lines->setSpacing(px(0.2));
    const Mix& mix = batch.mix;
    const auto figure = [&](const QString& name, const QString& caption, const QString& value, Role ink) {
        lines->addWidget(label(name + u"_caption"_s, TextRole::Small, caption, Role::MutedInk));
        lines->addWidget(label(name, TextRole::BigFigure, value, ink, true), 1);
    };
    if (weighed(mix, sheet)) {
        figure(u"mix_weigh"_s, tr("Weigh: filler + hardener"), phrases::massPair(mix, words()), Role::Ink);
        lines->addWidget(label(u"mix_small"_s, TextRole::Small,
                               tr("Under %1 a bead is too coarse.").arg(words().mass(smallestBeadMix(*sheet))),
                               Role::MutedInk));
        figure(u"mix_puddle"_s, tr("Puddle across"), words().length(mix.puddle), Role::Ink);
    } else {
        figure(u"mix_puddle"_s, tr("Puddle across"), words().length(mix.puddle), Role::Ink);
        figure(u"mix_bead"_s, tr("Hardener bead (%1)").arg(phrases::beadBand(mix, *sheet, words())),
               words().length(mix.bead), Role::HardenerFill);
        figure(u"mix_weigh"_s, tr("or weigh"), phrases::massPair(mix, words()), Role::Ink);
    }
    const Duration board = m_forecast ? m_forecast->times.boardGel : batch.times.boardGel;
    lines->addWidget(label(u"mix_gel"_s, TextRole::Small,
                           tr("sets on the board in about %1").arg(words().longDuration(board)), Role::MutedInk));
    return box;
}

} // namespace strandbench
