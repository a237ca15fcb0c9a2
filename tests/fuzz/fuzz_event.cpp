// SPDX-License-Identifier: GPL-3.0-or-later
// A stored event: the first byte chooses the kind ('A' the first), the second the version, the rest is the payload.
// What decodes is the same when encoded and decoded again.
#include "exchange/events.h"
#include "fuzz.h"

namespace strandbench::fuzz {
namespace {

/// The codes of all kinds, in the order of Payload's alternatives.
template <std::size_t... I> QStringList kindsOf(std::index_sequence<I...>)
{
    return {kindOf(Payload(std::variant_alternative_t<I, Payload>{}))...};
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    static const QStringList kinds = fuzz::kindsOf(std::make_index_sequence<std::variant_size_v<Payload>>());
    if (size < 2)
        return -1; // not kept
    const auto which = std::uint8_t(data[0] - 'A');
    const QString kind = kinds.at(which % kinds.size());
    const Checked<Payload> payload = decodePayload(kind, data[1] - '0', fuzz::bytesOf(data + 2, size - 2));
    if (!payload) {
        fuzz::requireTold(payload.error());
        return 0;
    }
    fuzz::require(kindOf(*payload) == kind, "it is of the kind that was asked for");
    const QByteArray encoded = encodePayload(*payload);
    const Checked<Payload> again = decodePayload(kind, kindVersionOf(*payload), encoded);
    fuzz::require(again.has_value(), "what was encoded decodes");
    fuzz::require(*again == *payload, "encoded and decoded it is the same");
    fuzz::require(encodePayload(*again) == encoded && stored(*payload) == *payload, "encoded again it is the same");
    return 0;
}
