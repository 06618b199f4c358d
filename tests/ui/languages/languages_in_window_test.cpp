// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Every room on the sample in each language: no English word is left, and no word is cut on a small screen.
#include "tests/ui/diets/example_diet.h"
#include "tests/ui/frame/every_control.h"
#include "tests/ui/frame/sample_in_window.h"
#include "tests/ui/languages/said_in.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/ingredient_model.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/problem_files.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/kitchen/weigh_pane.h"
#include "ui/shared/language.h"
#include "ui/shared/paths.h"

#include <QAbstractSpinBox>
#include <QLabel>
#include <QLineEdit>

#include <gmock/gmock.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;
using Column = IngredientModel::Column;

/// Before the window is made.
struct Spoken {
  explicit Spoken(const char* code) : language(QLatin1String(code)) {}
  SpokenLanguage language;
};

class LanguageInWindowTest : public ::testing::WithParamInterface<const char*>,
                             private Spoken,
                             public SampleInWindow {
 protected:
  LanguageInWindowTest() : Spoken(GetParam()), words(language.code()) {}
  EnglishWords words;
};

TEST_P(LanguageInWindowTest, LeavesNoEnglishWordInSightAndCutsNoneOnASmallScreen) {
  constexpr QSize kScreen{1366, 740};  // 768 less the bar of the desktop's window
  ASSERT_GT(words.size(), 1000U);
  for (int room = 1; room <= 7; ++room) {
    SCOPED_TRACE(testing::Message() << "room " << room);
    goTo(room);
    for (const QString& sentence : saidInAll(window)) {
      const QString english = words.in(sentence);
      EXPECT_TRUE(english.isEmpty()) << sentence.toStdString() << " — is “" << english.toStdString() << "”";
    }
    EXPECT_LE(window.minimumSizeHint().width(), kScreen.width());
    EXPECT_LE(window.minimumSizeHint().height(), kScreen.height());
    for (const QSize size : {kTwiceAsLarge, kScreen}) {
      window.resize(size);
      QTest::qWait(50);  // layouts, and what follows from them
      const QStringList cut = cutIn(window, size == kScreen ? Ellipsis::IsCut : Ellipsis::IsFine);
      EXPECT_TRUE(cut.isEmpty()) << size.width() << "x" << size.height() << "\n"
                                 << cut.join(QLatin1Char('\n')).toStdString();
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Languages, LanguageInWindowTest, ::testing::Values("de", "fr", "es"),
                         [](const auto& language) { return std::string(language.param); });

class GermanWindowTest : private Spoken, public SampleInWindow {
 protected:
  GermanWindowTest() : Spoken("de") {}
};

TEST_F(GermanWindowTest, WritesDecimalCommasAndReadsBothMarksAtTheScale) {
  goTo(5);
  WeighPane& pane = window.kitchen().weighPane();
  for (const char* keys : {"1.500", "1 500", "1.500,5"}) {
    pane.field().clear();
    QTest::keyClicks(&pane.field(), QString::fromUtf8(keys));
    QTest::keyClick(&pane.field(), Qt::Key_Return);
    settle();
    EXPECT_TRUE(pane.question().isVisible()) << keys;
    EXPECT_THAT(pane.question().text().toStdString(), HasSubstr(keys));
    EXPECT_FALSE(isWeighed(*window.kitchen().desk().item())) << keys << " is neither 1500 nor 1.5";
  }
}

/// A window on a problem file, whose grams and limits can be typed.
class DeskInLanguageTest : public ::testing::WithParamInterface<const char*>,
                           private Spoken,
                           public ::testing::Test {
 protected:
  DeskInLanguageTest() : Spoken(GetParam()) {
    const auto file = toPath(folder.filePath(QStringLiteral("example.json")));
    EXPECT_FALSE(saveProblem(file, exampleProblem()));
    window.open(file);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    settle();
  }
  void settle() {
    QCoreApplication::processEvents();  // an editor closes by a queued call
    EXPECT_TRUE(QTest::qWaitFor([this] { return !desk.isSolving(); }));
  }
  /// Types into a cell of the diet's table as a hand would.
  QAbstractSpinBox* typeInto(int row, int column, const QString& keys) {
    IngredientTable& table = window.diets().deskPane().table();
    table.setFocus();
    table.setCurrentIndex(table.model()->index(row, column));
    QTest::keyClicks(table.viewport(), keys.left(1));
    auto* editor = table.findChild<QAbstractSpinBox*>();
    if (editor != nullptr) QTest::keyClicks(editor, keys.mid(1));
    return editor;
  }
  void finish(QAbstractSpinBox* editor) {
    ASSERT_NE(editor, nullptr);
    QTest::keyClick(editor, Qt::Key_Return);
    settle();
    const IngredientTable& table = window.diets().deskPane().table();
    EXPECT_TRUE(QTest::qWaitFor([&] { return table.findChild<QAbstractSpinBox*>() == nullptr; }));
  }

  QTemporaryDir folder;
  MainWindow window{&exampleSolve, Dialogs{}, Preferences(folder.filePath(QStringLiteral("seat.ini")))};
  DietDesk& desk = window.diets().desk();
};

TEST_P(DeskInLanguageTest, GramsReadBothMarks) {
  finish(typeInto(kLimestone, Column::GramsADay, QStringLiteral("0,7")));
  EXPECT_NEAR(desk.draft().grams[kLimestone].value(), 0.7, 1e-9);
  finish(typeInto(kLimestone, Column::GramsADay, QStringLiteral("0.6")));
  EXPECT_NEAR(desk.draft().grams[kLimestone].value(), 0.6, 1e-9);
}

TEST_P(DeskInLanguageTest, GramsAndLimitsRefuseWhatMayBeAThousand) {
  const QString text =
      QLocale().decimalPoint() == QStringLiteral(",") ? QStringLiteral("1.500") : QStringLiteral("1,500");
  const double grams = desk.draft().grams[kLimestone].value();
  const auto limit = desk.problem().foods[kLimestone].max;
  QAbstractSpinBox* editor = typeInto(kLimestone, Column::GramsADay, text);
  ASSERT_NE(editor, nullptr);
  EXPECT_EQ(editor->text(), text) << "what was typed stays in sight";
  finish(editor);
  EXPECT_NEAR(desk.draft().grams[kLimestone].value(), grams, 1e-9) << "neither 1500 nor 1.5";
  finish(typeInto(kLimestone, Column::Max, text));
  EXPECT_EQ(desk.problem().foods[kLimestone].max, limit);
}

INSTANTIATE_TEST_SUITE_P(Languages, DeskInLanguageTest, ::testing::Values("en", "de", "fr", "es"),
                         [](const auto& language) { return std::string(language.param); });

}  // namespace
}  // namespace tarebowl::ui
