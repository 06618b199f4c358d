// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/choice_indices.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::intake {
namespace {

// Offered 0.5, 0.3, 0.2; eaten 0.3, 0.3, 0.4. Worked by hand from the formulas.
constexpr std::array<double, 3> kP = {0.5, 0.3, 0.2};
constexpr std::array<double, 3> kR = {0.3, 0.3, 0.4};

template <class Index>
void expectEach(Index index, std::array<double, 3> expected) {
  for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(index(i), expected[i], 5e-7) << i;
}

TEST(ChoiceIndices, ForageRatioIvlevJacobsAndStrauss) {
  expectEach([](std::size_t i) { return forageRatio(kR[i], kP[i]).value(); }, {0.6, 1.0, 2.0});
  expectEach([](std::size_t i) { return ivlevE(kR[i], kP[i]).value(); }, {-0.25, 0.0, 0.333333});
  expectEach([](std::size_t i) { return jacobsD(kR[i], kP[i]).value(); }, {-0.4, 0.0, 0.454545});
  expectEach([](std::size_t i) { return straussL(kR[i], kP[i]); }, {-0.2, 0.0, 0.2});
}

TEST(ChoiceIndices, AlphaOfAConstantOfferAndWhatIsMadeOfIt) {
  const auto alpha = alphaOfConstantOffer(kR, kP).value();
  expectEach([&](std::size_t i) { return alpha[i]; }, {0.166667, 0.277778, 0.555556});
  expectEach([&](std::size_t i) { return chessonEpsilon(alpha[i], 3); }, {-0.428571, -0.130435, 0.428571});
  expectEach([&](std::size_t i) { return relativizedE(alpha[i], 3); }, {-0.333333, -0.090909, 0.25});
}

TEST(ChoiceIndices, WhatWasNotOfferedOrNotEatenHasNone) {
  EXPECT_FALSE(forageRatio(0.1, 0.0));
  EXPECT_FALSE(ivlevE(0.0, 0.0));
  EXPECT_FALSE(jacobsD(1.0, 1.0));
  EXPECT_FALSE(alphaOfConstantOffer(std::array{0.5, 0.5}, std::array{1.0, 0.0}));
  EXPECT_FALSE(alphaOfConstantOffer(std::array{0.0, 0.0}, std::array{0.5, 0.5}));
}

}  // namespace
}  // namespace tarebowl::intake
