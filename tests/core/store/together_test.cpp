// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/together.h"

#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace tarebowl::store {
namespace {

struct Larder {
  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("larder"), kKeeper);
};

TEST(Together, ManyVerbsAreKeptAsOne) {
  Larder larder;
  together(larder.collection, [&] {
    addFood(larder.collection, plain("a"), kKeeper);
    addFood(larder.collection, plain("b"), kKeeper);
  });
  EXPECT_EQ(countFoods(larder.collection), 2U);
}

TEST(Together, WhereOneFailsNoneIsKept) {
  Larder larder;
  EXPECT_THROW(together(larder.collection,
                        [&] {
                          addFood(larder.collection, plain("a"), kKeeper);
                          addFood(larder.collection, plain("a"), kKeeper);  // the code is taken
                        }),
               StoreError);
  EXPECT_EQ(countFoods(larder.collection), 0U);
}

TEST(Together, AVerbThatFailsAndIsCaughtTakesNothingElseWithIt) {
  Larder larder;
  together(larder.collection, [&] {
    addFood(larder.collection, plain("a"), kKeeper);
    EXPECT_THROW(addFood(larder.collection, plain("a"), kKeeper), StoreError);
    addFood(larder.collection, plain("b"), kKeeper);
  });
  EXPECT_EQ(countFoods(larder.collection), 2U);
  addFood(larder.collection, plain("c"), kKeeper);  // and the next one stands by itself again
  EXPECT_EQ(countFoods(larder.collection), 3U);
}

}  // namespace
}  // namespace tarebowl::store
