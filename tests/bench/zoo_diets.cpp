// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/zoo_diets.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/diet_verbs.h"
#include "core/store/together.h"
#include "core/transfer/desk_diet.h"
#include "tests/bench/bench_files.h"
#include "tests/bench/fed_zoo.h"
#include "tests/bench/zoo_herd.h"

#include <random>

namespace tarebowl::bench {

namespace {

using diet::VersionState;
using quantity::Grams;

constexpr int kDaysOfVersion = 365;

diet::DietVersion draftOf(int group, int number, std::mt19937& random) {
  diet::DietVersion version{.number = number, .profile = {profileOfGroup(group), 1}};
  if (number > 1) version.madeFrom = number - 1;
  for (int item = 1; item <= kItems; ++item)
    version.lines.push_back({.food = foodOfItem(group, item),
                             .amount = Grams(0.5 * static_cast<double>(10 + random() % 200)),
                             .max = Grams(400),
                             .meal = "morning",
                             .preparation = "chopped"});
  return version;
}

void approve(diet::DietVersion& version, int firstDay) {
  const std::string at = intake::timeFrom(dayAt(firstDay), 0);
  version.state = VersionState::Approved;
  version.fedFrom = dayAt(firstDay);
  version.steps = {{VersionState::Submitted, "Nutritionist", at, ""},
                   {VersionState::Approved, "Vet", at, "the yearly review"}};
}

void addVersion(store::Collection& collection, int group, int number, std::mt19937& random) {
  store::VersionRecord record{.diet = dietCode(group), .version = draftOf(group, number, random)};
  const int firstDay = (number - 1) * kDaysOfVersion;
  if (firstDay < days()) {
    approve(record.version, firstDay);
    if (const auto desk = transfer::readDesk(collection, record, dayAt(firstDay)))
      record.decided = transfer::decisionOn(desk->made);
  }
  store::importVersion(collection, record, kBench);
}

}  // namespace

std::string dietCode(int group) {
  return "diet-" + groupCode(group);
}

int versionOnDay(int day) {
  return 1 + day / kDaysOfVersion;
}

void addDiets(store::Collection& collection) {
  std::mt19937 random(20260104);
  const int versions = versionOnDay(days() - 1) + 1;
  for (int group = 0; group < groups(); ++group)
    store::together(collection, [&] {
      store::addDiet(collection,
                     {.code = dietCode(group),
                      .name = groupCode(group) + ", morning bowl",
                      .group = groupCode(group),
                      .invented = true},
                     kBench);
      for (int number = 1; number <= versions; ++number) addVersion(collection, group, number, random);
    });
}

}  // namespace tarebowl::bench
