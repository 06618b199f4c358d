// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/diets.h"

namespace tarebowl::store {

using quantity::Grams;

diet::NamedDiet morningBowl() {
  return {.code = "lemur-morning",
          .name = "Lemurs, morning bowl",
          .group = "family",
          .note = "in three bowls, far apart",
          .invented = true};
}

diet::DietVersion fullVersion() {
  const animal::TargetOrigin house{"the house", animal::Provenance::HouseRule, ""};
  diet::DietVersion version;
  version.profile = {"primates", 1};
  version.lines = {{.food = "kale",
                    .amount = Grams(120),
                    .min = Grams(20),
                    .max = Grams(200),
                    .locked = true,
                    .meal = "morning",
                    .preparation = "torn, unwashed leaves off"},
                   {.food = "pellet-a", .amount = Grams(30.5), .purpose = diet::Purpose::TrainingReward}};
  version.allowances = {{.food = "willow",
                         .low = Grams(5),
                         .high = Grams(15),
                         .purpose = diet::Purpose::Browse,
                         .note = "two branches"}};
  version.changedBounds = {{.rule = "ca", .min = 9, .max = {}, .reason = "young ones grow"}};
  version.shares = {{.id = "leaf-share",
                     .group = "leafy vegetable",
                     .min = 0.3,
                     .max = {},
                     .basis = quantity::Basis::AsFed,
                     .origin = house}};
  version.choices = {{.group = "leafy vegetable", .atLeast = 1, .atMost = 3, .minEach = Grams(10)}};
  version.objective = {.kind = diet::Objective::Kind::Lowest, .nutrient = food::findByTagname("FE")};
  version.confidence = 0.95;
  version.energyMethod = food::EnergyMethod::Atwater;
  version.wholeSteps = false;
  version.lifted = {
      {.ban = "no-fruit", .food = "pear", .reason = "pills go in it", .who = "Vet", .on = "2026-11-01"}};
  version.phaseInDays = 5;
  version.note = "after the talk with the keepers";
  return version;
}

DecidedDiet decision() {
  return {.problem = R"({"format": "tarebowl-problem/1"})", .result = R"({"format": "tarebowl-result/1"})"};
}

FedHerd::FedHerd() {
  const Written profile = addProfile(collection, primateProfile(), kKeeper);
  putInForce(collection, ProfileId{profile.id}, 1, day("2026-01-01"), "approved", kKeeper);
  addDiet(collection, morningBowl(), kKeeper);
}

}  // namespace tarebowl::store
