// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/faeces.h"

#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::intake {
namespace {

FaecesCollected sound() {
  return {.group = "lemurs",
          .from = quantity::parseDate("2026-09-01").value(),
          .until = quantity::parseDate("2026-09-05").value(),
          .fresh = quantity::Grams(412),
          .dryMatter = 24.3,
          .values = {{food::nutrients::calcium(), 1850.0, 90.0}}};
}

TEST(Faeces, ThatWereWeighedAndAnalysedAreSound) {
  EXPECT_FALSE(problemWith(sound()));
  FaecesCollected oneDay = sound();
  oneDay.until = oneDay.from;
  oneDay.values.clear();  // dry matter alone says something too
  EXPECT_FALSE(problemWith(oneDay));
}

TEST(Faeces, WhatCannotBeIsNamed) {
  const auto problem = [](auto change) {
    FaecesCollected faeces = sound();
    change(faeces);
    return problemWith(faeces);
  };
  EXPECT_EQ(problem([](auto& f) { std::swap(f.from, f.until); }), FaecesProblem::DaysBackwards);
  EXPECT_EQ(problem([](auto& f) { f.fresh = quantity::Grams(0); }), FaecesProblem::NothingWeighed);
  EXPECT_EQ(problem([](auto& f) { f.dryMatter = 0.0; }), FaecesProblem::NoDryMatter);
  EXPECT_EQ(problem([](auto& f) { f.dryMatter = 100.5; }), FaecesProblem::NoDryMatter);
  EXPECT_EQ(problem([](auto& f) { f.dryMatter = std::numeric_limits<double>::quiet_NaN(); }),
            FaecesProblem::NoDryMatter);
  EXPECT_EQ(problem([](auto& f) { f.values[0].per100gDryMatter = -1.0; }), FaecesProblem::BadValue);
  EXPECT_EQ(problem([](auto& f) { f.values.push_back(f.values[0]); }), FaecesProblem::TwiceTheSame);
  EXPECT_EQ(problem([](auto& f) { f.values[0].nutrient = food::nutrients::energy(); }),
            FaecesProblem::Energy);
}

}  // namespace
}  // namespace tarebowl::intake
