// SPDX-License-Identifier: GPL-3.0-or-later
// A repair's events, as a log may hold them that was written anew: a line each, of which the first byte chooses the
// kind ('A' the first), the second how much later it was told, the rest is the payload. An event that does not follow
// changes nothing; of what follows, all that the bench shows can be said.
#include "exchange/events.h"
#include "exchange/sheets.h"
#include "fuzz.h"
#include "repair/alarms.h"
#include "repair/run_clock.h"
#include "review/deviations.h"

#include <limits>

using namespace Qt::StringLiterals;

namespace strandbench::fuzz {
namespace {

template <std::size_t... I> std::vector<Payload> oneOfEach(std::index_sequence<I...>)
{
    return {std::variant_alternative_t<I, Payload>{}...};
}

/// A later moment; two bytes stand for what no clock says.
Instant later(const Instant& before, char byte)
{
    if (byte == '<')
        return {std::numeric_limits<qint64>::min(), 0, u"another boot"_s, -50'400};
    if (byte == '>')
        return {std::numeric_limits<qint64>::max(), std::numeric_limits<qint64>::max(), u"boot"_s, 50'400};
    Instant after = before.bootId == u"boot"_s ? before : Instant{1'789'300'000'000, 1'000'000, u"boot"_s, 7200};
    if (after.utcMs < std::numeric_limits<qint64>::max() / 2) {
        after.utcMs += (byte - '0') * 30'000;
        after.boottimeMs += (byte - '0') * 30'000;
    }
    return after;
}

class Repairing {
public:
    void take(const QByteArray& line)
    {
        static const std::vector<Payload> kinds = oneOfEach(std::make_index_sequence<std::variant_size_v<Payload>>());
        const Payload& kind = kinds[std::uint8_t(line[0] - 'A') % kinds.size()];
        const auto payload = decodePayload(kindOf(kind), kindVersionOf(kind), line.mid(2));
        if (!payload)
            return;
        m_now = later(m_now, line[1]);
        const Event event{u"here"_s, ++m_seq, m_id, u"R. Quist"_s, *payload, m_now, {}};
        const Repair before = m_repair;
        if (const auto fault = apply(m_repair, event)) {
            require(m_repair == before, "what does not follow changes nothing");
            return requireTold({*fault});
        }
        m_events.push_back(event);
        look();
    }

    void finish() const
    {
        if (m_events.empty())
            return;
        const Checked<Repair> again = foldRepair(m_events);
        require(again.has_value() && *again == m_repair, "folded again it is the same");
        const auto record = recordOf(m_events, demoCatalogue());
        require(record.has_value(), "what folds has its record");
        (void)deviationsOf(*record, demoCatalogue(), limitsFrom({}));
    }

private:
    void look() const
    {
        const NextStep next = nextStep(m_repair);
        require(m_repair.open() != (next.station == Station::Done), "open until it is handed over");
        for (const BatchRun& each : m_repair.runs) {
            (void)clockOf(each, {}, m_now);
            (void)phasesOf(each, Assumptions{});
            (void)alarmOf(m_repair, each, {}, m_now);
        }
    }

    QUuid m_id = QUuid(u"{0e3f5a0c-6f2a-4d0b-9d39-3f1f0d9b2a11}"_s);
    Instant m_now;
    qint64 m_seq = 0;
    Repair m_repair;
    std::vector<Event> m_events;
};

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    strandbench::fuzz::Repairing repairing;
    for (const QByteArray& line : strandbench::fuzz::bytesOf(data, size).split('\n'))
        if (line.size() > 2)
            repairing.take(line);
    repairing.finish();
    return 0;
}
