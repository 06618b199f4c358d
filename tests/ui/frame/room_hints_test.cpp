// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/room_hints.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr int kFoods = 2;
constexpr int kAnimals = 3;
constexpr int kDiets = 4;
constexpr int kKitchen = 5;

int firstRoomOf(int room, const WhatIsThere& there) {
  const auto hint = hintFor(room, there);
  return hint ? hint->firstRoom : 0;
}

TEST(RoomHints, AnEmptyCollectionBeginsWithFoodsInEveryRoomThatHasNothing) {
  for (const int room : {1, 4, 5, 6, 7}) EXPECT_EQ(firstRoomOf(room, {}), kFoods) << room;
}

TEST(RoomHints, ThenComeAnimalsThenADietThenItsApproval) {
  EXPECT_EQ(firstRoomOf(kKitchen, {.foods = true}), kAnimals);
  EXPECT_EQ(firstRoomOf(kKitchen, {.foods = true, .animals = true}), kDiets);
  const auto unapproved = hintFor(kKitchen, {.foods = true, .animals = true, .diets = true});
  ASSERT_TRUE(unapproved);
  EXPECT_EQ(unapproved->firstRoom, kDiets);
  EXPECT_NE(unapproved->firstWhy, hintFor(kKitchen, {.foods = true, .animals = true})->firstWhy);
}

TEST(RoomHints, ARoomThatHasSomethingToShowShowsIt) {
  for (int room = 1; room <= 7; ++room)
    EXPECT_FALSE(hintFor(room, {.foods = true, .animals = true, .diets = true, .fedDiets = true})) << room;
  EXPECT_FALSE(hintFor(kDiets, {.foods = true, .animals = true}))
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
