// SPDX-License-Identifier: GPL-3.0-or-later
// A serial instrument: the first line is the pattern of the shop, the rest what arrives, in pieces of any size and with
// any pauses, as a byte before each piece says. No weight comes out that no line held, and none is steady that stood
// alone.
#include "fuzz.h"
#include "instrument/line_pattern.h"
#include "instrument/line_reader.h"
#include "instrument/steadiness.h"

namespace strandbench::fuzz {
namespace {

void checkReading(const LineReading& reading, const QByteArray& line)
{
    require(reading.weight || reading.temperature || reading.humidity, "a line that fits says something");
    require(std::any_of(line.cbegin(), line.cend(), [](char c) { return c >= '0' && c <= '9'; }),
            "a number has a digit");
    if (reading.weight)
        requireWithin(inGrams(*reading.weight), -50'000, 50'000, "a weight within its range");
    if (reading.temperature)
        requireWithin(inCelsius(*reading.temperature), -40, 85, "a temperature within its range");
    if (reading.humidity)
        requireWithin(reading.humidity->percent(), 0, 100, "a humidity within its range");
}

class Port {
public:
    explicit Port(const LinePattern& pattern) : m_pattern(pattern) {}

    void arrive(const QByteArray& bytes, double pause)
    {
        m_now += pause;
        m_sent += bytes;
        for (const QByteArray& line : m_reader.take(bytes, seconds(m_now)))
            take(line);
        const auto steady = m_steadiness.steady(seconds(m_now));
        require(!steady || (steady == m_steadiness.newest(seconds(m_now)) && m_same >= Steadiness::atLeast),
                "what is steady was said at least three times");
    }

private:
    void take(const QByteArray& line)
    {
        require(!line.isEmpty() && line.size() <= LineReader::longest, "a line is of its length");
        require(m_sent.contains('\n' + line) || m_sent.contains('\r' + line), "a line was sent after an end of a line");
        const Checked<LineReading> reading = m_pattern.read(line);
        if (!reading)
            return requireTold(reading.error());
        checkReading(*reading, line);
        if (!reading->weight)
            return;
        const double weight = inGrams(*reading->weight);
        m_same = weight == m_weight ? m_same + 1 : 1;
        m_weight = weight;
        m_steadiness.take(weight, reading->steady, seconds(m_now));
    }

    const LinePattern& m_pattern;
    LineReader m_reader;
    Steadiness m_steadiness{0};
    QByteArray m_sent;
    double m_now = 0;
    double m_weight = 0;
    int m_same = 0;
};

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const QByteArray all = fuzz::bytesOf(data, size);
    const qsizetype end = all.indexOf('\n');
    const QString text = QString::fromUtf8(all.left(end));
    const Checked<LinePattern> pattern = LinePattern::of(text);
    if (!pattern) {
        fuzz::requireTold(pattern.error());
        return 0;
    }
    fuzz::require(LinePattern::of(pattern->text()).has_value(), "what was taken is taken again");
    fuzz::Port port(*pattern);
    for (qsizetype at = end < 0 ? all.size() : end + 1; at < all.size();) {
        const auto how = std::uint8_t(all.at(at++));
        const qsizetype length = 1 + how % 32;
        port.arrive(all.mid(at, length), (how / 32) * 0.15);
        at += length;
    }
    return 0;
}
