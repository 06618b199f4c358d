// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/import_page.h"

#include "tests/ui/foods/example_foods.h"
#include "ui/collection/collection_files.h"
#include "ui/foods/food_list.h"
#include "ui/foods/foods_room.h"
#include "ui/foods/import_preview.h"
#include "ui/shared/paths.h"

#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

// The tables are invented.
namespace tarebowl::ui {
namespace {

using exchange::PlanLineKind;
using ::testing::HasSubstr;
using Stage = ImportDesk::Stage;

constexpr const char* kGreens =
    "Food,Group,Water (g),CA (mg),Ash raw\nEndive,leaf,93.8,52,1\nChard,leaf,92.7,51,1\n";
constexpr const char* kLong =
    "food,nutrient,value,unit\nEndive,Calcium,52,mg\nEndive,Lime total,60,mg\nChard,Calcium,51,mg\n";

class ImportPageTest : public ::testing::Test {
 protected:
  ImportPageTest() {
    room.resize(1280, 720);
    room.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&room));
  }
  std::filesystem::path table(const std::string& text, const char* name = "greens.csv") {
    QFile file(folder.filePath(QString::fromUtf8(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text));
    return toPath(file.fileName());
  }
  void openExample() {
    files.open(example.file());
    settle(room.desk());
  }
  void waitFor(Stage stage) {
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk().stage() == stage; }, 60'000))
        << "stage " << static_cast<int>(desk().stage()) << ": " << desk().complaint().toStdString();
  }
  void plan(const std::string& text) {
    room.importTable(table(text));
    waitFor(Stage::Planned);
  }
  void import(const std::string& text) {
    plan(text);
    press("Import");
    waitFor(Stage::Imported);
    settle(room.desk());
  }
  void press(const char* text) {
    for (auto* button : room.findChildren<QAbstractButton*>())
      if (button->isVisible() && button->text() == QString::fromUtf8(text)) {
        ASSERT_TRUE(button->isEnabled()) << text;
        QTest::mouseClick(button, Qt::LeftButton);
        return;
      }
    ADD_FAILURE() << "no button says " << text;
  }
  bool isShown(const char* part) {
    for (const auto* label : room.findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(QString::fromUtf8(part))) return true;
    return false;
  }
  std::string cell(int row, int column) {
    const MappingModel& model = room.importPage().mappingModel();
    return model.index(row, column).data().toString().toStdString();
  }
  bool become(int row, const char* words) {
    MappingModel& model = room.importPage().mappingModel();
    return model.setData(model.index(row, MappingModel::Becomes), QString::fromUtf8(words));
  }
  PlanModel& lines() { return room.importPage().preview().model(); }
  ImportDesk& desk() { return room.importDesk(); }
  std::size_t foods() { return room.desk().foods().size(); }

  QTemporaryDir folder;
  ExampleCollection example;
  std::optional<std::filesystem::path> tableAnswer, placeAnswer, mappingAnswer;
  OpenCollection collection;
  Dialogs dialogs = [this] {
    Dialogs answers;
    answers.tableToOpen = [this](auto*, auto&) { return tableAnswer; };
    answers.collectionToCreate = [this](auto*, auto&) { return placeAnswer; };
    answers.mappingToOpen = [this](auto*, auto&) { return mappingAnswer; };
    answers.mappingToSave = [this](auto*, auto&) { return mappingAnswer; };
    return answers;
  }();
  CollectionFiles files{collection, dialogs, nullptr};
  FoodsRoom room{collection, files, dialogs};
};

TEST_F(ImportPageTest, ShowsTheGuessAndWhatWillHappenAndWritesNothing) {
  openExample();
  plan(kGreens);
  EXPECT_EQ(cell(0, MappingModel::Becomes), "food");
  EXPECT_EQ(cell(3, MappingModel::Becomes), "Calcium (CA)");
  EXPECT_EQ(cell(3, MappingModel::Examples), "52 · 51");
  EXPECT_EQ(cell(3, MappingModel::Unit), "mg");
  EXPECT_EQ(cell(4, MappingModel::Becomes), "leave out");
  ASSERT_EQ(lines().rowCount(), 2);
  EXPECT_EQ(lines().index(0, PlanModel::Line).data().toString(), QStringLiteral("2"));
  EXPECT_EQ(lines().index(0, PlanModel::Subject).data().toString(), QStringLiteral("Endive"));
  EXPECT_THAT(lines().index(0, PlanModel::Outcome).data().toString().toStdString(), HasSubstr("2 values"));
  EXPECT_EQ(foods(), 3U);
}

TEST_F(ImportPageTest, AColumnThatIsGivenAMeaningIsPlannedAtOnce) {
  openExample();
  plan(kGreens);
  EXPECT_EQ(desk().planned()->valuesNew, 4U);
  ASSERT_TRUE(become(4, "ash"));
  waitFor(Stage::Planned);
  EXPECT_EQ(desk().planned()->valuesNew, 6U);
  ASSERT_TRUE(become(3, "leave out"));
  waitFor(Stage::Planned);
  EXPECT_EQ(desk().planned()->valuesNew, 4U);
}

TEST_F(ImportPageTest, WordsThatAreNotUnderstoodAreSaidAndChangeNothing) {
  openExample();
  plan(kGreens);
  EXPECT_FALSE(become(4, "unobtainium"));
  EXPECT_TRUE(isShown("unobtainium"));
  EXPECT_EQ(cell(4, MappingModel::Becomes), "leave out");
}

TEST_F(ImportPageTest, AnImportIsOneStepOfUndo) {
  openExample();
  import(kGreens);
  EXPECT_EQ(foods(), 5U);
  press("To the foods");
  QTest::keyClick(&room, Qt::Key_Z, Qt::ControlModifier);
  settle(room.desk());
  EXPECT_EQ(foods(), 3U);
  ASSERT_TRUE(room.desk().undoStack().canRedo());
  room.desk().undoStack().redo();
  settle(room.desk());
  EXPECT_EQ(foods(), 5U) << "the same table is imported again";
  room.desk().undoStack().undo();
  settle(room.desk());
  EXPECT_EQ(foods(), 3U);
}

TEST_F(ImportPageTest, AnImportIsNotRedoneFromATableThatIsAnotherByThen) {
  openExample();
  import(kGreens);
  room.desk().undoStack().undo();
  settle(room.desk());
  table(std::string(kGreens) + "Spinach,leaf,91.4,99,1\n");
  press("To the foods");
  room.desk().undoStack().redo();
  settle(room.desk());
  EXPECT_EQ(foods(), 3U);
  EXPECT_TRUE(isShown("it is another table now than the one that was imported"));
}

TEST_F(ImportPageTest, EditsOfImportedFoodsAreUndoneBeforeIt) {
  openExample();
  import(kGreens);
  showFood(room.desk(), "Endive");
  food::Food curly = room.desk().page()->food.record.food;
  curly.name = "Curly endive";
  room.desk().changeFood(curly);
  settle(room.desk());
  room.desk().undoStack().undo();
  settle(room.desk());
  room.desk().undoStack().undo();
  settle(room.desk());
  EXPECT_EQ(foods(), 3U);
}

TEST_F(ImportPageTest, WhatIsKeptUnderItsOwnNameIsNotCalledLeftOut) {
  openExample();
  plan(std::string(kLong) + "Chard,Moon pH,6.5,pH\n");
  EXPECT_EQ(lines().countOf(PlanLineKind::Noted), 1U);
  EXPECT_EQ(lines().countOf(PlanLineKind::LeftOut), 1U);
  EXPECT_TRUE(
      isShown("2 foods new, 0 changed, 0 unchanged; 3 values new, 0 changed, 0 unchanged, 1 of these "
              "kept under the table's own name; 1 left out"));
  EXPECT_EQ(cell(4, MappingModel::Becomes), "its own name") << "Lime total, in mg";
  EXPECT_EQ(cell(4, MappingModel::Examples), "in 1 line");
  EXPECT_EQ(cell(5, MappingModel::Becomes), "leave out") << "Moon pH, in no unit of ours";
  room.importPage().preview().choose(PlanLineKind::Noted);
  EXPECT_EQ(lines().index(0, PlanModel::Outcome).data().toString(),
            QStringLiteral("kept under its own name: no nutrient is called “Lime total” here"));
}

TEST_F(ImportPageTest, OneIsOneValueAndNotOneValues) {
  openExample();
  plan("Food,CA (mg)\nEndive,52\n");
  EXPECT_TRUE(isShown("1 food new, 0 changed, 0 unchanged; 1 value new, 0 changed, 0 unchanged."));
  EXPECT_EQ(lines().index(0, PlanModel::Outcome).data().toString(), QStringLiteral("new: 1 value"));
}

TEST_F(ImportPageTest, TheSameTableAgainSaysThatNothingChanges) {
  openExample();
  import(kGreens);
  plan(kGreens);
  EXPECT_TRUE(isShown("changes nothing"));
  EXPECT_FALSE(desk().mayImport());
  EXPECT_EQ(lines().countOf(PlanLineKind::UnchangedFood), 2U);
}

TEST_F(ImportPageTest, ACorrectedTableShowsWhatItChanges) {
  openExample();
  import(kGreens);
  plan("Food,Group,Water (g),CA (mg)\nEndive,leaf,93.8,152\nChard,leaf,92.7,51\n");
  room.importPage().preview().choose(PlanLineKind::ChangedFood);
  ASSERT_EQ(lines().rowCount(), 1);
  EXPECT_EQ(lines().index(0, PlanModel::Subject).data().toString(), QStringLiteral("Endive"));
}

TEST_F(ImportPageTest, APlaceThatIsRefusedIsNamedAndStandsInTheWay) {
  openExample();
  plan(std::string(kGreens) + "Kale 2,leaf,92.7,=D3,1\n");
  EXPECT_FALSE(desk().mayImport());
  room.importPage().preview().choose(PlanLineKind::Problem);
  ASSERT_EQ(lines().rowCount(), 1);
  EXPECT_EQ(lines().index(0, PlanModel::Line).data().toString(), QStringLiteral("4"));
  EXPECT_THAT(lines().index(0, PlanModel::Subject).data().toString().toStdString(),
              HasSubstr("column 4 (CA (mg))"));
  EXPECT_THAT(lines().index(0, PlanModel::Outcome).data().toString().toStdString(), HasSubstr("formula"));
  ASSERT_TRUE(become(3, "leave out"));
  waitFor(Stage::Planned);
  EXPECT_TRUE(desk().mayImport()) << "without that column nothing is in the way";
}

TEST_F(ImportPageTest, ATableThatIsNoneIsSaidInThePageWithItsPlace) {
  openExample();
  room.importTable(table("Food,CA (mg)\n\"Endive,52\n"));
  waitFor(Stage::Failed);
  EXPECT_TRUE(isShown("line 2")) << desk().complaint().toStdString();
  EXPECT_FALSE(desk().mayImport());
  room.importTable(toPath(folder.filePath(QStringLiteral("nowhere.csv"))));
  waitFor(Stage::Failed);
  EXPECT_TRUE(isShown("no file of this name"));
}

TEST_F(ImportPageTest, NumbersThatCanBeReadBothWaysWaitForAnAnswer) {
  openExample();
  room.importTable(table("Food;CA (mg)\nEndive;1,234\nChard;2,345\n"));
  waitFor(Stage::Failed);
  EXPECT_TRUE(isShown("both ways"));
  press("12,5");
  waitFor(Stage::Planned);
  EXPECT_EQ(desk().mapping().decimalMark, exchange::DecimalMark::Comma);
}

TEST_F(ImportPageTest, ANutrientThatALongTableCallsByItsOwnWordIsGivenItsMeaning) {
  openExample();
  plan(kLong);
  ASSERT_EQ(room.importPage().mappingModel().rowCount(), 5) << "four columns and one name";
  EXPECT_EQ(cell(4, MappingModel::Title), "“Lime total”");
  EXPECT_EQ(desk().planned()->valuesNew, 3U);
  EXPECT_EQ(desk().planned()->valuesOther, 1U) << "kept under its own word";
  ASSERT_TRUE(become(4, "magnesium"));
  waitFor(Stage::Planned);
  EXPECT_EQ(desk().planned()->valuesNew, 3U);
  EXPECT_EQ(desk().planned()->valuesOther, 0U);
}

TEST_F(ImportPageTest, AMappingIsKeptAndReadsTheNextIssueOfTheTable) {
  openExample();
  plan(kGreens);
  ASSERT_TRUE(become(4, "ash"));
  waitFor(Stage::Planned);
  mappingAnswer = toPath(folder.filePath(QStringLiteral("greens.json")));
  press("Save mapping…");
  plan(kGreens);
  EXPECT_EQ(cell(4, MappingModel::Becomes), "leave out");
  press("Load mapping…");
  waitFor(Stage::Planned);
  EXPECT_EQ(cell(4, MappingModel::Becomes), "Crude ash (ASH)");
  EXPECT_EQ(desk().planned()->valuesNew, 6U);
}

TEST_F(ImportPageTest, WithoutACollectionItAsksWhereTheNewCollectionIsToBeKept) {
  tableAnswer = table(kGreens);
  placeAnswer = toPath(folder.filePath(QStringLiteral("house.tarebowl")));
  press("Import a table…");
  waitFor(Stage::Planned);
  press("Import");
  waitFor(Stage::Imported);
  settle(room.desk());
  EXPECT_EQ(foods(), 2U);
  EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("house.tarebowl"))));
}

TEST_F(ImportPageTest, WithoutACollectionNothingIsMadeWhereNoPlaceIsGiven) {
  tableAnswer = table(kGreens);
  press("Import a table…");
  EXPECT_EQ(desk().stage(), Stage::Nothing);
  EXPECT_FALSE(collection.file().has_value());
}

TEST_F(ImportPageTest, OneThatIsStoppedHasWrittenNothing) {
  openExample();
  std::string many = "Food,CA (mg)\n";
  for (int i = 0; i < 4'000; ++i) many += "Leaf " + std::to_string(i) + ",52\n";
  plan(many);
  desk().import();
  desk().cancel();
  ASSERT_TRUE(QTest::qWaitFor([&] { return desk().stage() != Stage::Importing; }, 60'000));
  settle(room.desk());
  ASSERT_EQ(desk().stage(), Stage::Planned);
  EXPECT_TRUE(isShown("Nothing was written"));
  EXPECT_EQ(foods(), 3U);
  EXPECT_FALSE(room.desk().undoStack().canUndo());
}

}  // namespace
}  // namespace tarebowl::ui
