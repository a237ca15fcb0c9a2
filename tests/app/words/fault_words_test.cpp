// SPDX-License-Identifier: GPL-3.0-or-later
#include "readable.h"

#include "words/table.h"
#include "words/words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Words words(UnitSystem::Metric, QLocale::c());

TEST(FaultWords, NameFieldValueAndWhatIsAllowed)
{
    const auto line = [](const Fault& fault) { return words.fault(fault, FieldNames::AsInput); };
    EXPECT_EQ(line({u"job"_s, {}, FaultKind::Missing, {u"text"_s}}), u"job: missing; it must be a text"_s);
    EXPECT_EQ(line({u"air_c"_s, {}, FaultKind::Missing, {u"number"_s, u"°C"_s}}),
              u"air_c: missing; it must be a number (°C)"_s);
    EXPECT_EQ(line({u"substrate"_s, {}, FaultKind::Missing, {u"frp"_s, u"smc"_s}}),
              u"substrate: missing; it must be one of: frp, smc"_s);
    EXPECT_EQ(line({u"colour"_s, u"red"_s, FaultKind::UnknownKey, {u"job"_s, u"panel"_s}}),
              u"colour: not known; known here: job, panel"_s);
    EXPECT_EQ(line({u"job"_s, u"5"_s, FaultKind::WrongKind, {u"text"_s}}),
              u"job: '5' does not fit; it must be a text"_s);
    EXPECT_EQ(line({u"damage.length_mm"_s, u"0"_s, FaultKind::OutOfRange, {u"1"_s, u"3000"_s, u"mm"_s}}),
              u"damage.length_mm: 0 is out of range; allowed is 1 to 3000 mm"_s);
    EXPECT_EQ(line({u"zone"_s, u"roof"_s, FaultKind::NotOneOf, {u"cosmetic"_s, u"sensor"_s}}),
              u"zone: 'roof' is not one of: cosmetic, sensor"_s);
    EXPECT_EQ(line({u"length"_s, u"1,,2"_s, FaultKind::NotReadable, {u"12.5 mm"_s}}),
              u"length: '1,,2' cannot be read; it looks like: 12.5 mm"_s);
    EXPECT_EQ(line({u"job"_s, u" "_s, FaultKind::Empty, {u"text"_s}}), u"job: must not be empty"_s);
    EXPECT_EQ(line({u"job"_s, u"aaa"_s, FaultKind::TooLong, {u"2"_s}}),
              u"job: 'aaa' is too long; at most 2 characters"_s);
    EXPECT_EQ(line({u"damage.depth_mm"_s, u"3"_s, FaultKind::Conflicts, {u"damage.panel_thickness_mm"_s, u"4"_s}}),
              u"damage.depth_mm: '3' does not agree with damage.panel_thickness_mm: '4'"_s);
    EXPECT_EQ(line({u"--sheet"_s, u"x"_s, FaultKind::NotFound, {u"a"_s, u"b"_s}}),
              u"--sheet: 'x' is not there; there is: a, b"_s);
}

TEST(FaultWords, GiveAPersonTheFieldsOwnName)
{
    const Fault fault{u"damage.length_mm"_s, u"0"_s, FaultKind::OutOfRange, {u"1"_s, u"3000"_s, u"mm"_s}};
    EXPECT_EQ(words.fault(fault), u"Length: 0 is out of range; allowed is 1 to 3000 mm"_s);
    EXPECT_EQ(words.fault({u"job"_s, {}, FaultKind::Empty, {}}), u"Job number: must not be empty"_s);
    EXPECT_EQ(words.fault({u"no_such_field"_s, {}, FaultKind::Empty, {}}), u"no_such_field: must not be empty"_s);
    EXPECT_EQ(words.fault({{}, u"2:1"_s, FaultKind::NotReadable, {u"{}"_s}}),
              u"input: '2:1' cannot be read; it looks like: {}"_s);
}

TEST(FaultWords, StayOnOneLineWhateverTheInputHeld)
{
    const QString line =
        words.fault({u"a\nb"_s, u"x\r\n\u2028\x1b[31my"_s, FaultKind::NotOneOf, {u"z"_s}}, FieldNames::AsInput);
    EXPECT_EQ(line, u"a b: 'x    [31my' is not one of: z"_s);
}

TEST(FaultWords, LeaveAPlaceholderInAnInputAlone)
{
    EXPECT_EQ(words::fillIn(u"%1 and %2"_s, {u"%2"_s, u"%1"_s}), u"%2 and %1"_s);
    EXPECT_EQ(words::fillIn(u"100 % of %1"_s, {u"it"_s}), u"100 % of it"_s);
    EXPECT_EQ(words.fault({u"job"_s, u"%1%3"_s, FaultKind::TooLong, {u"2"_s}}, FieldNames::AsInput),
              u"job: '%1%3' is too long; at most 2 characters"_s);
}

} // namespace
} // namespace strandbench
