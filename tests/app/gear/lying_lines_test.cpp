// SPDX-License-Identifier: GPL-3.0-or-later
// Slow, torn, noisy and lying lines at a pseudo-terminal: no wrong weight is ever offered. All of it is invented; what
// is held is an invariant: what may be taken over is what lay on the scale within the last readings.
#include "wired_feed.h"

#include <random>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Each line by itself, several times; nothing of it may be offered.
TEST_F(WiredFeed, NothingIsOfferedOfWhatMoves)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (int i = 0; i < 40; ++i) { // it says that it is steady while the value jumps
        ASSERT_NO_FATAL_FAILURE(say(feed, i % 2 ? "ST,GS,+  151.2 g\r\n" : "ST,GS,+  148.9 g\r\n"));
        EXPECT_FALSE(feed.view().steady.has_value());
    }
    for (int i = 0; i < 10; ++i) { // it stands, and the scale says that it does not
        ASSERT_NO_FATAL_FAILURE(say(feed, "US,GS,+  151.2 g\r\n"));
        EXPECT_FALSE(feed.view().steady.has_value());
    }
}

TEST_F(WiredFeed, AnotherUnitIsNotTakenForTheFirst)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (int i = 0; i < 5; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+   58.4 g\r\n"));
    EXPECT_NEAR(grammes(feed), 58.4, 1e-9);
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+   58.4 oz\r\n")); // the same digits
    EXPECT_FALSE(feed.view().steady.has_value());
    for (int i = 0; i < 4; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+   58.4 oz\r\n"));
    EXPECT_NEAR(grammes(feed), 58.4 * 28.349523125, 1e-6) << "NIST SP 811 (2008), B.8";
    for (int i = 0; i < 5; ++i) // a unit that the pattern does not know
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+   58.4 ct\r\n"));
    EXPECT_EQ(feed.view().is, Is::NoFit);
    EXPECT_FALSE(feed.view().live.has_value());
}

TEST_F(WiredFeed, WhatIsFixedToGramsTakesNoOunces)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{weight:g} g"_s));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (int i = 0; i < 5; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "2.06 oz\r\n"));
    EXPECT_EQ(feed.view().is, Is::NoFit);
}

TEST_F(WiredFeed, AnOverloadTakesTheStandingWeightAway)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (int i = 0; i < 5; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  600.0 g\r\n"));
    EXPECT_EQ(feed.view().is, Is::Steady);
    ASSERT_NO_FATAL_FAILURE(say(feed, "OL,GS,+ 9999999 \r\n", 0));
    EXPECT_FALSE(feed.view().steady.has_value());
    EXPECT_FALSE(feed.view().live.has_value());
}

TEST_F(WiredFeed, ASlowLineIsReadAndOneThatStoppedInTheMiddleIsNot)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{weight:g}"_s));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (const char byte : QByteArray("151.24\r\n")) // a byte at a time
        ASSERT_NO_FATAL_FAILURE(say(feed, QByteArray(1, byte), 0.1));
    ASSERT_TRUE(feed.view().live.has_value());
    EXPECT_NEAR(inGrams(*feed.view().live->weight), 151.24, 1e-9);
    for (int i = 0; i < 6; ++i) { // "151.24" of which "15" was lost in a pause
        ASSERT_NO_FATAL_FAILURE(say(feed, "15", 0.7));
        ASSERT_NO_FATAL_FAILURE(say(feed, "1.24\r\n", 0.1));
        const auto live = feed.view().live;
        EXPECT_TRUE(!live || std::abs(inGrams(*live->weight) - 151.24) < 1e-9);
        EXPECT_FALSE(feed.view().steady.has_value());
    }
}

TEST_F(WiredFeed, OverlongAndBinaryLinesAreNone)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{weight:g}"_s));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (int i = 0; i < 5; ++i) {
        ASSERT_NO_FATAL_FAILURE(say(feed, QByteArray(4000, '1') + "\r\n"));
        ASSERT_NO_FATAL_FAILURE(say(feed, QByteArray("\x00\x01\x02", 3) + "12.3\r\n"));
        ASSERT_NO_FATAL_FAILURE(say(feed, QByteArray(64, '\xff') + "\r\n"));
        EXPECT_FALSE(feed.view().live.has_value()) << "nothing whole came";
    }
}

/// A bench's scale with everything wrong at once, from a seed.
class BadScale {
public:
    explicit BadScale(unsigned seed) : m_chance(seed) {}

    /// The next piece that comes over the cable.
    QByteArray next()
    {
        if (of(12)) // something else is put on it
            m_weight = std::uniform_int_distribution(0, 40000)(m_chance) / 100.0;
        QByteArray line = whole();
        if (of(10))
            line[at(line)] = static_cast<char>(at(256)); // a byte that flipped
        if (of(12))
            line.remove(at(line), 1 + at(4)); // bytes that were lost
        if (of(20))
            line.insert(at(line), QByteArray(1 + at(200), static_cast<char>(at(256)))); // noise
        if (of(25))
            line.chop(1 + at(line)); // torn, without its end
        return line;
    }
    [[nodiscard]] double weight() const { return m_weight; }

private:
    bool of(int n) { return at(n) == 0; }
    int at(int n) { return std::uniform_int_distribution(0, n - 1)(m_chance); }
    qsizetype at(const QByteArray& line) { return line.isEmpty() ? 0 : at(static_cast<int>(line.size())); }
    QByteArray whole()
    {
        if (of(40))
            return "OL,GS,       g\r\n";
        // Its word for steady lies as often as not, and its unit changes by the way.
        const bool ounces = of(9);
        const QString number = QString::number(ounces ? m_weight / 28.349523125 : m_weight, 'f', ounces ? 3 : 2);
        return (of(2)   ? "ST"
                : of(3) ? "US"
                        : "ST") +
               QByteArray(",GS,+ ") + number.rightJustified(8).toLatin1() + (ounces ? " oz" : " g") + "\r\n";
    }

    std::mt19937 m_chance;
    double m_weight = 0;
};

class LyingScale : public WiredFeed, public ::testing::WithParamInterface<unsigned> {};

TEST_P(LyingScale, OffersOnlyWhatLayOnItWithinTheLastReadings)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    BadScale scale(GetParam());
    double before = 0; // what lay on it when the last whole line came
    int offered = 0;
    std::mt19937 pauses(GetParam() + 1000);
    for (int i = 0; i < 1200; ++i) {
        const QByteArray piece = scale.next();
        if (piece.isEmpty())
            continue;
        ASSERT_NO_FATAL_FAILURE(say(feed, piece, 0));
        if (const double grams = grammes(feed); grams > -1e8) {
            ++offered;
            // Half a thousandth of an ounce is lost in printing one.
            const double off = std::min(std::abs(grams - scale.weight()), std::abs(grams - before));
            ASSERT_LE(off, InstrumentFeed::gramsApart + 0.0142) << "at piece " << i << ": " << grams;
        }
        before = scale.weight();
        m_clock.pass(std::uniform_real_distribution(0.05, 0.7)(pauses));
    }
    EXPECT_GT(offered, 5) << "a test that was never offered anything shows nothing";
}

INSTANTIATE_TEST_SUITE_P(Seeds, LyingScale, ::testing::Range(1U, 13U));

} // namespace
} // namespace strandbench::test
