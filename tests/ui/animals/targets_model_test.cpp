// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/targets_model.h"

#include "tests/ui/animals/example_profiles.h"
#include "ui/animals/provenance_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class TargetsModelTest : public ::testing::Test {
 protected:
  TargetsModelTest() {
    model.show(resolvedChild(), true);
    QObject::connect(&model, &TargetsModel::profileEdited,
                     [this](const animal::TargetProfile& after, const QString&) { edited = after; });
    QObject::connect(
        &model, &TargetsModel::reasonWanted,
        [this](const animal::TargetProfile&, const QString&, const std::string& id) { lifted = id; });
    QObject::connect(&model, &TargetsModel::refused, [this](const QString& why) { refused = why; });
  }
  QModelIndex at(const char* id, int column) { return model.index(model.rowOf(id), column); }
  std::string text(const char* id, int column) { return at(id, column).data().toString().toStdString(); }
  TargetsModel model;
  std::optional<animal::TargetProfile> edited;
  std::string lifted;
  QString refused;
};

using Column = TargetsModel::Column;

TEST_F(TargetsModelTest, EachTargetSaysWhichVersionStatesItAndWhatItOverrode) {
  EXPECT_EQ(text("protein", Column::StatedIn), "parent 1");
  EXPECT_EQ(text("calcium", Column::StatedIn), "child 1, not parent 1");
  EXPECT_THAT(TargetsModel::describe(*model.rowAt(at("calcium", 0))).toStdString(),
              HasSubstr("stated in child 1 in place of parent 1"));
}

TEST_F(TargetsModelTest, WhatIsFromMemoryNeverReadsLikeACitation) {
  EXPECT_EQ(text("protein", Column::Provenance), "○ from memory");
  EXPECT_THAT(TargetsModel::describe(*model.rowAt(at("protein", 0))).toStdString(),
              HasSubstr("recalled, not looked up: said to be A book"));
  EXPECT_EQ(text("calcium", Column::Provenance), "■ seen");
  EXPECT_THAT(TargetsModel::describe(*model.rowAt(at("calcium", 0))).toStdString(),
              Not(HasSubstr("recalled")));
}

TEST_F(TargetsModelTest, EditingATargetThatWasTakenOverStatesItHere) {
  ASSERT_TRUE(model.setData(at("protein", Column::Min), QStringLiteral("350")));
  ASSERT_TRUE(edited.has_value());
  const auto own =
      std::find_if(edited->targets.begin(), edited->targets.end(),
                   [](const animal::ProfileTarget& rule) { return rule.target.id == "protein"; });
  ASSERT_NE(own, edited->targets.end());
  EXPECT_EQ(own->target.min, 350.0);
  EXPECT_EQ(own->target.origin.provenance, animal::Provenance::HouseRule);
}

TEST_F(TargetsModelTest, AMinimumAboveTheMaximumIsRefusedInWords) {
  EXPECT_FALSE(model.setData(at("calcium", Column::Min), QStringLiteral("30")));
  EXPECT_FALSE(edited.has_value());
  EXPECT_THAT(refused.toStdString(), HasSubstr("minimum may not lie above the maximum"));
}

TEST_F(TargetsModelTest, RaisingASafeUpperLimitAsksForAReasonFirst) {
  ASSERT_TRUE(model.setData(at("iron", Column::Max), QStringLiteral("0.4")));
  EXPECT_EQ(lifted, "iron");
  EXPECT_FALSE(edited.has_value());
}

TEST_F(TargetsModelTest, LoweringASafeUpperLimitNeedsNoReason) {
  ASSERT_TRUE(model.setData(at("iron", Column::Max), QStringLiteral("0.1")));
  EXPECT_TRUE(lifted.empty());
  EXPECT_TRUE(edited.has_value());
}

TEST_F(TargetsModelTest, ASafeUpperLimitIsNotLeftBlank) {
  EXPECT_FALSE(model.setData(at("iron", Column::Max), QString()));
  EXPECT_THAT(refused.toStdString(), HasSubstr("safe upper limit"));
}

TEST_F(TargetsModelTest, AProfileThatIsNotToBeEditedIsNot) {
  model.show(resolvedChild(), false);
  EXPECT_FALSE(model.flags(at("protein", Column::Min)).testFlag(Qt::ItemIsEditable));
}

TEST_F(TargetsModelTest, SharesAreInPerCentAndKeptAsParts) {
  EXPECT_EQ(text("fruit", Column::Max), "10");
  ASSERT_TRUE(model.setData(at("fruit", Column::Max), QStringLiteral("5")));
  EXPECT_DOUBLE_EQ(edited->shares.back().max.value(), 0.05);
}

TEST(TargetRows, ARuleThatWasTakenOverIsDroppedForAReasonAndAnOwnOneGoes) {
  const animal::ResolvedProfile child = resolvedChild();
  for (const TargetRow& row : targetRows(child)) {
    const animal::TargetProfile after = without(child, row, "not for this house");
    if (row.id == "protein") {
      ASSERT_EQ(after.dropped.size(), 1U);
      EXPECT_EQ(after.dropped.front().reason, "not for this house");
    }
    if (row.id == "no-seed-mix") {
      EXPECT_TRUE(after.exclusions.empty());
    }
  }
}

}  // namespace
}  // namespace tarebowl::ui
