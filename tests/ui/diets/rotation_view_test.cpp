// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_view.h"

#include "tests/ui/diets/example_rotation.h"
#include "ui/diets/rotation_calendar_model.h"
#include "ui/diets/rotation_export.h"
#include "ui/diets/rotation_ladder_model.h"
#include "ui/diets/rotation_text.h"

#include <QMimeData>
#include <QSignalSpy>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <memory>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

RotationView withMondayFed() {
  RotationView view = exampleRotation();
  view.on.desk.problem.rules.fed = {{.day = 0, .fed = view.on.days[0], .eaten = {}}};
  return view;
}

class CalendarModel : public ::testing::Test {
 protected:
  CalendarModel() { model.show(&view, quantity::parseDate("2026-12-01").value()); }
  RotationView view = withMondayFed();
  RotationCalendarModel model;
  [[nodiscard]] std::string text(int row, int column, int role = Qt::DisplayRole) const {
    return model.index(row, column).data(role).toString().toStdString();
  }
};

TEST_F(CalendarModel, HasARowForEachFoodThatIsWeighedAndOneForTheStates) {
  EXPECT_EQ(model.rowCount(), 3);     // the mealworm is given unweighed
  EXPECT_EQ(model.columnCount(), 4);  // three days and their mean
  EXPECT_EQ(text(1, 0), "4");
  EXPECT_EQ(text(2, 0), "12.0");
  EXPECT_EQ(text(2, 1), "·");
  EXPECT_EQ(text(2, 3), "8.00");  // (12 + 0 + 12) / 3
}

TEST_F(CalendarModel, SaysWhichDaysLackSomething) {
  // 17 mg of the 15 that do for a day; 5 mg; 17 mg. The mean, 13 mg, is short of 20.
  EXPECT_EQ(text(0, 0), "met");
  EXPECT_EQ(text(0, 1), "1 missed");
  EXPECT_EQ(text(0, 3), "1 missed");
  EXPECT_THAT(text(0, 1, Qt::AccessibleTextRole), HasSubstr("of the day's zone (at least 15 mg a day)"));
  EXPECT_THAT(text(0, 1, Qt::AccessibleTextRole), HasSubstr("do not make it up"));
}

TEST_F(CalendarModel, SaysACellAsASentence) {
  EXPECT_EQ(text(2, 0, Qt::AccessibleTextRole), "crickets, Monday 30 November: 12.0 g per animal, fed");
  EXPECT_EQ(text(2, 1, Qt::AccessibleTextRole), "crickets, Tuesday 1 December: not fed");
}

TEST_F(CalendarModel, WhatIsOverCanNeitherBeEditedNorDragged) {
  EXPECT_FALSE(model.flags(model.index(2, 0)) & (Qt::ItemIsEditable | Qt::ItemIsDragEnabled));
  EXPECT_TRUE(model.flags(model.index(2, 2)).testFlag(Qt::ItemIsDragEnabled));
  EXPECT_FALSE(model.flags(model.index(2, 1)).testFlag(Qt::ItemIsDragEnabled)) << "nothing is there";
  EXPECT_TRUE(model.flags(model.index(2, 1)).testFlag(Qt::ItemIsEditable));
  EXPECT_FALSE(model.flags(model.index(2, 3)).testFlag(Qt::ItemIsEditable)) << "a mean";
}

TEST_F(CalendarModel, AFoodIsDroppedOnAnotherDayWhereverInIt) {
  const QSignalSpy moves(&model, &RotationCalendarModel::moveWanted);
  const std::unique_ptr<QMimeData> crickets(model.mimeData({model.index(2, 2)}));
  EXPECT_FALSE(model.canDropMimeData(crickets.get(), Qt::CopyAction, -1, -1, model.index(2, 0))) << "fed";
  EXPECT_FALSE(model.canDropMimeData(crickets.get(), Qt::CopyAction, -1, -1, model.index(2, 2))) << "its own";
  EXPECT_FALSE(model.canDropMimeData(crickets.get(), Qt::CopyAction, -1, -1, model.index(2, 3))) << "a mean";
  EXPECT_TRUE(model.dropMimeData(crickets.get(), Qt::CopyAction, -1, -1, model.index(1, 1)));
  ASSERT_EQ(moves.size(), 1);
  EXPECT_EQ(moves[0], (QVariantList{qint64(1), 2, 1}));
}

TEST_F(CalendarModel, GramsAreTypedAsNumbersOnly) {
  const QSignalSpy wanted(&model, &RotationCalendarModel::gramsWanted);
  EXPECT_FALSE(model.setData(model.index(2, 1), QStringLiteral("some"), Qt::EditRole));
  EXPECT_FALSE(model.setData(model.index(2, 1), -1.0, Qt::EditRole));
  EXPECT_FALSE(model.setData(model.index(2, 2), 12.0, Qt::EditRole)) << "as it is";
  EXPECT_TRUE(model.setData(model.index(2, 1), 6.5, Qt::EditRole));
  ASSERT_EQ(wanted.size(), 1);
  EXPECT_EQ(wanted[0], (QVariantList{qint64(1), 1, 6.5}));
}

TEST(RotationLadder, IsOfThePeriodOrOfADayAgainstItsOwnZones) {
  const RotationView view = exampleRotation();
  RotationLadderModel ladder;
  ladder.show(&view, std::nullopt);
  ASSERT_EQ(ladder.rowCount(), 1);
  const auto rung = [&] { return ladder.index(0, 0).data(kRungRole).value<Rung>(); };
  EXPECT_EQ(rung().min, 20.0);
  EXPECT_EQ(rung().mark, Mark::Lacking);
  ladder.show(&view, 0);
  EXPECT_EQ(rung().min, 15.0);
  EXPECT_EQ(rung().mark, Mark::Met);
  ladder.show(nullptr, std::nullopt);
  EXPECT_EQ(ladder.rowCount(), 0);
}

TEST(RotationPurchase, IsListedByGroupWithItsSum) {
  const auto rows = purchaseRows(exampleRotation());
  ASSERT_EQ(rows.size(), 4U);  // three foods of one group, and the group
  // crickets: 2 animals * 24 g; the group: 2 * (12 + 24 + 3) g
  EXPECT_EQ(rows[1].cells.value(2), QStringLiteral("crickets"));
  EXPECT_THAT(rows[1].cells.value(3).toStdString(), HasSubstr("48"));
  EXPECT_EQ(rows[3].cells.value(2), QStringLiteral("in all"));
  EXPECT_THAT(rows[3].cells.value(3).toStdString(), HasSubstr("78"));
}

TEST(RotationText, SaysWhyThereIsNoPlan) {
  diet::RotationPlan plan;
  plan.status = diet::RotationStatus::Impossible;
  plan.reason = "hard rules";
  EXPECT_THAT(noPlanText(plan).toStdString(), HasSubstr("free a locked cell"));
  plan.reason = "structure: roots day 3: 1 of 2";
  EXPECT_THAT(noPlanText(plan).toStdString(), HasSubstr("roots day 3"));
}

}  // namespace
}  // namespace tarebowl::ui
