// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A food did not arrive: what the keeper gives instead, by keys alone, in the invented sample.
#include "core/store/feeding_reading.h"
#include "core/store/swap_verbs.h"
#include "core/transfer/sample_import.h"
#include "tests/source_dir.h"
#include "tests/ui/kitchen/example_kitchen.h"
#include "tests/ui/kitchen/pretend_scale.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/kitchen/scale_bar.h"
#include "ui/kitchen/swap_model.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/kitchen/weigh_pane.h"
#include "ui/shared/paths.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using store::Collection;

constexpr const char* kOpenedAt = "2026-11-25T06:00:00Z";

class SwapAtTheBench : public ::testing::Test {
 protected:
  SwapAtTheBench() {
    {
      const store::Author author{"Tarebowl", kOpenedAt};
      Collection made = Collection::create(file, author);
      transfer::importSample(made, TAREBOWL_SOURCE_DIR "/sample-data", author);
    }
    collection.setPerson(QStringLiteral("Keeper A"));
    room.resize(1290, 740);
    room.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&room));
    collection.open({.name = QStringLiteral("brackenmere"), .file = file, .invented = true},
                    [file = file] { return Collection::open(file, kOpenedAt); });
    settle();
    room.showSheet(QStringLiteral("Small Mammals"), kitchenDay(), KitchenDesk::Task::WeighIn);
    settle();
    room.weighPane().field().setFocus();
  }
  void settle() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return collection.isIdle() && !room.desk().isReading(); }, 30'000));
  }
  void goTo(const std::string& group, const std::string& food) {
    const auto& bowls = room.desk().sheet()->sheet.bowls;
    for (std::size_t b = 0; b < bowls.size(); ++b)
      for (std::size_t i = 0; i < bowls[b].bowl.items.size(); ++i)
        if (bowls[b].bowl.key.group == group && bowls[b].bowl.items[i].food == food) room.desk().goTo({b, i});
    ASSERT_EQ(room.desk().item()->food, food);
  }
  void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }
  void offersComplete() {
    ASSERT_TRUE(QTest::qWaitFor(
        [this] {
          return collection.isIdle() && !room.swapPane().isSeeking() &&
                 room.swapPane().model().rowCount() > 0;
        },
        30'000));
  }
  [[nodiscard]] intake::Bowl foxes() const {
    return store::findBowl(Collection::open(file, kOpenedAt), {"fennecs", kitchenDay(), 1}).value();
  }

  QTemporaryDir folder;
  std::filesystem::path file{toPath(folder.filePath(QStringLiteral("brackenmere.tarebowl")))};
  OpenCollection collection;
  KitchenRoom room{collection, Dialogs{}, &kitchenDay};
};

TEST_F(SwapAtTheBench, WhatTheKeeperTakesStandsOnTheSheetAndIsWeighedNext) {
  goTo("fennecs", "courgette-raw");
  press(Qt::Key_Asterisk);
  EXPECT_TRUE(room.isSwapping());
  offersComplete();
  press(Qt::Key_Return);
  settle();
  EXPECT_FALSE(room.isSwapping());
  EXPECT_EQ(QApplication::focusWidget(), &room.weighPane().field());
  const auto swaps = store::swapsBetween(Collection::open(file, kOpenedAt), kitchenDay(), kitchenDay());
  ASSERT_EQ(swaps.size(), 1U);
  EXPECT_EQ(swaps[0].record.food, "courgette-raw");
  EXPECT_EQ(swaps[0].record.by.who, "Keeper A");
  const intake::Bowl bowl = foxes();
  const auto courgette = std::ranges::find(bowl.items, "courgette-raw", &intake::BowlItem::food);
  const bool decided = swaps[0].record.approval == intake::SwapApproval::KeeperDecides;
  EXPECT_EQ(courgette->swappedOut, decided);
  EXPECT_EQ(std::ranges::count(bowl.items, swaps[0].record.given.at(0).food, &intake::BowlItem::food),
            decided ? 1 : 0);
}

TEST_F(SwapAtTheBench, EscapeLeavesTheBowlAsItWas) {
  goTo("fennecs", "courgette-raw");
  press(Qt::Key_Asterisk);
  offersComplete();
  press(Qt::Key_Escape);
  settle();
  EXPECT_FALSE(room.isSwapping());
  EXPECT_TRUE(store::swapsBetween(Collection::open(file, kOpenedAt), kitchenDay(), kitchenDay()).empty());
}

TEST_F(SwapAtTheBench, OTurnsFromWhatIsOfferedToWhatIsEatenAndBack) {
  goTo("fennecs", "courgette-raw");
  press(Qt::Key_Asterisk);
  offersComplete();
  const auto eatenOfTheMissing = [this] {
    const diet::SwapRequest& request = *room.swapPane().model().offers().request;
    return request.problem.foods[request.missing.at(0)].eatenFraction;
  };
  EXPECT_EQ(room.swapPane().counted(), transfer::CountedAs::Offered);
  EXPECT_EQ(eatenOfTheMissing(), 1.0);
  press(Qt::Key_O);
  offersComplete();
  EXPECT_EQ(room.swapPane().counted(), transfer::CountedAs::Eaten);
  EXPECT_LT(eatenOfTheMissing(), 0.4) << "the foxes leave their vegetables";
  press(Qt::Key_O);
  offersComplete();
  EXPECT_EQ(eatenOfTheMissing(), 1.0);
}

TEST_F(SwapAtTheBench, WhatTheScaleReadStandsInTheFieldUntilTheKeeperKeepsIt) {
  PretendScale scale;
  room.scaleBar().use({.port = scale.port()});
  goTo("fennecs", "carrot-boiled");
  scale.send("ST  24.2 g\r\n");
  ASSERT_TRUE(
      QTest::qWaitFor([this] { return room.weighPane().field().text() == QStringLiteral("24.2"); }, 5000));
  settle();
  EXPECT_EQ(room.desk().item()->food, "carrot-boiled") << "nothing is written before Enter";
  press(Qt::Key_Return);
  settle();
  const intake::Bowl bowl = foxes();
  const auto carrots = std::ranges::find(bowl.items, "carrot-boiled", &intake::BowlItem::food);
  EXPECT_EQ(carrots->weighings.at(0).actual, Grams(24.2));
}

}  // namespace
}  // namespace tarebowl::ui
