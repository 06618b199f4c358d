// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Two desks on one collection: what one of them is told that the other has touched, so that it reads no more
// again.
#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/health_verbs.h"
#include "core/store/opening.h"
#include "tests/core/store/feeding_days.h"
#include "tests/core/store/larder.h"

#include <gtest/gtest.h>

#include <array>
#include <chrono>
#include <thread>

namespace tarebowl::store {
namespace {

class ChangesElsewhere : public testing::Test {
 protected:
  ChangesElsewhere() { EXPECT_FALSE(here.changesElsewhere()) << "it begins to look"; }

  /// A file shows another's write at once; a server tells of it in its own time.
  std::optional<Touched> heard() {
    constexpr int kMostTries = 3000;
    for (int tries = 0; tries < kMostTries; ++tries) {
      if (auto touched = here.changesElsewhere()) return touched;
      std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    return std::nullopt;
  }
  void noteFaeces(Collection& at) {
    health::Observation observation;
    observation.individual = "a";
    observation.on = kitchen.today;
    observation.kind = health::SignKind::Other;
    observation.note = "limps";
    (void)addObservation(at, observation, Confirmed::Yes, kKeeper);
  }

  Kitchen kitchen;
  Collection& there = kitchen.collection;
  Collection here = Collection::open(there.file(), kNow);
};

TEST_F(ChangesElsewhere, WhatWasWrittenIsNamedByItsPart) {
  (void)addFood(there, plain("chicory"), kKeeper);
  EXPECT_EQ(heard(), Touched({Part::Foods, Part::Kitchen}));
  noteFaeces(there);
  EXPECT_EQ(heard(), Touched({Part::Health, Part::Kitchen}));
}

TEST_F(ChangesElsewhere, AWeightTouchesTheKitchenAlone) {
  kitchen.weigh(kitchen.item("family", 1), 119);
  const auto touched = heard();
  EXPECT_EQ(touched, Touched({Part::Kitchen}));
  EXPECT_TRUE(touched->any({Part::Diets, Part::Kitchen}));
  EXPECT_FALSE(touched->any({Part::Foods, Part::Animals, Part::Targets, Part::Diets, Part::Health}));
}

TEST_F(ChangesElsewhere, WhatOneWroteOneselfIsNoNews) {
  (void)addFood(here, plain("chicory"), kKeeper);
  EXPECT_FALSE(here.changesElsewhere());
  noteFaeces(there);
  (void)addFood(here, plain("fennel"), kKeeper);
  EXPECT_EQ(heard(), Touched({Part::Health, Part::Kitchen}));
}

TEST_F(ChangesElsewhere, WhatWasRolledBackHereLeavesItsNumberToTheOther) {
  {
    WriteTransaction transaction(here.inner().connection);
    (void)record(here.inner(), {.author = kKeeper, .verb = "edit food", .subject = "food"});
  }
  noteFaeces(there);
  EXPECT_EQ(heard(), Touched({Part::Health, Part::Kitchen}));
}

TEST_F(ChangesElsewhere, AWatchMayHearSoonerThanTheConnectionItself) {
  const std::array<int, 1> another{-1};
  EXPECT_EQ(here.changesElsewhere(another), Touched({Part::Kitchen}));
  EXPECT_FALSE(here.changesElsewhere());
}

TEST_F(ChangesElsewhere, WhatIsNoPartIsAllOfIt) {
  {
    WriteTransaction transaction(there.inner().connection);
    (void)record(there.inner(), {.author = kKeeper, .verb = "restore backup", .subject = "collection"});
    transaction.commit();
  }
  const auto touched = heard();
  ASSERT_TRUE(touched);
  EXPECT_TRUE(touched->isAll());
  EXPECT_TRUE(touched->any({Part::Health}));
}

TEST(PartOfASubject, EverySubjectOfTheLogHasOne) {
  for (const char* subject :
       {"food",          "sample",     "table",        "lot",       "species",        "individual",
        "group",         "membership", "mass",         "condition", "target profile", "energy plan",
        "house caution", "diet",       "diet version", "rotation",  "feeding",        "swap",
        "control pan",   "tolerance",  "observation",  "faeces"})
    EXPECT_TRUE(partOf(subject)) << subject;
  EXPECT_FALSE(partOf("collection"));
  EXPECT_FALSE(partOf("of a newer program"));
}

}  // namespace
}  // namespace tarebowl::store
