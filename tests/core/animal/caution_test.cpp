// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/caution.h"

#include "core/food/folding.h"

#include <gmock/gmock.h>

#include <set>

namespace tarebowl::animal {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using Texts = std::vector<std::string>;

const Texts kLemur{"mammal", "primate", "lemur"};
const Texts kFox{"mammal", "carnivore", "canid"};
const Texts kDragon{"reptile", "lizard"};
const Texts kSquirrelMonkey{"mammal", "primate", "New World primates"};

Texts idsFor(const CautionedFood& food, const Texts& taxa) {
  Texts ids;
  for (const FoodCaution* caution : cautionsFor(food, taxa, knownCautions())) ids.push_back(caution->id);
  return ids;
}

Texts named(const char* name, const Texts& taxa, const char* form = "") {
  return idsFor({.code = {}, .name = name, .form = form, .group = {}, .cautions = {}}, taxa);
}

TEST(Cautions, EachSaysWhyAndWhatToDoAndWhence) {
  std::set<std::string> ids;
  for (const FoodCaution& caution : knownCautions()) {
    EXPECT_TRUE(ids.insert(caution.id).second) << caution.id;
    EXPECT_FALSE(caution.reason.empty() || caution.advice.empty() || caution.origin.source.empty())
        << caution.id;
    EXPECT_NE(caution.origin.provenance, Provenance::Unstated) << caution.id;
    for (const auto* list : {&caution.words, &caution.groups, &caution.forms})
      for (const std::string& word : *list) EXPECT_EQ(food::folded(word), word) << caution.id;
  }
  for (const char* id :
       {"persin", "allium", "methylxanthines", "xylitol", "grapes", "raw-beans", "green-potato", "fireflies",
        "rhubarb-leaves", "oxalate", "phytate", "thiaminase", "avidin", "iron-vitamin-c", "vitamin-d2"})
    EXPECT_TRUE(ids.contains(id)) << id;
}

TEST(Cautions, AvocadoIsForNobody) {
  for (const Texts& taxa : {kLemur, kFox, kDragon, Texts{}})
    EXPECT_THAT(named("Avocado, raw", taxa), ElementsAre("persin"));
  EXPECT_EQ(knownCautions().front().severity, CautionSeverity::Never);
}

TEST(Cautions, AreFoundInTheCodeAndWhateverTheAccents) {
  EXPECT_THAT(
      idsFor({.code = "avocado-raw", .name = "Pear of the house", .form = {}, .group = {}, .cautions = {}},
             kFox),
      ElementsAre("persin"));
  EXPECT_THAT(named("ÁVOCADO", kFox), ElementsAre("persin"));
}

TEST(Cautions, GrapesAreForbiddenToCanidsAlone) {
  EXPECT_THAT(named("Grapes, raw", kFox), ElementsAre("grapes"));
  EXPECT_THAT(named("Grapes, raw", kLemur), IsEmpty());
  EXPECT_THAT(named("Grapes, raw", {}), ElementsAre("grapes")) << "of an unknown animal the worst is thought";
  EXPECT_THAT(named("Grapefruit, raw", kFox), IsEmpty()) << "whole words only";
}

TEST(Cautions, FirefliesConcernReptiles) {
  EXPECT_THAT(named("Fireflies", kDragon), ElementsAre("fireflies"));
  EXPECT_THAT(named("Fireflies", kFox), IsEmpty());
}

TEST(Cautions, BeansAreDangerousRawOnly) {
  EXPECT_THAT(named("Kidney beans", kFox, "raw"), ElementsAre("raw-beans"));
  EXPECT_THAT(named("Kidney beans, raw", kFox), ElementsAre("raw-beans"));
  EXPECT_THAT(named("Kidney beans", kFox, "boiled"), IsEmpty());
  EXPECT_THAT(named("Kidney beans, boiled", kFox), IsEmpty());
  EXPECT_THAT(named("Kidney beans", kFox), ElementsAre("raw-beans")) << "nobody knows in which form";
  EXPECT_THAT(named("Green beans", kFox, "raw"), IsEmpty());
}

TEST(Cautions, AGreenPotatoIsOneInAnyOrderOfWords) {
  EXPECT_THAT(named("Potato, green", kFox), ElementsAre("green-potato"));
  EXPECT_THAT(named("Potato, boiled", kFox), IsEmpty());
  EXPECT_THAT(named("Sweet potato", kFox), IsEmpty());
}

TEST(Cautions, InteractionsConcernThoseWhoStoreIronOrNeedD3) {
  EXPECT_THAT(named("Papaya", kLemur), ElementsAre("iron-vitamin-c"));
  EXPECT_THAT(named("Papaya", kFox), IsEmpty());
  EXPECT_THAT(named("Mushrooms", kSquirrelMonkey), ElementsAre("vitamin-d2"));
  EXPECT_THAT(named("Mushrooms", kLemur), IsEmpty());
}

TEST(Cautions, TheGravestComesFirst) {
  EXPECT_THAT(named("Spinach with onion", kFox), ElementsAre("allium", "oxalate"));
}

TEST(Cautions, WhatTheHousePutOnAFoodHoldsWhateverItIsCalled) {
  const Texts put{"allium"};
  EXPECT_THAT(idsFor({.code = {}, .name = "Soup powder", .form = {}, .group = {}, .cautions = put}, kFox),
              ElementsAre("allium"));
}

TEST(Cautions, TheHouseMayAddItsOwnForAGroupOfFoods) {
  const std::vector<FoodCaution> own{{.id = "seed-mix", .groups = {"seed mix"}, .taxa = {"parrots"}}};
  const CautionedFood mix{.code = {}, .name = "Mix 4", .form = {}, .group = "Seed mix", .cautions = {}};
  EXPECT_EQ(cautionsFor(mix, Texts{"bird", "parrot"}, own).size(), 1U);
  EXPECT_THAT(cautionsFor(mix, kFox, own), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::animal
