// SPDX-License-Identifier: GPL-3.0-or-later
// A figure keyed in: the first byte chooses what it is a figure of. What is accepted is finite and within its range.
#include "fuzz.h"
#include "quantity/units.h"

namespace strandbench::fuzz {
namespace {

template <class Q> void check(const Checked<Q>& read, const Range<Q>& allowed)
{
    if (!read)
        return requireTold(read.error());
    require(*read >= allowed.lowest && *read <= allowed.highest, "within its range");
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    if (size < 1)
        return -1; // not kept
    const QString text = QString::fromUtf8(fuzz::bytesOf(data + 1, size - 1));
    const QString field = QStringLiteral("field");
    const UnitSystem system = data[0] & 8 ? UnitSystem::UsCustomary : UnitSystem::Metric;
    switch (data[0] & 7) {
    case 0:
        fuzz::check(parseNumber(text, field), anyNumber());
        break;
    case 1:
        fuzz::check(parseLength(text, system, field), anyLength());
        break;
    case 2:
        fuzz::check(parseMass(text, system, field), anyMass());
        break;
    case 3:
        fuzz::check(parseTemperature(text, system, field), anyTemperature());
        break;
    case 4:
        fuzz::check(parsePercent(text, field), anyPercent());
        break;
    default:
        fuzz::check(parseDuration(text, field), anyDuration());
    }
    return 0;
}
