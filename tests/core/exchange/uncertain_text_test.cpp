// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/uncertain_text.h"

#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

TEST(UncertainText, TheUncertaintyHasTwoDigitsAndTheValueNoMore) {
  EXPECT_EQ(uncertainText(38.137, 2.4417), "38.1 ± 2.4");
  EXPECT_EQ(uncertainText(1234.4, 87.3), "1234 ± 87");
  EXPECT_EQ(uncertainText(5234.2, 312.0), "5230 ± 310");
  EXPECT_EQ(uncertainText(0.98321, 0.0041), "0.9832 ± 0.0041");
  EXPECT_EQ(uncertainText(12.0, 0.5), "12.00 ± 0.50");
}

TEST(UncertainText, WhatRoundsUpToAnotherDigitStaysAtTwo) {
  EXPECT_EQ(uncertainText(1.2345, 0.0996), "1.23 ± 0.10");
  EXPECT_EQ(uncertainText(41.26, 9.96), "41 ± 10");
}

TEST(UncertainText, WithoutAnUncertaintyTheValueStandsAlone) {
  EXPECT_EQ(uncertainText(38.137, 0.0), "38.14");
  EXPECT_EQ(uncertainText(std::nullopt, 2.0), "?");
  EXPECT_EQ(uncertainText(-0.001, 2.0), "0.0 ± 2.0");
}

}  // namespace
}  // namespace tarebowl::exchange
