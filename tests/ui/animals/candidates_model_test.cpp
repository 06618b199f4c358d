// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/candidates_model.h"

#include "tests/ui/animals/example_profiles.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

animal::ResolvedProfile alone(const animal::TargetProfile& profile) {
  return std::get<animal::ResolvedProfile>(
      animal::resolve(profile, [](const animal::ProfileReference&) { return std::nullopt; }));
}

/// The same calcium per 1000 kcal, stated at 4.0 kcal/g: 8 g/kg DM is 2 g per 1000 kcal, 20 is 5.
animal::TargetProfile sameOnEnergy() {
  animal::TargetProfile profile = exampleParent();
  profile.code = "energy";
  profile.shares.clear();
  profile.targets.erase(profile.targets.begin() + 1, profile.targets.end());
  profile.targets.front().target.min = 2.0;
  profile.targets.front().target.max = 5.0;
  profile.targets.front().target.basis = quantity::Basis::Energy;
  return profile;
}

class CandidatesModelTest : public ::testing::Test {
 protected:
  std::string at(const char* target, int candidate) {
    return model.index(model.rowOf(QString::fromUtf8(target)), CandidatesModel::FirstCandidate + candidate)
        .data()
        .toString()
        .toStdString();
  }
  bool differs(const char* target, int candidate) {
    return model.differs(
        model.index(model.rowOf(QString::fromUtf8(target)), CandidatesModel::FirstCandidate + candidate));
  }
  CandidatesModel model;
};

TEST_F(CandidatesModelTest, OneNumberStatedOnTwoBasesIsNoDifference) {
  model.show({alone(exampleParent()), alone(sameOnEnergy())}, quantity::Basis::DryMatter);
  EXPECT_EQ(at("Calcium", 0), "8000 – 20000") << "mg/kg DM, the unit of the nutrient";
  EXPECT_EQ(at("Calcium", 1), "8000 – 20000");
  EXPECT_FALSE(differs("Calcium", 1));
}

TEST_F(CandidatesModelTest, WhatACandidateDoesNotStateIsAQuestionMark) {
  model.show({alone(exampleParent()), alone(sameOnEnergy())}, quantity::Basis::DryMatter);
  EXPECT_EQ(at("Crude protein", 1), "?");
}

TEST_F(CandidatesModelTest, ADifferenceIsMarkedByShape) {
  animal::TargetProfile other = sameOnEnergy();
  other.targets.front().target.min = 3.0;
  model.show({alone(exampleParent()), alone(other)}, quantity::Basis::Energy);
  EXPECT_EQ(at("Calcium", 0), "2000 – 5000");
  EXPECT_EQ(at("Calcium", 1), "◆ 3000 – 5000");
  EXPECT_TRUE(differs("Calcium", 1));
}

TEST_F(CandidatesModelTest, WithoutAnEnergyDensityAnotherBasisIsUnknown) {
  animal::TargetProfile bare = exampleParent();
  bare.kcalPerGramDryMatter.reset();
  model.show({alone(bare)}, quantity::Basis::Energy);
  EXPECT_EQ(at("Calcium", 0), "?");
}

}  // namespace
}  // namespace tarebowl::ui
