// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/energy_model.h"

#include "ui/animals/energy_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

animal::EnergyPlan mammalAtRest() {
  return animal::planFrom(animal::publishedAllometries().front());  // 70 kcal at 1 kg, exponent 0.75
}

class EnergyModelTest : public ::testing::Test {
 protected:
  EnergyModelTest() {
    QObject::connect(&model, &EnergyModel::planEdited,
                     [this](const animal::EnergyPlan& plan) { edited = plan; });
  }
  void show(animal::EnergyPlan plan, std::optional<double> kilograms, std::optional<int> headcount = {}) {
    model.show({.plan = std::move(plan),
                .mass = kilograms ? std::optional(quantity::Kilograms(*kilograms)) : std::nullopt,
                .headcount = headcount});
  }
  std::string at(int row, int column) { return model.index(row, column).data().toString().toStdString(); }
  EnergyModel model;
  std::optional<animal::EnergyPlan> edited;
};

using Column = EnergyModel::Column;

TEST_F(EnergyModelTest, EachLineFollowsFromTheOneAboveIt) {
  animal::EnergyPlan plan = mammalAtRest();
  plan.factors.push_back({.words = "maintenance", .low = 1.5, .high = 2.0});
  show(plan, 16.0, 3);
  // 16 kg to the power of 0.75 is 8; 70 x 8 = 560; x 1.5 to 2 = 840 to 1120; three animals 2520 to 3360.
  EXPECT_EQ(at(0, Column::Gives), "16 kg");
  EXPECT_EQ(at(1, Column::Number), "0.75");
  EXPECT_EQ(at(1, Column::Gives), "8.0000");
  EXPECT_EQ(at(2, Column::Gives), "560 kcal");
  EXPECT_EQ(at(3, Column::Gives), "840 to 1120 kcal");
  EXPECT_EQ(at(5, Column::Number), "3");
  EXPECT_EQ(at(6, Column::Gives), "2520 to 3360 kcal");
}

TEST_F(EnergyModelTest, WithoutAMassNothingIsWorkedOut) {
  show(mammalAtRest(), {});
  EXPECT_EQ(at(0, Column::Gives), "?");
  EXPECT_EQ(at(2, Column::Gives), "?");
}

TEST_F(EnergyModelTest, TheExponentIsEditedInPlaceAndIsTheHousesOwnThen) {
  show(mammalAtRest(), 16.0);
  ASSERT_TRUE(model.setData(model.index(1, Column::Number), QStringLiteral("0.7")));
  ASSERT_TRUE(edited.has_value());
  EXPECT_DOUBLE_EQ(edited->exponent, 0.7);
  EXPECT_EQ(edited->origin.provenance, animal::Provenance::HouseRule);
}

TEST_F(EnergyModelTest, NoNumberThatHasNoSenseIsTaken) {
  show(mammalAtRest(), 16.0);
  for (const char* typed : {"0", "-1", "abc", "2"})
    EXPECT_FALSE(model.setData(model.index(1, Column::Number), QString::fromUtf8(typed))) << typed;
  EXPECT_FALSE(edited.has_value());
}

TEST_F(EnergyModelTest, AFactorsUpperEndIsNotBelowItsLower) {
  animal::EnergyPlan plan = mammalAtRest();
  plan.factors.push_back({.words = "maintenance", .low = 1.5, .high = 2.0});
  show(plan, 16.0);
  EXPECT_FALSE(model.setData(model.index(3, Column::UpTo), QStringLiteral("1.2")));
  ASSERT_TRUE(model.setData(model.index(3, Column::Number), QStringLiteral("1.8")));
  EXPECT_DOUBLE_EQ(edited->factors.front().low, 1.8);
  EXPECT_DOUBLE_EQ(edited->factors.front().high, 2.0);
}

TEST(EnergyText, OfAReptileSaysThatItIsNoFeedingRate) {
  for (const animal::Allometry& allometry : animal::publishedAllometries()) {
    if (allometry.group != "reptiles") continue;
    const animal::EnergyPlan plan = animal::planFrom(allometry);
    const auto derivation = animal::deriveEnergy(plan, quantity::Kilograms(0.4));
    QString all;
    for (const animal::EnergyCaution caution : derivation.cautions) all += cautionText(caution, plan);
    EXPECT_THAT(all.toStdString(), HasSubstr("no feeding rate"));
  }
}

TEST(EnergyText, NamesAPublishedChoiceWithItsNumbers) {
  EXPECT_EQ(choiceText(animal::publishedAllometries().front()).toStdString(),
            "placental mammals, at rest: 70.0 × kg^0.75");
}

}  // namespace
}  // namespace tarebowl::ui
