// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/day_review.h"

#include "review/eyes.h"

#include <algorithm>
#include <map>

namespace strandbench {
namespace {

void add(QStringList& values, const QString& value)
{
    if (!values.contains(value))
        values << value;
}

bool before(const RepairDigest& one, const RepairDigest& other)
{
    if (one.readable != other.readable)
        return !one.readable;
    if (needsEyesBefore(one.deviations, other.deviations))
        return true;
    return !needsEyesBefore(other.deviations, one.deviations) && one.takenInUtcMs < other.takenInUtcMs;
}

} // namespace

bool needsEyes(const RepairDigest& repair)
{
    return !repair.readable ||
           std::ranges::any_of(repair.deviations, [](DeviationKind each) { return weightOf(each) == Weight::First; });
}

QStringList valuesOf(const RepairDigest& repair, NarrowBy by)
{
    QStringList values;
    switch (by) {
    case NarrowBy::Nothing:
        break;
    case NarrowBy::Bench:
        values << repair.bench;
        break;
    case NarrowBy::Person:
        values = repair.people.isEmpty() ? QStringList{QString()} : repair.people;
        break;
    case NarrowBy::Product:
        for (const DigestBatch& each : repair.batches)
            add(values, each.sheetId);
        break;
    case NarrowBy::Lot:
        for (const DigestBatch& each : repair.batches) {
            add(values, each.lot);
            add(values, each.hardenerLot);
        }
        break;
    case NarrowBy::Substrate:
        values << (repair.substrate ? codeOf(*repair.substrate) : QString());
        break;
    }
    return values;
}

std::vector<std::pair<QString, int>> valuesOf(const std::vector<RepairDigest>& repairs, NarrowBy by)
{
    std::map<QString, int> counts;
    for (const RepairDigest& repair : repairs) {
        const QStringList values = valuesOf(repair, by);
        for (const QString& each : values)
            ++counts[each];
    }
    std::vector<std::pair<QString, int>> all(counts.begin(), counts.end());
    std::ranges::stable_sort(all, std::greater<>{}, [](const auto& each) { return each.second; });
    return all;
}

std::vector<RepairDigest> eyesFirst(std::vector<RepairDigest> repairs, const Narrowing& narrowing)
{
    if (narrowing.by != NarrowBy::Nothing)
        std::erase_if(
            repairs, [&](const RepairDigest& each) { return !valuesOf(each, narrowing.by).contains(narrowing.value); });
    std::ranges::stable_sort(repairs, before);
    return repairs;
}

DayFigures dayFigures(const std::vector<RepairDigest>& repairs)
{
    DayFigures day;
    day.planned = day.mixed = grams(0);
    day.hands = day.handsPlanned = seconds(0);
    for (const RepairDigest& repair : repairs) {
        ++day.repairs;
        day.toLookThrough += repair.standing == Standing::ToLookThrough ? 1 : 0;
        day.signedOff += repair.standing == Standing::SignedOff ? 1 : 0;
        day.returned += repair.standing == Standing::Returned ? 1 : 0;
        day.needEyes += needsEyes(repair) ? 1 : 0;
        for (const DigestBatch& each : repair.batches) {
            day.planned += each.planned;
            day.mixed += each.mixed;
        }
        for (const PartTime& each : repair.parts)
            if (each.part != JobPart::Wait) {
                day.hands += each.actual;
                day.handsPlanned += each.planned;
            }
    }
    return day;
}

} // namespace strandbench
