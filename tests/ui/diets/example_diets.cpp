// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/diets/example_diets.h"

#include "core/store/diet_reading.h"
#include "core/store/verbs.h"
#include "tests/ui/foods/example_foods.h"

#include <QTest>

#include <gtest/gtest.h>

#include <utility>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

const store::Author kAuthor{.who = "test", .at = "2026-11-25T07:30:00Z"};

void addFood(store::Collection& collection, food::Food food, std::vector<food::SampleValue> values) {
  food.invented = true;
  const FoodId id{store::addFood(collection, {.food = std::move(food)}, kAuthor).id};
  store::addSample(collection, id,
                   report(food::SampleOrigin::Publication, "A book", "2002-01-01", std::move(values)),
                   kAuthor);
}

void addFoods(store::Collection& collection) {
  addFood(collection, {.code = "kale-raw", .name = "Kale", .form = "raw", .group = "leafy vegetable"},
          {valueOf("WATER", 85), valueOf("PROCNT", 3), valueOf("CA", 250), valueOf("P", 60), valueOf("FE", 1),
           valueOf("ENERC", 35)});
  addFood(
      collection,
      {.code = "crickets", .name = "Crickets", .form = "live", .group = "insect", .scaleStep = Grams(0.1)},
      {valueOf("WATER", 70), valueOf("PROCNT", 20), valueOf("CA", 40), valueOf("P", 300), valueOf("FE", 2),
       valueOf("ENERC", 120)});
  addFood(collection,
          {.code = "limestone",
           .name = "Limestone",
           .form = "powder",
           .group = "mineral",
           .scaleStep = Grams(0.1)},
          {valueOf("WATER", 0), valueOf("PROCNT", 0), valueOf("CA", 38'000), valueOf("P", 0),
           valueOf("FE", 0), valueOf("ENERC", 0)});
  addFood(collection, {.code = "grubs", .name = "Grubs", .form = "live", .group = "insect"},
          {valueOf("WATER", 60), valueOf("PROCNT", 17), valueOf("CA", 900), valueOf("P", 300),
           valueOf("FE", 3), valueOf("ENERC", 170)});
}

}  // namespace

ExampleDiets::ExampleDiets() {
  store::Collection collection = opener()();
  addFoods(collection);
  store::addDiet(collection,
                 {.code = "tenrec-evening", .name = "Evening bowl", .group = "tenrecs", .invented = true},
                 kAuthor);
  diet::DietVersion version;
  version.profile = {"tenrec", 1};
  version.energyMethod = food::EnergyMethod::Given;
  version.lines = {{.food = "kale-raw", .amount = Grams(4)}, {.food = "crickets", .amount = Grams(12)}};
  draft_ = store::VersionId{store::addVersion(collection, "tenrec-evening", version, kAuthor).id};
}

diet::DietVersion ExampleDiets::stored(store::VersionId id) const {
  return store::findVersion(elsewhere(), id).value().record.version;
}

DietAlone::DietAlone(const ExampleDiets& example, LiveSolver::Function solve)
    : desk(std::move(solve)), document(desk, collection, &exampleToday) {
  collection.setPerson(QStringLiteral("Keeper A"));
  collection.open({.name = QStringLiteral("Herd"), .file = example.file(), .invented = true},
                  example.opener());
  settle();
}

void DietAlone::settle() {
  EXPECT_TRUE(QTest::qWaitFor(
      [this] { return collection.isIdle() && !desk.isSolving() && document.isSaved(); }, 20'000));
}

void DietAlone::open(store::VersionId id) {
  document.open(id);
  settle();
  ASSERT_TRUE(document.isOpen());
}

}  // namespace tarebowl::ui
