// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/spread_book.h"

#include "plan/assumption_table.h"

#include <boost/math/statistics/univariate_statistics.hpp>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const AssumptionEntry& spreading() { return *findAssumption(u"spreading_g_per_min"_s); }

} // namespace

MassRate slowestSpread() { return std::get<MassRate>(spreading().least); }
MassRate quickestSpread() { return std::get<MassRate>(spreading().most); }

void SpreadBook::add(const Event& event)
{
    if (const auto* mixed = std::get_if<HardenerIn>(&event.payload))
        m_wet[{event.repair, mixed->batch}] = {mixed->filler, event.at};
    const auto* clear = std::get_if<EdgesClear>(&event.payload);
    if (!clear)
        return;
    const auto wet = m_wet.find({event.repair, clear->batch});
    if (wet == m_wet.end())
        return;
    m_spread[event.person].push_back({wet->second.filler, elapsed(wet->second.hardenerIn, event.at), event.at});
    m_wet.erase(wet); // told once
}

std::optional<SpreadLearnt> SpreadBook::of(const QString& person, Duration kneading) const
{
    const auto found = m_spread.find(person);
    if (person.isEmpty() || found == m_spread.end())
        return std::nullopt;
    std::vector<Spread> all = found->second;
    std::stable_sort(all.begin(), all.end(), [](const Spread& a, const Spread& b) { return a.at.utcMs > b.at.utcMs; });
    std::vector<double> rates; // kg/s
    for (const Spread& each : all) {
        const Duration spreading = each.toClear - kneading;
        if (rates.size() == SpreadLearnt::newest || spreading < seconds(1))
            continue;
        const MassRate rate = each.filler / spreading;
        if (rate >= slowestSpread() && rate <= quickestSpread())
            rates.push_back(rate.value());
    }
    if (rates.size() < SpreadLearnt::atLeast)
        return std::nullopt;
    const auto [least, most] = std::minmax_element(rates.begin(), rates.end());
    SpreadLearnt learnt;
    learnt.slowest = MassRate::from_value(*least);
    learnt.quickest = MassRate::from_value(*most);
    learnt.batches = rates.size();
    learnt.rate = MassRate::from_value(boost::math::statistics::median(rates)); // reorders them
    return learnt;
}

} // namespace strandbench
