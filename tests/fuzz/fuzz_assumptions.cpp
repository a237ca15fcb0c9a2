// SPDX-License-Identifier: GPL-3.0-or-later
// The bench's assumptions: what was taken contradicts nothing, and is the same when written and read again.
#include "exchange/assumptions_json.h"
#include "fuzz.h"
#include "plan/assumption_table.h"

namespace strandbench::fuzz {
namespace {

void check(const Assumptions& assumptions)
{
    require(contradictions(assumptions).empty(), "no value contradicts another");
    for (const AssumptionEntry& each : assumptionTable())
        requireWithin(each.numberOf(assumptions), each.number(each.least), each.number(each.most), "within its range");
}

void requireSame(const AssumptionBook& a, const AssumptionBook& b)
{
    require(sameAssumptions(a.now, b.now), "the same now");
    require(a.earlier.size() == b.earlier.size(), "as many earlier ones");
    for (std::size_t i = 0; i < a.earlier.size(); ++i) {
        require(a.earlier[i].untilUtcMs == b.earlier[i].untilUtcMs, "until the same moment");
        require(sameAssumptions(a.earlier[i].assumptions, b.earlier[i].assumptions), "the same earlier");
    }
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const ReadAssumptions read = readAssumptions(fuzz::bytesOf(data, size));
    if (!read.faults.empty())
        fuzz::requireTold(read.faults);
    fuzz::check(read.book.now);
    for (const AssumptionBook::Earlier& each : read.book.earlier)
        fuzz::check(each.assumptions);
    const QByteArray written = writeAssumptions(read.book);
    const ReadAssumptions again = readAssumptions(written);
    fuzz::require(again.faults.empty(), "what was written reads without a fault");
    fuzz::requireSame(read.book, again.book);
    fuzz::require(writeAssumptions(again.book) == written, "written again it is the same");
    return 0;
}
