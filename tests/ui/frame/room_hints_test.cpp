// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/room_hints.h"

#include "ui/frame/room_numbers.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

int firstRoomOf(int room, const WhatIsThere& there) {
  const auto hint = hintFor(room, there);
  return hint ? hint->firstRoom : 0;
}

TEST(RoomHints, AnEmptyCollectionBeginsWithFoodsWhereBowlsArePreparedAndWithAnimalsForTheVet) {
  for (const int room : {1, 4, 5, 6}) EXPECT_EQ(firstRoomOf(room, {}), kFoodsNumber) << room;
  EXPECT_EQ(firstRoomOf(kHealthNumber, {}), kAnimalsNumber);
}

TEST(RoomHints, ThenComeAnimalsThenADietThenItsApproval) {
  EXPECT_EQ(firstRoomOf(kKitchenNumber, {.foods = true}), kAnimalsNumber);
  EXPECT_EQ(firstRoomOf(kKitchenNumber, {.foods = true, .animals = true}), kDietsNumber);
  const auto unapproved = hintFor(kKitchenNumber, {.foods = true, .animals = true, .diets = true});
  ASSERT_TRUE(unapproved);
  EXPECT_EQ(unapproved->firstRoom, kDietsNumber);
  EXPECT_NE(unapproved->firstWhy, hintFor(kKitchenNumber, {.foods = true, .animals = true})->firstWhy);
}

TEST(RoomHints, ARoomThatHasSomethingToShowShowsIt) {
  for (int room = 1; room <= 7; ++room)
    EXPECT_FALSE(hintFor(room, {.foods = true, .animals = true, .diets = true, .fedDiets = true})) << room;
  EXPECT_FALSE(hintFor(kDietsNumber, {.foods = true, .animals = true}))
      << "the desk lists the groups without a diet";
}

TEST(RoomHints, EachSaysWhatTheRoomIsForAndWhatIsDoneFirst) {
  for (const int room : {1, 4, 5, 6, 7}) {
    const auto hint = hintFor(room, {});
    ASSERT_TRUE(hint) << room;
    for (const QString& text : {hint->heading, hint->forWhat, hint->first, hint->firstWhy})
      EXPECT_FALSE(text.isEmpty()) << room;
  }
}

}  // namespace
}  // namespace tarebowl::ui
