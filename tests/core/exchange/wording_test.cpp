// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/wording.h"

#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::exchange {
namespace {

using quantity::Grams;

TEST(Wording, NumbersHaveFourSignificantDigitsAndNoPowersOfTen) {
  EXPECT_EQ(shortNumber(22.125), "22.12");
  EXPECT_EQ(shortNumber(0.0123456), "0.01235");
  EXPECT_EQ(shortNumber(1234567.0), "1234567");
  EXPECT_EQ(shortNumber(5.0), "5");
  EXPECT_EQ(shortNumber(0.0), "0");
  EXPECT_EQ(shortNumber(-1e-15), "0");
}

TEST(Wording, WhatIsUnknownIsAQuestionMark) {
  EXPECT_EQ(shortNumber(std::optional<double>()), "?");
  EXPECT_EQ(shortNumber(std::numeric_limits<double>::infinity()), "?");
}

TEST(Wording, GramsHaveTheDigitsOfTheScale) {
  EXPECT_EQ(gramsText(Grams(22), Grams(1)), "22");
  EXPECT_EQ(gramsText(Grams(22), Grams(0.1)), "22.0");
  EXPECT_EQ(gramsText(Grams(3 * 0.05), Grams(0.05)), "0.15");
  EXPECT_EQ(gramsText(Grams(21.37), Grams(1)), "21.37");  // between the steps: a continuous answer
}

TEST(Wording, ZonesSayWhichBoundThereIs) {
  EXPECT_EQ(zoneText(5.0, 12.0), "5 … 12");
  EXPECT_EQ(zoneText(5.0, std::nullopt), "≥ 5");
  EXPECT_EQ(zoneText(std::nullopt, 12.0), "≤ 12");
}

TEST(Wording, PercentAreNeverRoundedToCertainty) {
  EXPECT_EQ(percentText(1.0), "100 %");
  EXPECT_EQ(percentText(0.9999), "> 99 %");
  EXPECT_EQ(percentText(0.0001), "< 1 %");
  EXPECT_EQ(percentText(0.0), "0 %");
  EXPECT_EQ(percentText(0.754), "75 %");
}

TEST(Wording, StatesAreAShapeAndAWord) {
  using diet::TargetState;
  EXPECT_EQ(stateText(TargetState::Met), "● met");
  EXPECT_EQ(stateText(TargetState::AtMin), "◐ at limit");
  EXPECT_EQ(stateText(TargetState::AtMax), "◐ at limit");
  EXPECT_EQ(stateText(TargetState::Short), "▼ short");
  EXPECT_EQ(stateText(TargetState::Over), "▲ over");
  EXPECT_EQ(stateText(TargetState::Unknown), "? unknown");
}

}  // namespace
}  // namespace tarebowl::exchange
