// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Of what a server is asked again and again it keeps the plan, and nobody puts it into its words anew.
#include "core/store/known_statements.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

constexpr const char* kFood = "SELECT name FROM food WHERE code = :code";

TEST(KnownStatements, TheSameTextIsTheSameStatementInTheServersWords) {
  KnownStatements known;
  const auto first = known.of(kFood);
  EXPECT_EQ(first->text, "SELECT name FROM food WHERE code = $1");
  EXPECT_EQ(known.of(kFood), first);
  EXPECT_NE(known.of("SELECT name FROM food")->number, first->number);
}

TEST(KnownStatements, WhatComesAgainIsWorthKeepingReadyUntilTheConnectionIsAnother) {
  KnownStatements known;
  const auto food = known.of(kFood);
  EXPECT_FALSE(known.countRun(*food));
  EXPECT_TRUE(known.countRun(*food));
  EXPECT_EQ(known.nameOf(*food), "");
  const std::string name = known.freshName();
  known.keepName(food->number, name);
  EXPECT_EQ(known.nameOf(*food), name);
  EXPECT_NE(known.freshName(), name);
  known.forgetNames();
  EXPECT_EQ(known.nameOf(*food), "");
}

TEST(KnownStatements, ThereIsRoomForNewOnesAndWhatIsKeptReadyStaysKnown) {
  KnownStatements known;
  const auto kept = known.of(kFood);
  known.keepName(kept->number, known.freshName());
  const auto once = known.of("SELECT 1");
  for (int i = 0; i < 5'000; ++i) (void)known.of(fmt::format("SELECT name FROM food WHERE id IN ({})", i));
  EXPECT_EQ(known.of(kFood), kept);
  EXPECT_NE(known.of("SELECT 1"), once);  // and who still holds the former one can go on with it
  EXPECT_EQ(once->text, "SELECT 1");
}

TEST(KnownStatements, NoMoreThanSomeHundredAreKeptReady) {
  KnownStatements known;
  const auto food = known.of(kFood);
  (void)known.countRun(*food);
  for (int i = 0; i < 1'000; ++i) (void)known.freshName();
  EXPECT_FALSE(known.countRun(*food));
}

}  // namespace
}  // namespace tarebowl::store
