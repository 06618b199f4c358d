// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/name_order.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace tarebowl::animal {
namespace {

using ::testing::ElementsAre;

std::vector<std::string> inOrder(std::vector<std::string> names) {
  std::ranges::sort(names, goesBefore);
  return names;
}

TEST(NameOrder, CountsNumbersWithinNamesByTheirValue) {
  EXPECT_THAT(inOrder({"house 10", "house 2", "house 1"}), ElementsAre("house 1", "house 2", "house 10"));
  EXPECT_THAT(inOrder({"bay 3, pen 12", "bay 3, pen 9", "bay 12"}),
              ElementsAre("bay 3, pen 9", "bay 3, pen 12", "bay 12"));
}

TEST(NameOrder, MakesNothingOfCapitals) {
  EXPECT_THAT(inOrder({"Reptiles", "bats", "Aviary"}), ElementsAre("Aviary", "bats", "Reptiles"));
}

TEST(NameOrder, PutsWhatHasNoNameFirst) {
  EXPECT_THAT(inOrder({"a", "", "1"}), ElementsAre("", "1", "a"));
}

TEST(NameOrder, TellsNamesApartThatDifferInCapitalsOrNoughtsAlone) {
  EXPECT_TRUE(goesBefore("House", "house"));
  EXPECT_FALSE(goesBefore("house", "House"));
  EXPECT_NE(goesBefore("pen 07", "pen 7"), goesBefore("pen 7", "pen 07"));
  EXPECT_FALSE(goesBefore("pen 7", "pen 7"));
}

TEST(NameOrder, BearsNumbersLongerThanAnyType) {
  EXPECT_TRUE(goesBefore("99999999999999999999999", "100000000000000000000000"));
}

}  // namespace
}  // namespace tarebowl::animal
