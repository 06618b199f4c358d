// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/kitchen/example_kitchen.h"

#include "core/store/animal_verbs.h"
#include "core/store/diet_verbs.h"
#include "core/store/feeding_reading.h"
#include "core/store/profile_verbs.h"
#include "core/store/verbs.h"
#include "ui/shared/paths.h"

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using store::Collection;

const store::Author kAuthor{"Nutritionist", "2026-11-01T09:00:00Z"};
constexpr const char* kOpenedAt = "2026-11-25T06:00:00Z";

void addFood(Collection& collection, const std::string& code, const std::string& form, double step) {
  store::addFood(collection,
                 {.food = {.code = code,
                           .name = code,
                           .form = form,
                           .group = "made",
                           .scaleStep = Grams(step),
                           .invented = true}},
                 kAuthor);
}

void addGroup(Collection& collection, const std::string& code, const std::string& section, int animals) {
  store::addGroup(collection,
                  {.code = code,
                   .name = code,
                   .species = "made-up",
                   .section = section,
                   .counts = {{quantity::parseDate("2026-01-01").value(), animals}},
                   .invented = true},
                  kAuthor);
}

/// Approved from the first of November on; grams per animal.
void feed(Collection& collection, const std::string& group, std::vector<diet::DietLine> lines) {
  store::addDiet(collection, {.code = group + "-diet", .name = group + " diet", .group = group}, kAuthor);
  diet::DietVersion version;
  version.profile = {"made-up-targets", 1};
  version.lines = std::move(lines);
  const store::VersionId id{store::addVersion(collection, group + "-diet", version, kAuthor).id};
  store::submitVersion(collection, id, 1, "", kAuthor);
  store::approveVersion(collection, id, 2, {.problem = "{}", .result = "{}"},
                        {quantity::parseDate("2026-11-01").value(), 0}, "tried", kAuthor);
}

}  // namespace

quantity::Date kitchenDay() {
  return quantity::parseDate("2026-11-25").value();
}

ExampleKitchen::ExampleKitchen() : file_(toPath(folder_.filePath(QStringLiteral("kitchen.tarebowl")))) {
  Collection collection = Collection::create(file_, kAuthor);
  store::addSpecies(collection, {.code = "made-up", .name = "Made-up animal", .invented = true}, kAuthor);
  const store::Written targets =
      store::addProfile(collection, {.code = "made-up-targets", .name = "Made-up targets"}, kAuthor);
  store::putInForce(collection, store::ProfileId{targets.id}, 1, quantity::parseDate("2026-01-01").value(),
                    "made up", kAuthor);
  addFood(collection, "kale", "raw", 0.1);
  addFood(collection, "crickets", "live", 0.5);
  addGroup(collection, "tenrecs", "Small Mammals", 2);
  addGroup(collection, "mice", "Small Mammals", 2);
  addGroup(collection, "dragon", "Reptiles", 1);
  feed(collection, "mice", {{.food = "kale", .amount = Grams(5)}});
  feed(collection, "tenrecs",
       {{.food = "kale", .amount = Grams(10), .meal = "evening", .preparation = "torn"},
        {.food = "crickets", .amount = Grams(3), .meal = "evening"}});
}

CollectionOpener ExampleKitchen::opener() const {
  return [file = file_] { return Collection::open(file, kOpenedAt); };
}

intake::Bowl ExampleKitchen::bowl(const char* group) const {
  const Collection collection = Collection::open(file_, kOpenedAt);
  return store::findBowl(collection, {group, kitchenDay(), 1}).value();
}

}  // namespace tarebowl::ui
