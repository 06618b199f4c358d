// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/food_codes.h"

#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::app {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

TEST(FoodCodes, ArePartedByCommasWithoutTheBlanksAroundThem) {
  EXPECT_THAT(codesIn("kale, crickets,,\tlimestone "), ElementsAre("kale", "crickets", "limestone"));
  EXPECT_THAT(codesIn(" ,"), IsEmpty());
}

TEST(FoodCodes, StandOneALineInAFile) {
  const std::string file = fileWith("codes", "kale\r\n\ncrickets, brown\n").string();
  EXPECT_THAT(foodCodes(file), ElementsAre("kale", "crickets, brown"));
  EXPECT_THAT(codesIn(file), ElementsAre(file));
  EXPECT_THAT(foodCodes("kale,crickets"), ElementsAre("kale", "crickets"));
}

}  // namespace
}  // namespace tarebowl::app
