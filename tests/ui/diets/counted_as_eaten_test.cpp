// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// "Count what is eaten of it": the menu entry of a version, and what the desk shows then.
#include "core/diet/solve.h"
#include "tests/ui/shared/sample_in_room.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/version_document.h"

#include <QAction>
#include <QMenu>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::ui {
namespace {

class CountedAsEaten : public ::testing::Test {
 protected:
  CountedAsEaten() {
    room.resize(1290, 740);
    room.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&room));
    sample.openIn(collection);
    settle();
    const auto hits = room.find(QStringLiteral("fennec"), 1);
    EXPECT_FALSE(hits.empty());
    if (!hits.empty()) room.goTo(hits.front().id);
    settle();
  }
  void settle() {
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return collection.isIdle() && room.version().isOpen() && !room.desk().isSolving(); },
        30'000));
  }
  /// Chooses the entry in whichever menu of the room has it.
  void chooseEntry() {
    for (auto* menu : room.findChildren<QMenu*>()) {
      emit menu->aboutToShow();
      for (QAction* action : menu->actions())
        if (action->text() == QStringLiteral("Count what is eaten of it")) {
          action->trigger();
          return settle();
        }
    }
    ADD_FAILURE() << "no menu counts what is eaten";
  }
  [[nodiscard]] double leastEaten() const {
    double least = 1.0;
    for (const diet::DietFood& food : room.desk().problem().foods)
      least = std::min(least, food.eatenFraction);
    return least;
  }

  SampleAtHand sample;
  OpenCollection collection;
  DietsRoom room{&diet::solve, collection, Dialogs{}, &sampleDay};
};

// The foxes leave their vegetables (the planted story), so that little of them counts.
TEST_F(CountedAsEaten, TheEntryTurnsTheDeskToWhatIsEatenAndBack) {
  EXPECT_EQ(room.version().counted(), transfer::CountedAs::Offered);
  EXPECT_EQ(leastEaten(), 1.0);
  const diet::Diet grams = room.desk().draft().grams;
  chooseEntry();
  EXPECT_EQ(room.version().counted(), transfer::CountedAs::Eaten);
  EXPECT_LT(leastEaten(), 0.4);
  EXPECT_THAT(saidIn(room), ::testing::HasSubstr("counted as eaten, as learned of"));
  EXPECT_EQ(room.desk().draft().grams, grams) << "what goes into the bowl stays what it was";
  chooseEntry();
  EXPECT_EQ(room.version().counted(), transfer::CountedAs::Offered);
  EXPECT_EQ(leastEaten(), 1.0);
}

}  // namespace
}  // namespace tarebowl::ui
