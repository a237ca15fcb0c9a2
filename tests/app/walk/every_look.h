// SPDX-License-Identifier: GPL-3.0-or-later
// Screens held to the rules of look and touch on every glass in every language.
#pragma once

#include "walk/demo_jobs.h"

#include "touch_rules/glass.h"

#include <gtest/gtest.h>

namespace strandbench::test {

struct Look {
    rules::Glass glass;
    QString language;
};

/// Every glass with every language.
[[nodiscard]] std::vector<Look> everyLook();
/// "1280x800_de", for INSTANTIATE_TEST_SUITE_P.
[[nodiscard]] std::string nameOfLook(const ::testing::TestParamInfo<Look>& each);

class LookTest : public ::testing::TestWithParam<Look> {
protected:
    /// A bench of this look on a log of its name.
    [[nodiscard]] ScriptedBench::Spec specOn(const QString& log, Settings settings) const;
    /// Holds the present screen to the rules; with LOOK_PICTURES=folder its picture is kept there.
    void check();
    void tap(const QString& control);
    void tapAndCheck(const QString& control);

    std::unique_ptr<ScriptedBench> m_bench;

private:
    int m_number = 0;
};

} // namespace strandbench::test
