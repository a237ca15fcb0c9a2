// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/air_of_days.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class Collector {
public:
    Collector(const Catalogue& catalogue, const FillingLimits& limits) : m_catalogue(catalogue), m_limits(limits) {}

    void add(const Event& event)
    {
        if (const auto* taken = std::get_if<ReadingTaken>(&event.payload))
            read(taken->reading, event);
        else if (const auto* answered = std::get_if<Answered>(&event.payload))
            answer(*answered, event);
        else if (const auto* batch = std::get_if<HardenerIn>(&event.payload))
            fill(batch->filler, {batch->sheetId, batch->sheetHash}, batch->times.gel, event);
        else if (const auto* pat = std::get_if<PatMixed>(&event.payload))
            fill(pat->filler, {pat->sheetId, pat->sheetHash}, pat->gel, event);
        else if (const auto* step = std::get_if<StepDone>(&event.payload))
            if (const auto vapour = vapourOfStep(step->code))
                m_air.wipes.push_back({*vapour, event.at});
    }

    AirOfDays all() { return std::move(m_air); }

private:
    void read(const Reading& reading, const Event& event)
    {
        m_air.readings.push_back({reading, judgeAir(reading, m_limits), event.at, event.seq});
    }

    void answer(const Answered& answered, const Event& event)
    {
        if (answered.question != Question::Reading)
            return;
        if (answered.corrects)
            std::erase_if(m_air.readings, [&](const AirReading& each) { return each.seq == *answered.corrects; });
        if (const auto* reading = std::get_if<Reading>(&answered.value))
            read(*reading, event);
    }

    void fill(Mass filler, const SheetVersion& version, Duration untilGel, const Event& event)
    {
        const ProductSheet* sheet = m_catalogue.version(version.id, version.hash);
        if (!sheet)
            ++m_air.unknownSheets;
        else if (untilGel > seconds(0))
            m_air.fillers.push_back({filler, sheet->styrene, untilGel, event.at});
    }

    const Catalogue& m_catalogue;
    const FillingLimits& m_limits;
    AirOfDays m_air;
};

} // namespace

bool AirReading::nearDew() const
{
    return std::any_of(air.stops.begin(), air.stops.end(),
                       [](const Reason& stop) { return stop.code == u"panel_near_dew_point"_s; });
}

std::optional<Vapour> vapourOfStep(const QString& code)
{
    if (code == u"degrease_little"_s)
        return Vapour::Acetone;
    if (code == u"degrease"_s || code == u"wipe_metal"_s)
        return Vapour::Naphtha;
    return std::nullopt;
}

AirOfDays airOf(const std::vector<Event>& events, const Catalogue& catalogue, const FillingLimits& limits)
{
    Collector collector(catalogue, limits);
    for (const Event& each : events)
        collector.add(each);
    return collector.all();
}

std::vector<QString> daysRead(const AirOfDays& air)
{
    std::vector<QString> days;
    for (const AirReading& each : air.readings)
        days.push_back(localDay(each.at));
    std::sort(days.begin(), days.end(), std::greater<>());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

std::vector<AirReading> readingsOf(const AirOfDays& air, const QString& day)
{
    std::vector<AirReading> found;
    for (const AirReading& each : air.readings)
        if (localDay(each.at) == day)
            found.push_back(each);
    return found;
}

WorkInRoom workBefore(const AirOfDays& air, const Instant& now, Duration back)
{
    const auto begin = [&](const Instant& at) { return -elapsed(at, now); };
    WorkInRoom work;
    for (const FillerInRoom& each : air.fillers)
        if (begin(each.at) >= -back)
            work.fillers.push_back({each.filler, each.styrene, begin(each.at), each.untilGel});
    for (const WipeInRoom& each : air.wipes)
        if (begin(each.at) >= -back)
            work.wipes.push_back({each.vapour, begin(each.at)});
    return work;
}

} // namespace strandbench
