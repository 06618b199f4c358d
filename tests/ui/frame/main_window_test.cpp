// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "core/exchange/problem_json.h"
#include "core/transfer/sample_place.h"
#include "tests/ui/diets/example_diet.h"
#include "tests/ui/shared/named_controls.h"
#include "tests/ui/shared/sample_in_room.h"
#include "ui/animals/animals_room.h"
#include "ui/diets/balance_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_list.h"
#include "ui/diets/diet_list_model.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/ingredient_model.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/problem_files.h"
#include "ui/frame/rail.h"
#include "ui/shared/balance_ladder.h"
#include "ui/shared/segmented_switch.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using Column = IngredientModel::Column;

/// A window on a folder with two problem files; the dialogs answer what the test told them.
class WindowTest : public ::testing::Test {
 protected:
  WindowTest() {
    EXPECT_FALSE(saveProblem(path("example.json"), exampleProblem()));
    diet::BalanceProblem other = exampleProblem();
    other.title = "Other";
    EXPECT_FALSE(saveProblem(path("other.json"), other));
    window.open(path("example.json"));
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    settle();
  }
  void settle() {
    QCoreApplication::processEvents();  // an editor closes by a queued call
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return !desk.isSolving() && window.diets().list().model().rowCount() == 2; }));
  }
  [[nodiscard]] std::filesystem::path path(const char* name) const {
    return toPath(folder.filePath(QLatin1String(name)));
  }
  [[nodiscard]] std::string statusText() const {
    QStringList words;
    for (const QLabel* label :
         window.findChild<QWidget*>(QStringLiteral("statusLine"))->findChildren<QLabel*>())
      if (label->isVisible()) words << label->text();
    return words.join(QLatin1Char('|')).toStdString();
  }
  /// Types into the cell of the table that has the focus, as a hand would.
  void typeInto(std::size_t food, int column, const QString& keys) {
    IngredientTable& table = window.diets().deskPane().table();
    table.setFocus();
    table.setCurrentIndex(table.model()->index(static_cast<int>(food), column));
    QTest::keyClicks(table.viewport(), keys.left(1));
    auto* editor = table.findChild<QAbstractSpinBox*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClicks(editor, keys.mid(1));
  }
  QAbstractSpinBox* editor() { return window.diets().deskPane().table().findChild<QAbstractSpinBox*>(); }

  QTemporaryDir folder;
  std::optional<std::filesystem::path> fileToOpen;
  std::optional<std::filesystem::path> fileToSave;
  UnsavedAnswer unsaved = UnsavedAnswer::Stay;
  int asked = 0;
  MainWindow window{&exampleSolve,
                    Dialogs{[this](auto*, const auto&) { return fileToOpen; },
                            [this](auto*, const auto&) { return fileToSave; },
                            [this](auto*, const auto&) {
                              ++asked;
                              return unsaved;
                            }},
                    Preferences(folder.filePath(QStringLiteral("seat.ini")))};
  DietDesk& desk = window.diets().desk();
};

TEST_F(WindowTest, ShowsTheSevenRoomsInTheirPlaces) {
  QList<QAbstractButton*> rooms;
  for (auto* button : window.findChild<Rail*>()->findChildren<QAbstractButton*>())
    if (button->isCheckable()) rooms << button;
  const std::vector<std::pair<const char*, const char*>> built{
      {"Today", "1"},   {"Foods", "2"},  {"Animals", "3"}, {"Diets", "4"},
      {"Kitchen", "5"}, {"Intake", "6"}, {"Health", "7"}};
  ASSERT_EQ(static_cast<std::size_t>(rooms.size()), built.size());
  for (std::size_t i = 0; i < built.size(); ++i) {
    const QAbstractButton& room = *rooms[static_cast<qsizetype>(i)];
    EXPECT_EQ(room.text().toStdString(), built[i].first);
    EXPECT_NE(room.toolTip().toStdString().find(built[i].second), std::string::npos) << built[i].first;
  }
}

TEST_F(WindowTest, ListsTheFileAndItsSiblings) {
  EXPECT_EQ(window.diets().list().model().rowCount(), 2);
  EXPECT_EQ(window.windowTitle().toStdString(), "Example (example.json) – Tarebowl");
}

TEST_F(WindowTest, SaysThatTheSampleIsInvented) {
  EXPECT_NE(statusText().find("Brackenmere (invented sample)"), std::string::npos) << statusText();
}

TEST_F(WindowTest, TypingGramsReSolvesAsTheHandMovesAndUndoTakesItBack) {
  typeInto(kInsects, Column::GramsADay, QStringLiteral("12"));
  EXPECT_EQ(desk.draft().grams[kInsects], Grams(12)) << "while the editor is still open";
  EXPECT_TRUE(desk.draft().locked[kInsects]);
  QTest::keyClick(editor(), Qt::Key_Return);
  settle();
  EXPECT_EQ(desk.undoStack().count(), 1);
  QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
  settle();
  EXPECT_EQ(desk.draft().grams[kInsects], Grams(8));
  EXPECT_FALSE(desk.draft().locked[kInsects]);
}

TEST_F(WindowTest, AFractionIsTypedThroughItsPoint) {
  typeInto(kLimestone, Column::GramsADay, QStringLiteral("0"));
  QTest::qWait(20);  // the diet re-solves around the open editor
  QTest::keyClicks(editor(), QStringLiteral(".7"));
  EXPECT_NEAR(desk.draft().grams[kLimestone].value(), 0.7, 1e-9);
}

TEST_F(WindowTest, EscapeInTheEditorTakesBackWhatWasTyped) {
  typeInto(kInsects, Column::GramsADay, QStringLiteral("12"));
  QTest::keyClick(editor(), Qt::Key_Escape);
  settle();
  EXPECT_EQ(desk.draft().grams[kInsects], Grams(8));
  EXPECT_FALSE(desk.undoStack().canUndo());
}

TEST_F(WindowTest, OpeningAnEditorAndLeavingItIsNoEdit) {
  IngredientTable& table = window.diets().deskPane().table();
  table.setFocus();
  table.setCurrentIndex(table.model()->index(kInsects, Column::GramsADay));
  QTest::keyClick(table.viewport(), Qt::Key_F2);
  ASSERT_NE(editor(), nullptr);
  QTest::keyClick(editor(), Qt::Key_Return);
  EXPECT_FALSE(desk.undoStack().canUndo());
  EXPECT_FALSE(desk.draft().locked[kInsects]);
}

TEST_F(WindowTest, ArrowKeysInTheEditorMoveByTheScalesStep) {
  IngredientTable& table = window.diets().deskPane().table();
  table.setFocus();
  table.setCurrentIndex(table.model()->index(kLimestone, Column::GramsADay));
  QTest::keyClick(table.viewport(), Qt::Key_F2);
  ASSERT_NE(editor(), nullptr);
  QTest::keyClick(editor(), Qt::Key_Up);
  EXPECT_NEAR(desk.draft().grams[kLimestone].value(), 0.4, 1e-9) << "0.3 and a step of 0.1 g";
}

TEST_F(WindowTest, ALimitCountsOnceItIsFinished) {
  typeInto(kLimestone, Column::Max, QStringLiteral("0.2"));
  EXPECT_EQ(desk.problem().foods[kLimestone].max, Grams(1)) << "half a number is no limit";
  QTest::keyClick(editor(), Qt::Key_Return);
  settle();
  EXPECT_NEAR(desk.problem().foods[kLimestone].max->value(), 0.2, 1e-9);
  EXPECT_NEAR(desk.draft().grams[kLimestone].value(), 0.2, 1e-9);
}

// 768 pixels less the bar of the desktop's window.
TEST_F(WindowTest, FitsTheSmallestScreenWhicheverLineIsChosen) {
  constexpr int kRoom = 740;
  IngredientTable& table = window.diets().deskPane().table();
  table.setFocus();
  for (int row = 0; row < table.model()->rowCount(); ++row) {
    table.setCurrentIndex(table.model()->index(row, Column::Food));
    QTest::qWait(0);
    EXPECT_LE(window.minimumSizeHint().height(), kRoom) << "line " << row;
  }
}

TEST_F(WindowTest, SpaceTurnsTheLock) {
  IngredientTable& table = window.diets().deskPane().table();
  table.setFocus();
  table.setCurrentIndex(table.model()->index(kLeaves, Column::Lock));
  QTest::keyClick(table.viewport(), Qt::Key_Space);
  EXPECT_TRUE(desk.draft().locked[kLeaves]);
}

TEST_F(WindowTest, TheHoldSwitchStopsSolving) {
  for (SegmentedSwitch* choice : window.findChildren<SegmentedSwitch*>())
    if (choice->accessibleName() == QStringLiteral("On every edit"))
      QTest::mouseClick(choice->findChildren<QAbstractButton*>().back(), Qt::LeftButton);
  EXPECT_TRUE(desk.isHolding());
  EXPECT_NE(statusText().find("held: only the balance is recomputed"), std::string::npos) << statusText();
}

TEST_F(WindowTest, TheFirstRungIsOpenAndAnotherOpensByChoosingIt) {
  auto* ladder = window.diets().balancePane().findChild<BalanceLadder*>();
  EXPECT_EQ(ladder->currentIndex().row(), 0);
  window.diets().balancePane().choose({diet::TargetKind::Nutrient, kEnergy});
  EXPECT_EQ(ladder->currentIndex().data().toString().toStdString(), "Metabolizable energy");
}

TEST_F(WindowTest, ABoundThatIsTypedMovesTheTarget) {
  window.diets().balancePane().choose({diet::TargetKind::Nutrient, kPhosphorus});
  for (QLineEdit* field : window.findChildren<QLineEdit*>()) {
    if (field->accessibleName() != QStringLiteral("Maximum of the target")) continue;
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("7.5"));
    QTest::keyClick(field, Qt::Key_Return);
  }
  EXPECT_EQ(desk.problem().targets[kPhosphorus].max, 7.5);
  EXPECT_EQ(desk.problem().targets[kPhosphorus].min, 5.0);
}

TEST_F(WindowTest, SavingWritesTheFileAndSaysSo) {
  desk.setGrams(kInsects, Grams(12));
  settle();
  EXPECT_NE(statusText().find("not saved"), std::string::npos);
  QTest::keyClick(&window, Qt::Key_S, Qt::ControlModifier);
  EXPECT_EQ(statusText().find("not saved"), std::string::npos) << statusText();
  EXPECT_EQ(exchange::readProblem(path("example.json")).reference.value()[kInsects], Grams(12));
}

TEST_F(WindowTest, CtrlAndTheNumberOnTheRailGoToTheAnimals) {
  const SampleAtHand sample;
  sample.openIn(window.collection());
  QTest::keyClick(&window, Qt::Key_3, Qt::ControlModifier);
  EXPECT_TRUE(window.animals().isVisible());
  EXPECT_FALSE(window.diets().isVisible());
}

TEST_F(WindowTest, SavingASampleAsksForAnotherPlace) {
  EXPECT_TRUE(window.diets().document().open(transfer::sampleFolder() / "tenrec-hedgehog.json"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return !desk.isSolving(); }));
  fileToSave = path("copy.json");
  EXPECT_TRUE(window.diets().document().save());
  EXPECT_TRUE(std::filesystem::exists(path("copy.json")));
  EXPECT_EQ(window.diets().document().file(), path("copy.json"));
}

TEST_F(WindowTest, OpeningAnotherFileAsksAboutChangesFirst) {
  desk.setGrams(kInsects, Grams(12));
  settle();
  fileToOpen = path("other.json");
  QTest::keyClick(&window, Qt::Key_O, Qt::ControlModifier);
  EXPECT_EQ(asked, 1);
  EXPECT_EQ(desk.problem().title, "Example");
  unsaved = UnsavedAnswer::Discard;
  QTest::keyClick(&window, Qt::Key_O, Qt::ControlModifier);
  settle();
  EXPECT_EQ(desk.problem().title, "Other");
}

TEST_F(WindowTest, AFileThatCannotBeReadIsToldInTheRoomAndLeavesTheDeskAsItWas) {
  fileToOpen = path("missing.json");
  EXPECT_FALSE(window.diets().document().openByDialog());
  EXPECT_EQ(desk.problem().title, "Example");
  bool told = false;
  for (const QLabel* label : window.findChildren<QLabel*>())
    told = told || (label->isVisible() && label->text().contains(QStringLiteral("missing.json")));
  EXPECT_TRUE(told);
}

TEST_F(WindowTest, TheFinderGoesToADietOrToAFoodOfTheDiet) {
  QTest::keyClick(&window, Qt::Key_K, Qt::ControlModifier);
  auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(field, nullptr);
  QTest::keyClicks(field, QStringLiteral("limest"));  // the room in sight is asked first
  QTest::keyClick(field, Qt::Key_Return);
  const IngredientTable& table = window.diets().deskPane().table();
  EXPECT_EQ(table.currentIndex().row(), static_cast<int>(kLimestone));
  EXPECT_TRUE(table.hasFocus());
  QTest::keyClick(&window, Qt::Key_K, Qt::ControlModifier);
  QTest::keyClicks(field, QStringLiteral("oth"));
  QTest::keyClick(field, Qt::Key_Return);
  settle();
  EXPECT_EQ(desk.problem().title, "Other");
}

TEST_F(WindowTest, EveryControlHasANameForAScreenReader) {
  expectNamedControls(window);
}

}  // namespace
}  // namespace tarebowl::ui
