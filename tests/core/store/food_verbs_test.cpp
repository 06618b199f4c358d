// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"
#include "core/store/food_json.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::HasSubstr;

class FoodVerbs : public testing::Test {
 protected:
  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("a"), kKeeper);

  Written added(const FoodRecord& record) { return addFood(collection, record, kKeeper); }
  [[nodiscard]] std::string why(const std::function<void()>& work) {
    const std::size_t changes = newestChanges(collection, 1000).size();
    const auto error = errorOf(work);
    EXPECT_TRUE(error);
    EXPECT_EQ(newestChanges(collection, 1000).size(), changes);  // nothing was written
    if (!error) return "";
    EXPECT_EQ(error->code(), StoreErrorCode::Refused) << error->what();
    return error->what();
  }
};

/// Two grams of the first food, four of the second …
FoodRecord mixOf(const std::vector<std::string>& parts) {
  FoodRecord record = plain("mix");
  record.recipe =
      food::Recipe{.massYield = 0.95, .retentions = {{nutrient("VITC"), 0.8}}, .source = "invented"};
  for (const std::string& part : parts)
    record.recipe->parts.push_back(
        {part, quantity::Grams(2.0 * static_cast<double>(record.recipe->parts.size() + 1))});
  return record;
}

TEST_F(FoodVerbs, AFoodIsReadAsItWasWritten) {
  const Written written = added(pellet());
  const StoredFood read = theFood(collection, written.id);
  EXPECT_EQ(read.record, pellet());
  EXPECT_EQ(read.revision, 1);
  EXPECT_EQ(findFood(collection, "pellet-a")->id, read.id);
  EXPECT_FALSE(findFood(collection, "pellet-b"));
}

TEST_F(FoodVerbs, AnEditReplacesTheWholeRecordAndIsLogged) {
  const Written written = added(pellet());
  FoodRecord changed = pellet();
  changed.food.name = "Pellet A, new";
  changed.overrides.pop_back();
  changed.plan.clear();
  const Written edited =
      editFood(collection, FoodId{written.id}, 1, changed, {"Nutritionist", "2026-11-26T09:00:00Z"});
  EXPECT_EQ(theFood(collection, written.id).record, changed);
  EXPECT_EQ(edited.revision, 2);
  const Change change = findChange(collection, edited.change).value();
  EXPECT_EQ(change.verb, "edit food");
  EXPECT_EQ(change.author.who, "Nutritionist");
  EXPECT_EQ(change.author.at, "2026-11-26T09:00:00Z");
  EXPECT_EQ(change.before, toJson(pellet()));
  EXPECT_EQ(change.after, toJson(changed));
}

TEST_F(FoodVerbs, TheLogHoldsAFoodWithoutLoss) {
  EXPECT_EQ(foodFromJson(toJson(pellet())), pellet());
  FoodRecord mash = plain("mash");
  mash.cooking = food::Cooking{"root", 0.9, {{nutrient("VITC"), 0.7}}, "invented"};
  EXPECT_EQ(foodFromJson(toJson(mash)), mash);
  EXPECT_EQ(foodFromJson(toJson(mixOf({"root", "egg"}))), mixOf({"root", "egg"}));
}

TEST_F(FoodVerbs, AMixIsReadWithItsRecipe) {
  added(plain("root"));
  added(plain("egg"));
  const Written mix = added(mixOf({"root", "egg"}));
  EXPECT_EQ(theFood(collection, mix.id).record, mixOf({"root", "egg"}));
  editFood(collection, FoodId{mix.id}, 1, mixOf({"egg"}), kKeeper);
  EXPECT_EQ(theFood(collection, mix.id).record, mixOf({"egg"}));
  removeFood(collection, FoodId{mix.id}, 2, kKeeper);
  EXPECT_FALSE(findFood(collection, "mix"));
}

TEST_F(FoodVerbs, AMixOfNothingOrOfWhatIsNotThereIsRefused) {
  added(plain("root"));
  EXPECT_THAT(why([&] { added(mixOf({})); }), HasSubstr("a recipe needs a part"));
  EXPECT_THAT(why([&] { added(mixOf({"root", "egg"})); }), HasSubstr("there is no food egg to mix from"));
  FoodRecord both = mixOf({"root"});
  both.cooking = food::Cooking{"root", 0.9, {}, ""};
  EXPECT_THAT(why([&] { added(both); }), HasSubstr("not both"));
  added(mixOf({"root"}));
  const StoredFood root = findFood(collection, "root").value();
  EXPECT_THAT(why([&] { removeFood(collection, root.id, 1, kKeeper); }), HasSubstr("mix is made from root"));
}

TEST_F(FoodVerbs, AMixOfWhatIsCookedFromItIsRefusedWithTheChain) {
  added(plain("egg"));
  const Written root = added(plain("root"));
  FoodRecord boiled = plain("boiled");
  boiled.cooking = food::Cooking{"root", 0.9, {}, ""};
  added(boiled);
  added(mixOf({"egg", "boiled"}));
  FoodRecord cyclic = mixOf({"egg", "mix"});
  cyclic.food = plain("root").food;
  EXPECT_THAT(why([&] { editFood(collection, FoodId{root.id}, 1, cyclic, kKeeper); }),
              HasSubstr("root → mix → boiled → root"));
}

TEST_F(FoodVerbs, AnEditOfAnOldVersionIsRefusedWithBothVersions) {
  const Written written = added(plain("kale"));
  FoodRecord theirs = plain("kale");
  theirs.food.note = "theirs";
  editFood(collection, FoodId{written.id}, 1, theirs, kKeeper);
  FoodRecord mine = plain("kale");
  mine.food.note = "mine";
  try {
    editFood(collection, FoodId{written.id}, 1, mine, kKeeper);
    FAIL() << "a lost update";
  } catch (const ConflictError& conflict) {
    EXPECT_EQ(conflict.code(), StoreErrorCode::Conflict);
    EXPECT_EQ(foodFromJson(conflict.mine()), mine);
    EXPECT_EQ(foodFromJson(conflict.theirs()), theirs);
  }
  EXPECT_EQ(theFood(collection, written.id).record, theirs);
}

TEST_F(FoodVerbs, AnEditOfWhatWasRemovedElsewhereSaysSo) {
  const Written written = added(plain("kale"));
  removeFood(collection, FoodId{written.id}, 1, kKeeper);
  try {
    editFood(collection, FoodId{written.id}, 1, plain("kale"), kKeeper);
    FAIL() << "edited what is not there";
  } catch (const ConflictError& conflict) {
    EXPECT_EQ(conflict.theirs(), "");
    EXPECT_THAT(conflict.what(), HasSubstr("was removed elsewhere"));
  }
}

TEST_F(FoodVerbs, WhatTheCollectionsRulesForbidIsRefusedInWords) {
  added(plain("kale"));
  EXPECT_THAT(why([&] { added(plain("kale")); }), HasSubstr("another food with the code kale"));
  EXPECT_THAT(why([&] { added(plain("")); }), HasSubstr("needs a code"));
  FoodRecord noReason = pellet();
  noReason.overrides[0].reason.clear();
  EXPECT_THAT(why([&] { added(noReason); }), HasSubstr("needs a reason"));
  FoodRecord fromNowhere = plain("mash");
  fromNowhere.cooking = food::Cooking{"root", 0.9, {}, ""};
  EXPECT_THAT(why([&] { added(fromNowhere); }), HasSubstr("no food root to cook from"));
}

TEST_F(FoodVerbs, AFoodCookedFromItselfIsRefusedWithTheChain) {
  const Written root = added(plain("root"));
  FoodRecord boiled = plain("boiled");
  boiled.cooking = food::Cooking{"root", 0.9, {}, ""};
  added(boiled);
  FoodRecord mash = plain("mash");
  mash.cooking = food::Cooking{"boiled", 1.0, {}, ""};
  added(mash);
  FoodRecord cyclic = plain("root");
  cyclic.cooking = food::Cooking{"mash", 1.0, {}, ""};
  EXPECT_THAT(why([&] { editFood(collection, FoodId{root.id}, 1, cyclic, kKeeper); }),
              HasSubstr("root → mash → boiled → root"));
  EXPECT_FALSE(theFood(collection, root.id).record.cooking);
}

TEST_F(FoodVerbs, AFoodInUseIsNotRemoved) {
  const Written root = added(plain("root"));
  FoodRecord mash = plain("mash");
  mash.cooking = food::Cooking{"root", 0.9, {}, ""};
  added(mash);
  EXPECT_THAT(why([&] { removeFood(collection, FoodId{root.id}, 1, kKeeper); }),
              HasSubstr("mash is made from root"));
  const Written kale = added(plain("kale"));
  addSample(collection, FoodId{kale.id}, analysis("report 1", "2026-01-01", 254), kKeeper);
  EXPECT_THAT(why([&] { removeFood(collection, FoodId{kale.id}, 1, kKeeper); }), HasSubstr("has samples"));
}

TEST_F(FoodVerbs, EverythingUndoesAndRedoesInTurn) {
  const Written add = added(pellet());
  FoodRecord changed = pellet();
  changed.food.note = "changed";
  const Written edit = editFood(collection, FoodId{add.id}, 1, changed, kKeeper);
  const Written remove = removeFood(collection, FoodId{add.id}, 2, kKeeper);

  const Written back = undo(collection, remove.change, kKeeper);
  EXPECT_EQ(theFood(collection, add.id).record, changed);
  undo(collection, edit.change, kKeeper);
  EXPECT_EQ(theFood(collection, add.id).record, pellet());
  undo(collection, add.change, kKeeper);
  EXPECT_FALSE(findFood(collection, FoodId{add.id}));
  EXPECT_EQ(codeOf([&] { undo(collection, back.change, kKeeper); }), StoreErrorCode::Conflict);
}

TEST_F(FoodVerbs, AnUndoneEditIsRedoneByUndoingTheUndo) {
  const Written add = added(pellet());
  FoodRecord changed = pellet();
  changed.food.note = "changed";
  const Written edit = editFood(collection, FoodId{add.id}, 1, changed, kKeeper);
  const Written undone = undo(collection, edit.change, kKeeper);
  EXPECT_EQ(undone.revision, 3);
  EXPECT_EQ(findChange(collection, undone.change)->verb,
            "undo " + std::to_string(edit.change) + ": edit food");
  undo(collection, undone.change, kKeeper);
  EXPECT_EQ(theFood(collection, add.id).record, changed);
}

TEST_F(FoodVerbs, ARemovedFoodComesBackWhateverWasAddedMeanwhile) {
  const Written kale = added(plain("kale"));
  const Written removed = removeFood(collection, FoodId{kale.id}, 1, kKeeper);
  const Written endive = added(plain("endive"));
  EXPECT_NE(endive.id, kale.id) << "a number is given once";
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(theFood(collection, kale.id).record, plain("kale"));
  EXPECT_EQ(theFood(collection, endive.id).record, plain("endive"));
}

TEST_F(FoodVerbs, ARemovedFoodWhoseCodeIsTakenStaysAwayAndSaysWhy) {
  const Written kale = added(plain("kale"));
  const Written removed = removeFood(collection, FoodId{kale.id}, 1, kKeeper);
  added(plain("kale"));
  EXPECT_THAT(why([&] { undo(collection, removed.change, kKeeper); }),
              HasSubstr("there is another food with the code kale"));
}

TEST_F(FoodVerbs, WhatWasChangedSinceIsNotUndone) {
  const Written add = added(plain("kale"));
  FoodRecord other = plain("kale");
  other.food.note = "by another";
  editFood(collection, FoodId{add.id}, 1, other, kKeeper);
  EXPECT_EQ(codeOf([&] { undo(collection, add.change, kKeeper); }), StoreErrorCode::Conflict);
  EXPECT_EQ(theFood(collection, add.id).record, other);
}

}  // namespace
}  // namespace tarebowl::store
