// SPDX-License-Identifier: GPL-3.0-or-later
// 20 000 cases from all over the valid range: minutes, so they are labelled long and run by `tests/run --long`.
#include "wide_cases.h"

#include <gtest/gtest.h>

namespace strandbench::test {
namespace {

class CureWideLong : public testing::TestWithParam<int> {};

TEST_P(CureWideLong, SoundOrRefusedByName) { checkWideCases(static_cast<unsigned>(4000 + GetParam()), 1000); }

INSTANTIATE_TEST_SUITE_P(Valid, CureWideLong, testing::Range(0, 20));

} // namespace
} // namespace strandbench::test
