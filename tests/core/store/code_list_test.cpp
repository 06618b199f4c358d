// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/code_list.h"

#include "core/store/food_rows.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::ElementsAre;
using testing::UnorderedElementsAre;

TEST(CodeList, HoldsEachCodeOnceInItsOrder) {
  EXPECT_THAT(CodeList({"kale", "endive", "kale"}).codes(), ElementsAre("endive", "kale"));
}

TEST(CodeList, OfAnyLengthAreFewStatements) {
  EXPECT_EQ(CodeList({}).places(), "NULL");
  EXPECT_EQ(CodeList({"a"}).places(), "?");
  EXPECT_EQ(CodeList({"a", "b", "c"}).places(), "?, ?, ?, ?");
  EXPECT_EQ(CodeList({"a", "b", "c"}).places(), CodeList({"a", "b", "c", "d"}).places());
}

TEST(CodeList, PicksTheRowsOfItsCodesEachOnce) {
  const OwnFolder folder;
  Collection collection = Collection::create(folder.collection("a"), kKeeper);
  for (const char* food : {"kale", "endive", "carrot", "pellet"}) addFood(collection, plain(food), kKeeper);
  const auto found = [&](const CodeList& codes) {
    std::vector<std::string> picked;
    guarded(collection.file(), [&] {
      for (const auto& [id, food] : foodRowsOf(collection.inner(), codes)) picked.push_back(food.code);
    });
    return picked;
  };
  EXPECT_THAT(found(CodeList({"kale", "pellet", "gone"})), UnorderedElementsAre("kale", "pellet"));
  EXPECT_TRUE(found(CodeList({})).empty());
}

}  // namespace
}  // namespace tarebowl::store
