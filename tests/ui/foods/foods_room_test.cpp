// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/foods_room.h"

#include "tests/ui/foods/example_foods.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/collection/collection_files.h"
#include "ui/foods/comparison_pane.h"
#include "ui/foods/composition_view.h"
#include "ui/foods/food_form.h"
#include "ui/foods/food_list.h"
#include "ui/foods/food_pane.h"
#include "ui/foods/sample_form.h"
#include "ui/shared/paths.h"
#include "ui/shared/reason_bar.h"

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class FoodsRoomTest : public ::testing::Test {
 protected:
  FoodsRoomTest() {
    room.resize(1280, 720);
    room.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&room));
  }
  void openIt() {
    files.open(example.file());
    settle(room.desk());
  }
  void press(const char* text, QWidget* within = nullptr) {
    for (auto* button : (within != nullptr ? within : &room)->findChildren<QAbstractButton*>())
      if (button->isVisible() && button->text() == QString::fromUtf8(text)) {
        ASSERT_TRUE(button->isEnabled()) << text;
        QTest::mouseClick(button, Qt::LeftButton);
        return;
      }
    ADD_FAILURE() << "no button says " << text;
  }
  QLineEdit* field(const char* name) {
    for (auto* candidate : room.findChildren<QLineEdit*>())
      if (candidate->isVisible() && candidate->accessibleName() == QString::fromUtf8(name)) return candidate;
    ADD_FAILURE() << "no field is called " << name;
    return nullptr;
  }
  /// Chooses the first sample under the nutrient.
  void chooseFirstSample(std::string_view tagname) {
    CompositionModel& model = room.pane().model();
    const QModelIndex top = model.indexOf(nutrient(tagname));
    room.pane().view().setExpanded(top, true);
    room.pane().view().setCurrentIndex(model.index(0, 0, top));
  }
  std::string shownCalcium() {
    const QModelIndex index = room.pane().model().indexOf(nutrient("CA"));
    return index.siblingAtColumn(CompositionModel::Value).data().toString().toStdString();
  }
  ExampleCollection example;
  OpenCollection collection;
  CollectionFiles files{collection, Dialogs{}, nullptr};
  FoodsRoom room{collection, files};
};

TEST_F(FoodsRoomTest, WithoutAFoodSaysHowTheFirstOnesComeIn) {
  QStringList ways;
  for (const auto* button : room.findChildren<QAbstractButton*>())
    if (button->isVisible()) ways << button->text();
  EXPECT_TRUE(ways.contains(QStringLiteral("Import a table…")));
  EXPECT_TRUE(ways.contains(QStringLiteral("Add a food")));
}

TEST_F(FoodsRoomTest, OneThatIsOpenForReadingSaysSoAboveTheFoodsAndInTheStatus) {
  collection.open({.name = QStringLiteral("shown"), .file = example.file()}, [this] {
    return store::Collection::open(example.file(), "2026-11-25T07:30:00Z",
                                   {.access = store::OpenOptions::Access::ReadOnly});
  });
  settle(room.desk());
  bool said = false;
  for (const auto* label : room.findChildren<QLabel*>())
    said = said || (label->isVisible() && label->text().contains(QStringLiteral("open for reading only")));
  EXPECT_TRUE(said);
  EXPECT_FALSE(room.state().saved);
  EXPECT_EQ(room.state().savedText, QStringLiteral("for reading only"));
  openIt();
  EXPECT_FALSE(collection.isReadOnly());
  EXPECT_EQ(room.state().savedText, QStringLiteral("all saved"));
}

TEST_F(FoodsRoomTest, FindingAFoodByTypingShowsIt) {
  openIt();
  QTest::keyClicks(&room.list().field(), QStringLiteral("gru"));
  QTest::keyClick(&room.list().field(), Qt::Key_Return);
  settle(room.desk());
  ASSERT_TRUE(room.desk().page().has_value());
  EXPECT_EQ(room.desk().page()->food.record.food.name, "Grubs");
}

TEST_F(FoodsRoomTest, TheBasisSwitchesEveryValue) {
  openIt();
  press("kg DM");
  EXPECT_EQ(shownCalcium(), "1500\u00a0mg");
  press("as fed, 100 g");
  EXPECT_EQ(shownCalcium(), "45.0\u00a0mg");
}

TEST_F(FoodsRoomTest, ASampleIsSetAsideWithAReasonTheMeanMovesAndUndoTakesItBack) {
  openIt();
  chooseFirstSample("CA");
  press("Set aside…");
  QLineEdit* reason = field("Reason");
  ASSERT_NE(reason, nullptr);
  QTest::keyClicks(reason, QStringLiteral("dusted by mistake"));
  press("Set aside");
  settle(room.desk());
  EXPECT_EQ(shownCalcium(), "50.0\u00a0mg");
  QTest::keyClick(&room, Qt::Key_Z, Qt::ControlModifier);
  settle(room.desk());
  EXPECT_EQ(shownCalcium(), "45.0\u00a0mg");
}

TEST_F(FoodsRoomTest, NothingIsSetAsideBeforeAReasonIsTyped) {
  openIt();
  chooseFirstSample("CA");
  press("Set aside…");
  QTest::keyClick(field("Reason"), Qt::Key_Return);
  settle(room.desk());
  EXPECT_EQ(shownCalcium(), "45.0\u00a0mg");
}

TEST_F(FoodsRoomTest, ANewSampleIsTypedInAndCounts) {
  openIt();
  press("Add a sample…");
  QTest::keyClicks(field("Source"), QStringLiteral("Report 3"));
  SampleValuesModel& values = room.sampleForm().values();
  values.setData(values.index(0, SampleValuesModel::Nutrient), QStringLiteral("CA"));
  values.setData(values.index(0, SampleValuesModel::Amount), QStringLiteral("60"));
  press("Keep this sample");
  settle(room.desk());
  EXPECT_EQ(shownCalcium(), "50.0\u00a0mg") << "(40 + 50 + 60) / 3";
}

TEST_F(FoodsRoomTest, ASampleWithoutASourceIsNotKept) {
  openIt();
  press("Add a sample…");
  SampleValuesModel& values = room.sampleForm().values();
  values.setData(values.index(0, SampleValuesModel::Nutrient), QStringLiteral("calcium"));
  values.setData(values.index(0, SampleValuesModel::Amount), QStringLiteral("60"));
  press("Keep this sample");
  settle(room.desk());
  EXPECT_TRUE(room.sampleForm().isVisible());
  EXPECT_EQ(room.desk().page()->samples.size(), 3U);
}

TEST_F(FoodsRoomTest, AFieldOfTheFoodIsKeptAsSoonAsItIsLeft) {
  openIt();
  press("Edit food…");
  QLineEdit* step = field("Scale step, g");
  step->selectAll();
  QTest::keyClicks(step, QStringLiteral("0.1"));
  QTest::keyClick(step, Qt::Key_Return);
  settle(room.desk());
  EXPECT_DOUBLE_EQ(room.desk().page()->food.record.food.scaleStep.value(), 0.1);
}

TEST_F(FoodsRoomTest, TwoFoodsStandSideBySide) {
  openIt();
  room.list().table().setCurrentIndex(room.list().model().index(0, 0));
  room.list().table().selectionModel()->select(room.list().model().index(1, 0),
                                               QItemSelectionModel::Select | QItemSelectionModel::Rows);
  press("Compare");
  settle(room.desk());
  ComparisonModel& model = room.comparison().model();
  ASSERT_EQ(model.columnCount(), 3);
  EXPECT_EQ(model.indexOf(nutrient("CA"), 0).data().toString().toStdString(), "1500\u00a0mg");
  EXPECT_EQ(model.indexOf(nutrient("CA"), 1).data().toString().toStdString(), "22500\u00a0mg")
      << "900 mg in 40 g dry matter";
  EXPECT_TRUE(model.indexOf(nutrient("CA"), 1).data(ComparisonModel::HighestRole).toBool());
}

TEST_F(FoodsRoomTest, TheSampleCollectionIsMadeWhereItIsNotThereAndSaysThatItIsInvented) {
  const QTemporaryDir folder;
  files.open(toPath(folder.filePath(QStringLiteral("sample.tarebowl"))), true);
  settle(room.desk());
  EXPECT_GT(room.desk().foods().size(), 20U);
  EXPECT_NE(room.state().sampleText.toStdString().find("invented"), std::string::npos);
}

TEST_F(FoodsRoomTest, EveryControlHasANameForAScreenReader) {
  openIt();
  expectNamedControls(room);
}

}  // namespace
}  // namespace tarebowl::ui
