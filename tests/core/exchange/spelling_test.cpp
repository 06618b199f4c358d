// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/spelling.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace tarebowl::exchange {
namespace {

using ::testing::Optional;

constexpr std::array<std::string_view, 4> kKeys{"id", "max_g", "eaten_fraction", "min_g"};

TEST(Spelling, CountsSlips) {
  EXPECT_EQ(slipsBetween("max_g", "max_g"), 0U);
  EXPECT_EQ(slipsBetween("max_gg", "max_g"), 1U);
  EXPECT_EQ(slipsBetween("mxa_g", "max_g"), 1U);  // two letters swapped are one slip
  EXPECT_EQ(slipsBetween("MAX_G", "max_g"), 0U);
  EXPECT_EQ(slipsBetween("", "id"), 2U);
  EXPECT_EQ(slipsBetween("kitten", "sitting"), 3U);  // the textbook pair
}

TEST(Spelling, GuessesTheKeyThatWasMeant) {
  EXPECT_THAT(likelyMeant("max_gg", kKeys), Optional(std::string_view("max_g")));
  EXPECT_THAT(likelyMeant("Max_g", kKeys), Optional(std::string_view("max_g")));
  EXPECT_THAT(likelyMeant("eatn_fracton", kKeys), Optional(std::string_view("eaten_fraction")));
}

TEST(Spelling, LeavesKnownAndForeignKeysAlone) {
  EXPECT_EQ(likelyMeant("min_g", kKeys), std::nullopt);
  EXPECT_EQ(likelyMeant("studbook", kKeys), std::nullopt);
  EXPECT_EQ(likelyMeant("mx_gg", kKeys), std::nullopt);  // two slips in a short word are another word
}

TEST(Spelling, ListsChoicesAsAPersonWould) {
  EXPECT_EQ(inWords(std::array<std::string_view, 1>{"g"}), "g");
  EXPECT_EQ(inWords(std::array<std::string_view, 3>{"g", "mg", "ug"}), "g, mg or ug");
}

}  // namespace
}  // namespace tarebowl::exchange
