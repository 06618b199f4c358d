// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/sampling_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::food {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

NutrientId id(const char* tagname) {
  return findByTagname(tagname).value();
}

quantity::Date day(const char* text) {
  return quantity::parseDate(text).value();
}

Sample analysed(const char* date, const char* tagname) {
  Sample sample{.origin = SampleOrigin::OwnLab};
  sample.date = day(date);
  sample.values.push_back({.nutrient = id(tagname)});
  return sample;
}

TEST(SamplingPlan, CalciumEverySixMonthsIsDueSixMonthsAfterTheLastSample) {
  const std::vector<PlannedAnalysis> plan{{id("CA"), 6}};
  const std::vector samples{analysed("2026-01-15", "CA"), analysed("2026-05-20", "CA")};
  EXPECT_THAT(dueOn(day("2026-11-19"), plan, samples), IsEmpty());
  EXPECT_THAT(dueOn(day("2026-11-20"), plan, samples),
              ElementsAre(DueAnalysis{id("CA"), day("2026-05-20"), day("2026-11-20")}));
}

TEST(SamplingPlan, WhatWasNeverAnalysedComesFirst) {
  const std::vector<PlannedAnalysis> plan{{id("CA"), 6}, {id("P"), 12}, {id("SE"), 12}};
  const std::vector samples{analysed("2024-01-15", "CA"), analysed("2020-05-20", "P")};
  const auto due = dueOn(day("2026-11-25"), plan, samples);
  ASSERT_EQ(due.size(), 3U);
  EXPECT_EQ(due[0].nutrient, id("SE"));
  EXPECT_EQ(due[1].nutrient, id("P"));
  EXPECT_EQ(due[2].nutrient, id("CA"));
}

TEST(SamplingPlan, APublicationOrAnExcludedSampleIsNoAnalysis) {
  const std::vector<PlannedAnalysis> plan{{id("CA"), 6}};
  Sample table = analysed("2026-11-01", "CA");
  table.origin = SampleOrigin::Publication;
  Sample wrong = analysed("2026-11-02", "CA");
  wrong.excluded = "mixed up";
  EXPECT_THAT(dueOn(day("2026-11-25"), plan, std::vector{table, wrong}),
              ElementsAre(DueAnalysis{id("CA"), std::nullopt, std::nullopt}));
}

}  // namespace
}  // namespace tarebowl::food
