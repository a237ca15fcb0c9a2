// SPDX-License-Identifier: GPL-3.0-or-later
#include "record_figures.h"

namespace strandbench::test {
namespace {

class Figures {
public:
    Figures(const JobRecord& record, const Words& words) : m_record(record), m_words(words) {}

    QStringList all()
    {
        m_all << m_words.longDuration(m_record.lasted) << m_words.clockTime(m_record.repair.takenInAt);
        for (const AnswerRecord& each : m_record.answers) {
            if (const auto* size = std::get_if<DamageSize>(&each.value))
                damage(*size);
            if (const auto* reading = std::get_if<Reading>(&each.value))
                this->reading(*reading);
        }
        for (const PlanRecord& each : m_record.plans)
            plan(each.accepted.plan);
        for (const ReadingRecord& each : m_record.readings) {
            reading(each.reading);
            m_all << m_words.temperature(each.dewPoint) << m_words.temperatureStep(each.margin)
                  << m_words.clockTime(each.told.at);
        }
        for (const BatchRecord& each : m_record.batches)
            batch(each);
        for (const LayerRecord& each : m_record.layers)
            m_all << m_words.mass(each.mixed)
                  << (each.finishing ? m_words.thickness(each.thickness) : m_words.fineLength(each.thickness));
        for (const StepRecord& each : m_record.steps)
            m_all << m_words.clockTime(each.told.at);
        return m_all;
    }

private:
    void damage(const DamageSize& size)
    {
        m_all << m_words.length(size.width) << m_words.fineLength(size.panelThickness);
    }

    void reading(const Reading& reading)
    {
        m_all << m_words.temperature(reading.air) << m_words.temperature(reading.panel)
              << m_words.percent(reading.humidity);
    }

    void plan(const RepairPlan& plan)
    {
        m_all << m_words.mass(plan.fillerTotal) << m_words.hardener(plan.hardenerTotal) << m_words.volume(plan.cavity)
              << m_words.volume(plan.allowances.proud) << m_words.volume(plan.allowances.shrinkage)
              << m_words.mass(plan.allowances.boardLoss) << m_words.temperature(*plan.peakLimit)
              << m_words.thickness(plan.finish.thickness) << m_words.thickness(plan.finish.limitInAll)
              << m_words.thickness(plan.finish.limitACoat) << m_words.longDuration(plan.readyForPrimer);
        for (const Lift& each : plan.lifts)
            m_all << m_words.fineLength(each.thickness) << m_words.temperature(*each.peak);
        for (const auto* batches : {&plan.batches, &plan.finish.batches})
            for (const Batch& each : *batches)
                m_all << m_words.mass(each.mix.filler) << m_words.hardener(each.mix.hardener)
                      << m_words.length(each.mix.puddle) << m_words.fineLength(each.mix.puddleHeight)
                      << m_words.length(each.mix.bead) << m_words.duration(each.times.boardGel)
                      << m_words.duration(each.times.gel) << m_words.duration(each.times.sand);
    }

    void batch(const BatchRecord& batch)
    {
        m_all << m_words.mass(batch.planned.filler) << m_words.hardener(batch.planned.hardener)
              << m_words.mass(batch.mixed.filler) << m_words.hardener(batch.mixed.hardener)
              << m_words.percent(batch.hardenerShare) << m_words.duration(batch.mixed.times.boardGel)
              << m_words.duration(batch.mixed.times.gel) << m_words.duration(batch.mixed.times.sand)
              << m_words.clockTime(batch.hardenerIn.at);
        for (const auto& each : {batch.edgesClear, batch.boardGelled, batch.panelGelled, batch.sands})
            if (each)
                m_all << m_words.duration(batch.since(*each));
        if (!batch.mixed.lot.isEmpty())
            m_all << batch.mixed.lot << batch.mixed.hardenerLot;
    }

    const JobRecord& m_record;
    const Words& m_words;
    QStringList m_all;
};

} // namespace

QStringList figuresOf(const JobRecord& record, const Words& words) { return Figures(record, words).all(); }

} // namespace strandbench::test
