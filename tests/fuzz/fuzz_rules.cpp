// SPDX-License-Identifier: GPL-3.0-or-later
// Decision table and step book: the same bytes to both readers, each of which takes only its own.
#include "exchange/rules.h"
#include "fuzz.h"

namespace strandbench::fuzz {
namespace {

void checkTable(const QByteArray& json)
{
    const Checked<DecisionTable> table = readDecisionTable(json);
    if (!table)
        return requireTold(table.error());
    require(table->source() == json && table->hash().size() == 32, "it keeps its bytes and their hash");
    for (const auto& [filler, code] : Codes<FillerClass>::table)
        for (const QString& column : DecisionTable::columns())
            if (isFibreReinforced(filler))
                require(!table->cell(filler, column).reason.isEmpty(), "every cell has its reason");
}

void checkRules(const std::vector<StepRule>& rules)
{
    constexpr double week = 7.0 * 24 * 3600;
    for (const StepRule& each : rules) {
        require(!each.code.isEmpty() && each.code.size() <= 60, "a step has its code");
        requireWithin(inSeconds(each.handsOn), 0, 4.0 * 3600, "hands on");
        requireWithin(inSeconds(each.waiting), 0, week, "waiting");
        for (const QString& argument : each.arguments)
            require(std::count(knownStepArguments().begin(), knownStepArguments().end(), argument) == 1,
                    "the planner knows every figure");
    }
}

void checkSteps(const QByteArray& json)
{
    const Checked<StepBook> steps = readStepBook(json);
    if (!steps)
        return requireTold(steps.error());
    require(steps->source == json && steps->hash.size() == 32, "it keeps its bytes and their hash");
    checkRules(steps->prepare);
    checkRules(steps->finish);
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const QByteArray json = strandbench::fuzz::bytesOf(data, size);
    strandbench::fuzz::checkTable(json);
    strandbench::fuzz::checkSteps(json);
    return 0;
}
