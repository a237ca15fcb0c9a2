// SPDX-License-Identifier: GPL-3.0-or-later
#include "wide_cases.h"

#include <gtest/gtest.h>

namespace strandbench::test {
namespace {

class CureWide : public testing::TestWithParam<int> {};

// A part of what wide_long_test.cpp does in full, from other seeds.
TEST_P(CureWide, SoundOrRefusedByName) { checkWideCases(static_cast<unsigned>(3000 + GetParam()), 250); }

INSTANTIATE_TEST_SUITE_P(Valid, CureWide, testing::Range(0, 4));

} // namespace
} // namespace strandbench::test
