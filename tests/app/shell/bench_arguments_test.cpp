// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/bench_arguments.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

BenchArguments read(const QStringList& words) { return readBenchArguments(QStringList{u"strandbench"_s} + words); }

auto isFault(const QString& field, const QString& value, FaultKind kind)
{
    return testing::AllOf(testing::Field(&Fault::field, field), testing::Field(&Fault::value, value),
                          testing::Field(&Fault::kind, kind));
}

TEST(BenchArguments, WithoutAnyThePersonsOwnLogOnTheFullScreen)
{
    const BenchArguments bench = read({});
    EXPECT_TRUE(bench.log.isEmpty());
    EXPECT_TRUE(bench.glass.isEmpty());
    EXPECT_TRUE(bench.faults.empty());
}

TEST(BenchArguments, AreReadInBothSpellings)
{
    for (const QStringList& words : {QStringList{u"--log"_s, u"a b.sqlite"_s, u"--glass"_s, u"1024x600"_s},
                                     QStringList{u"--log=a b.sqlite"_s, u"--glass=1024x600"_s}}) {
        const BenchArguments bench = read(words);
        EXPECT_EQ(bench.log, u"a b.sqlite"_s);
        EXPECT_EQ(bench.glass, QSize(1024, 600));
        EXPECT_TRUE(bench.faults.empty());
    }
}

TEST(BenchArguments, ASizeThatIsNoneIsNamedWithWhatItLooksLike)
{
    for (const QString& size : {u"1024"_s, u"10x10"_s, u"1024x"_s, u"-1x600"_s, u"1024X600"_s, u"1000000x600"_s, u""_s})
        EXPECT_THAT(read({u"--glass="_s + size}).faults,
                    testing::ElementsAre(isFault(u"--glass"_s, size, FaultKind::NotReadable)))
            << size.toStdString();
}

TEST(BenchArguments, EveryFaultAtOnce)
{
    EXPECT_THAT(read({u"--log="_s, u"--glass=x"_s, u"more"_s}).faults,
                testing::UnorderedElementsAre(isFault(u"--log"_s, {}, FaultKind::Empty),
                                              isFault(u"--glass"_s, u"x"_s, FaultKind::NotReadable),
                                              isFault(u"more"_s, {}, FaultKind::UnknownKey)));
}

TEST(BenchArguments, AnOptionWithoutItsValueIsNamed)
{
    EXPECT_THAT(read({u"--log"_s}).faults, testing::Contains(isFault(u"--log"_s, {}, FaultKind::Missing)));
}

} // namespace
} // namespace strandbench
