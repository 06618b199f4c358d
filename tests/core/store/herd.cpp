// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/herd.h"

#include "core/store/change_log.h"

#include <gtest/gtest.h>

namespace tarebowl::store {

using animal::Provenance;

quantity::Date day(const char* iso) {
  return quantity::parseDate(iso).value();
}

animal::Species lemurSpecies() {
  return {.code = "red-ruffed-lemur",
          .name = "Red ruffed lemur",
          .scientificName = "Varecia rubra",
          .feedingType = animal::FeedingType::Frugivore,
          .taxa = {"mammal", "primate", "lemur"},
          .note = "stores iron",
          .invented = true};
}

animal::Individual lemur(const std::string& code) {
  return {.code = code,
          .species = "red-ruffed-lemur",
          .sex = animal::Sex::Female,
          .born = day("2019-05-01"),
          .birthEstimated = true,
          .arrived = day("2020-03-01"),
          .stages = {{day("2019-05-01"), animal::LifeStage::Unweaned},
                     {day("2019-10-01"), animal::LifeStage::Growing},
                     {day("2021-05-01"), animal::LifeStage::Adult}},
          .note = "blue ear tag",
          .invented = true};
}

animal::Group lemurGroup(const std::string& code) {
  return {.code = code,
          .name = "Red ruffed lemurs, " + code,
          .species = "red-ruffed-lemur",
          .section = "Small Mammals",
          .counts = {{day("2026-01-01"), 4}, {day("2026-06-01"), 5}},
          .note = "indoors in winter",
          .invented = true};
}

MassRecord weighed(const std::string& individual, const char* iso, double kilograms) {
  MassRecord record{.individual = individual};
  record.reading = {.on = day(iso),
                    .mass = quantity::Kilograms(kilograms),
                    .method = animal::MassMethod::TrainedOnScale,
                    .note = "before breakfast"};
  return record;
}

animal::TargetProfile bareProfile(const std::string& code) {
  return {.code = code, .name = code};
}

animal::TargetProfile primateProfile() {
  const auto nutrient = [](const char* tagname) { return food::findByTagname(tagname).value(); };
  const animal::TargetOrigin seen{"an invented handbook", Provenance::Seen, "primate"};
  animal::TargetProfile profile{.code = "primates",
                                .name = "Primates, adult",
                                .modelSpecies = "macaque",
                                .whyModel = "the only primate that was measured",
                                .lifeStage = "adult maintenance",
                                .kcalPerGramDryMatter = 4.0,
                                .dryMatterFraction = 0.9,
                                .note = "invented",
                                .invented = true};
  profile.targets = {{.target = {.id = "ca",
                                 .nutrient = nutrient("CA"),
                                 .min = 8,
                                 .max = 12,
                                 .unit = quantity::Unit::Gram,
                                 .basis = quantity::Basis::DryMatter,
                                 .weight = 2,
                                 .origin = seen},
                      .preferred = 10,
                      .note = "at least as much as phosphorus"},
                     {.target = {.id = "fe-limit",
                                 .nutrient = nutrient("FE"),
                                 .min = {},
                                 .max = 100,
                                 .unit = quantity::Unit::Milligram,
                                 .basis = quantity::Basis::DryMatter,
                                 .origin = {"the house", Provenance::HouseRule, ""}},
                      .safeUpperLimit = true,
                      .lifted = animal::LiftedLimit{"Vet", "2026-11-01", "pregnant\nfemale"}}};
  profile.ratios = {{.target = {.id = "ca-p",
                                .of = nutrient("CA"),
                                .to = nutrient("P"),
                                .min = 1,
                                .max = 2,
                                .hard = true,
                                .origin = seen},
                     .preferred = 1.5,
                     .note = "both in g"}};
  profile.shares = {{.id = "browse",
                     .group = "browse",
                     .min = 0.1,
                     .max = {},
                     .basis = quantity::Basis::AsFed,
                     .hard = true,
                     .weight = 3,
                     .origin = seen}};
  profile.choices = {{.group = "cooked root", .atLeast = 1, .atMost = 2, .minEach = quantity::Grams(5)}};
  profile.exclusions = {{.id = "no-fruit", .group = "fruit", .reason = "cultivated fruit is too sweet"}};
  return profile;
}

Herd::Herd() : collection(Collection::create(folder.collection("a"), kKeeper)) {
  addSpecies(collection, lemurSpecies(), kKeeper);
  for (const char* code : {"a", "b"}) addIndividual(collection, lemur(code), kKeeper);
  for (const char* code : {"family", "pair"}) addGroup(collection, lemurGroup(code), kKeeper);
}

std::string refusal(const Collection& collection, const std::function<void()>& work) {
  const std::size_t changes = newestChanges(collection, 1000).size();
  const auto error = errorOf(work);
  EXPECT_TRUE(error) << "it was not refused";
  EXPECT_EQ(newestChanges(collection, 1000).size(), changes) << "something was written";
  if (!error) return "";
  EXPECT_EQ(error->code(), StoreErrorCode::Refused) << error->what();
  return error->what();
}

}  // namespace tarebowl::store
