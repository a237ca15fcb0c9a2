// SPDX-License-Identifier: GPL-3.0-or-later
// Screens held to the rules of look and touch on every glass, in every language, theme and system of units.
#pragma once

#include "screen_book.h"
#include "walk/demo_jobs.h"

#include <gtest/gtest.h>

namespace strandbench::test {

/// Sixteen looks in which each glass meets each language, theme, system of units and hand, and each of these each
/// other: all pairs, an orthogonal array of strength two in the place of 128. Besides, the pseudo-language on the
/// lowest and on the narrowest glass.
[[nodiscard]] std::vector<Look> everyLook();
/// "1280x800_de_night", for INSTANTIATE_TEST_SUITE_P.
[[nodiscard]] std::string nameOfLook(const ::testing::TestParamInfo<Look>& each);

class LookTest : public ::testing::TestWithParam<Look> {
protected:
    LookTest() : m_book(GetParam()) {}
    void TearDown() override;
    /// A bench of this look on a log of its name; the settings as given but for language, theme, units and hand.
    [[nodiscard]] ScriptedBench::Spec specOn(const QString& log, Settings settings) const;
    /// The same in a system of units that the test needs.
    [[nodiscard]] ScriptedBench::Spec specOn(const QString& log, Settings settings, UnitSystem units) const;
    /// Holds the present screen to the rules; see ScreenBook.
    void check();
    void tap(const QString& control);
    void tapAndCheck(const QString& control);
    [[nodiscard]] ScreenBook& book() { return m_book; }

    Spoken m_spoken{GetParam().language};
    std::unique_ptr<ScriptedBench> m_bench;

private:
    /// Waits until what the screen reads from the log is there: a layout that is compared must not be one of chance.
    void letRead();

    ScreenBook m_book;
};

} // namespace strandbench::test
