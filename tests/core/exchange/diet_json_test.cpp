// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/diet_json.h"

#include "core/exchange/problem_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

using quantity::Grams;
using testing::HasSubstr;

/// Something in every field.
DietFile fullDiet() {
  diet::DietVersion version{.number = 2, .state = diet::VersionState::Approved, .madeFrom = 1};
  version.profile = {"primates", 3};
  version.lines = {{.food = "kale",
                    .amount = Grams(12.5),
                    .min = Grams(2),
                    .max = Grams(20),
                    .locked = true,
                    .purpose = diet::Purpose::Enrichment,
                    .meal = "morning",
                    .preparation = "torn"},
                   {.food = "egg", .amount = Grams(50)}};
  version.allowances = {{.food = "willow",
                         .low = Grams(1),
                         .high = Grams(3),
                         .purpose = diet::Purpose::Browse,
                         .note = "a branch"}};
  version.changedBounds = {{.rule = "ca", .min = 9, .max = {}, .reason = "growing"}};
  version.shares = {{.id = "leaves",
                     .group = "leafy vegetable",
                     .min = 0.3,
                     .max = {},
                     .basis = quantity::Basis::AsFed,
                     .origin = {"the house", animal::Provenance::HouseRule, ""}}};
  version.choices = {{.group = "leafy vegetable", .atLeast = 1, .atMost = 2, .minEach = Grams(5)}};
  version.objective = {.kind = diet::Objective::Kind::Highest, .nutrient = food::findByTagname("FIBND")};
  version.confidence = 0.9;
  version.energyMethod = food::EnergyMethod::Atwater;
  version.wholeSteps = false;
  version.lifted = {{.ban = "no-fruit", .food = "pear", .reason = "pills", .who = "Vet", .on = "2026-11-01"}};
  version.fedFrom = quantity::parseDate("2026-12-01");
  version.phaseInDays = 7;
  version.note = "after the talk";
  version.steps = {{diet::VersionState::Submitted, "Keeper A", "2026-11-20T08:00:00Z", ""},
                   {diet::VersionState::Approved, "Vet", "2026-11-21T09:00:00Z", "balanced"}};
  return {
      .diet = {.code = "lemur-morning", .name = "morning", .group = "lemurs", .note = "n", .invented = true},
      .versions = {version, {.number = 3, .lines = {{.food = "kale", .amount = Grams(1)}}}}};
}

std::string complaintOf(const std::string& text) {
  try {
    (void)parseDiet(text, "diet.json");
  } catch (const FormatError& error) {
    return error.what();
  }
  return "";
}

/// A file that is sound but for one place.
std::string with(const std::string& place, const std::string& instead) {
  std::string text = writeDiet(fullDiet());
  const std::size_t at = text.find(place);
  return text.replace(at, place.size(), instead);
}

TEST(DietJson, ADietReadsBackWithEverythingItSays) {
  EXPECT_EQ(parseDiet(writeDiet(fullDiet()), "diet.json"), fullDiet());
}

TEST(DietJson, WhatIsWrongIsNamedWithItsPlace) {
  EXPECT_THAT(complaintOf(with("tarebowl-diet/1", "tarebowl-diet/9")), HasSubstr("format: expected"));
  EXPECT_THAT(complaintOf(with("\"g\": 12.5", "\"g\": -1")), HasSubstr("versions[0].lines[0].g: expected"));
  EXPECT_THAT(complaintOf(with("\"purpose\": \"enrichment\"", "\"purpose\": \"fun\"")),
              HasSubstr("versions[0].lines[0].purpose"));
  EXPECT_THAT(complaintOf(with("2026-11-20T08:00:00Z", "last week")), HasSubstr("versions[0].steps[0].at"));
  EXPECT_THAT(complaintOf(with("\"max_g\"", "\"maxg\"")), HasSubstr("did you mean"));
}

}  // namespace
}  // namespace tarebowl::exchange
