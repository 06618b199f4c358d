// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A desk whose server goes away in the middle, and what roles may do when it is back.
#include "core/store/animal_reading.h"
#include "core/store/opening.h"
#include "core/store/reading.h"
#include "core/store/server_address.h"
#include "core/store/server_setup.h"
#include "tests/core/store/cut_off_desk.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;
using testing::SizeIs;

constexpr const char* kPassword = "right one";

class CutOff : public testing::Test {
 protected:
  CutOff() { desk.takeCopyOf(kitchen.collection); }

  [[nodiscard]] const fs::path& address() const { return kitchen.collection.file(); }
  void hangUp() const {
    (void)refusedTo(address(), "",
                    "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = "
                    "current_database() AND pid <> pg_backend_pid()");
  }
  [[nodiscard]] std::vector<intake::Weighing> weighings(const char* group, std::size_t item) const {
    const Collection there = Collection::open(address(), kNow);
    return findBowl(there, {group, kitchen.today, 1}).value().items.at(item - 1).weighings;
  }

  Kitchen kitchen;
  CutOffDesk desk{kitchen.folder, "bench"};
};

/// The server carries out the commit, and hangs up before it says so.
TEST_F(CutOff, AnAnswerThatIsLostDoublesNothing) {
  desk.weigh("family", 1, 119, 1);
  desk.weigh("family", 2, 30, 2);
  kitchen.collection.inner().sql()
      << "CREATE FUNCTION hang_up() RETURNS TRIGGER LANGUAGE plpgsql AS $$ BEGIN PERFORM "
         "pg_terminate_backend(pg_backend_pid()); RETURN NEW; END $$";
  kitchen.collection.inner().sql() << "CREATE CONSTRAINT TRIGGER hangs_up AFTER INSERT ON station_sent "
                                      "DEFERRABLE INITIALLY DEFERRED FOR EACH "
                                      "ROW EXECUTE FUNCTION hang_up()";
  EXPECT_EQ(codeOf([&] { desk.send(kitchen.collection); }), StoreErrorCode::NoServer);
  EXPECT_EQ(countWaiting(desk.own).waiting, 2U);
  Collection back = Collection::open(address(), kNow);
  back.inner().sql() << "DROP TRIGGER hangs_up ON station_sent";
  EXPECT_EQ(desk.send(back).sent, 2U);
  EXPECT_EQ(desk.send(back).sent, 0U);
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
  EXPECT_THAT(weighings("family", 2), SizeIs(1));
}

TEST_F(CutOff, AServerThatGoesAwayBetweenTwoEntriesGetsTheOtherOneLater) {
  desk.weigh("family", 1, 119, 1);
  const KitchenEntry first = entriesOf(desk.own).at(0).entry.value();
  EXPECT_EQ(deliver(kitchen.collection, first, "bench").outcome, Delivered::Outcome::Written);
  desk.weigh("family", 2, 30, 2);
  hangUp();
  // The connection is taken up again by itself, or refuses; nothing is lost or doubled either way.
  for (int tries = 0; tries < 5 && countWaiting(desk.own).waiting > 0; ++tries)
    (void)codeOf([&] { desk.send(kitchen.collection); });
  EXPECT_EQ(countWaiting(desk.own).waiting, 0U);
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
  EXPECT_THAT(weighings("family", 2), SizeIs(1));
}

TEST_F(CutOff, ACopyThatIsInterruptedLeavesTheFormerOne) {
  desk.weigh("family", 1, 119, 1);
  const auto before = bowlsOfDay(desk.own, kitchen.today);
  hangUp();
  (void)codeOf([&] { desk.takeCopyOf(kitchen.collection); });
  EXPECT_EQ(bowlsOfDay(desk.own, kitchen.today), before);
  EXPECT_EQ(countWaiting(desk.own).waiting, 1U);
}

TEST_F(CutOff, AServerThatLetsNobodyInIsAskedAgainUntilItDoes) {
  std::string beside = address().string();
  const std::string name = databaseOf(address());
  beside.replace(beside.find("@/") + 2, name.size(), "postgres");
  const auto let = [&](const char* in) {
    ASSERT_EQ(refusedTo(beside, "", fmt::format("ALTER DATABASE {} ALLOW_CONNECTIONS {}", name, in)), "");
  };
  let("false");
  (void)refusedTo(
      beside, "",
      fmt::format("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{}'", name));
  const auto countGroups = [](Collection& c) { return listGroups(c).size(); };
  const auto read = [&] { return readTogether(kitchen.collection, countGroups); };
  for (int times = 0; times < 3; ++times) {
    EXPECT_EQ(codeOf(read), StoreErrorCode::NoServer);
    EXPECT_EQ(codeOf([&] { (void)kitchen.collection.changesElsewhere(); }), StoreErrorCode::NoServer);
    EXPECT_EQ(codeOf([&] { kitchen.weigh(kitchen.item("family", 1), 119); }), StoreErrorCode::NoServer);
  }
  let("true");
  kitchen.weigh(kitchen.item("family", 1), 119);
  EXPECT_EQ(read(), 2U);
}

class CutOffKeeper : public CutOff {
 protected:
  CutOffKeeper() { letIn(address(), {}, person(), "keeper", kPassword); }
  ~CutOffKeeper() override {
    (void)refusedTo(address(), "", fmt::format("DROP ROLE IF EXISTS \"{}\"", person()));
  }
  [[nodiscard]] static std::string person() {
    return fmt::format("keeper_of_{}", testing::UnitTest::GetInstance()->current_test_info()->name());
  }
  [[nodiscard]] Collection openedByKeeper() const {
    std::string theirs = address().string();
    theirs.replace(theirs.find("owner"), 5, person());
    return Collection::open(theirs, kNow, {.password = [](const fs::path&) { return kPassword; }});
  }
};

TEST_F(CutOffKeeper, TakesTheCopyAndSendsWhatWaits) {
  Collection theirs = openedByKeeper();
  desk.takeCopyOf(theirs);
  desk.weigh("family", 1, 119, 1);
  EXPECT_EQ(desk.send(theirs).sent, 1U);
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
}

TEST_F(CutOffKeeper, WhoseRightWasTakenAwayMeanwhileKeepsTheEntryAsAConflict) {
  Collection theirs = openedByKeeper();
  desk.weigh("family", 1, 119, 1);
  ASSERT_EQ(
      refusedTo(address(), "",
                fmt::format("REVOKE tarebowl_keeper FROM \"{0}\"; GRANT tarebowl_vet TO \"{0}\"", person())),
      "");
  EXPECT_EQ(desk.send(theirs).conflicts, 1U);
  const WaitingEntry conflict = entriesOf(desk.own).at(0);
  EXPECT_THAT(conflict.why, HasSubstr("your role on the server may not do this"));
  EXPECT_FALSE(conflict.theirs);
  // Somebody who may sends it.
  settle(desk.own, kitchen.collection, "bench", conflict.number, Choice::Mine, "cut off", kKeeper);
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
}

TEST_F(CutOffKeeper, WhatWasTakenStaysTaken) {
  Collection theirs = openedByKeeper();
  desk.weigh("family", 1, 119, 1);
  desk.send(theirs);
  EXPECT_THAT(refusedTo(address(), "", "DELETE FROM tarebowl.station_sent"), HasSubstr("append-only"));
}

}  // namespace
}  // namespace tarebowl::store
