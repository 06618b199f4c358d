// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The kitchen of the window goes on while its server is away.
#include "core/store/opening.h"
#include "tests/core/store/feeding_days.h"
#include "ui/collection/collection_files.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/waiting_bar.h"
#include "ui/collection/waiting_text.h"
#include "ui/kitchen/kitchen_desk.h"
#include "ui/shared/plain_table.h"

#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using testing::HasSubstr;
using testing::SizeIs;

constexpr int kPatienceMs = 60'000;

/// One start of the program.
struct Program {
  explicit Program(const std::filesystem::path& address) {
    desk.setInSight(true);
    collection.setPerson(QStringLiteral("Keeper A"));
    files.open(address);
  }
  QWidget window;
  OpenCollection collection;
  CollectionFiles files{collection, Dialogs(), &window};
  KitchenDesk desk{collection, [] { return quantity::parseDate("2026-11-25").value(); }};
  WaitingBar bar{collection};
};

template <class Condition>
void waitUntil(const char* what, Condition condition) {
  ASSERT_TRUE(QTest::qWaitFor(condition, kPatienceMs)) << what;
}

class CutOffTest : public testing::Test {
 protected:
  CutOffTest() {
    qputenv("XDG_DATA_HOME", QByteArray::fromStdString((kitchen.folder / "data").string()));
    start();
    waitUntil("a copy was taken", [this] { return isCopied(); });
    waitUntil("the sheet is read",
              [this] { return program->desk.sheet() && program->desk.item() != nullptr; });
  }
  ~CutOffTest() override { letServerAnswer(); }

  void start() { program = std::make_unique<Program>(kitchen.collection.file()); }
  [[nodiscard]] bool isCopied() const {
    return program->collection.station() != nullptr && program->collection.station()->copy();
  }
  [[nodiscard]] std::size_t waiting() const { return program->collection.station()->count().waiting; }
  [[nodiscard]] std::size_t conflicts() const { return program->collection.station()->count().conflicts; }

  /// From a connection to another database.
  void onServer(const std::string& statement) const {
    std::string beside = kitchen.collection.file().string();
    const auto from = beside.find("@/") + 2;
    beside.replace(from, database().size(), "postgres");
    ASSERT_EQ(store::refusedTo(beside, "", statement), "");
  }
  [[nodiscard]] std::string database() const { return store::databaseOf(kitchen.collection.file()); }
  /// For everybody but the desk that has `kitchen` open, as where the network of this room is gone.
  void cutOff() {
    onServer("ALTER DATABASE " + database() + " ALLOW_CONNECTIONS false");
    onServer("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '" + database() +
             "' AND pid <> " + std::to_string(kitchen.collection.inner().connection.number()));
    waitUntil("it is cut off", [this] { return program->collection.isOnCopy(); });
    waitUntil("the copy is read", [this] { return program->desk.sheet() && !program->desk.isReading(); });
  }
  void letServerAnswer() const { onServer("ALTER DATABASE " + database() + " ALLOW_CONNECTIONS true"); }

  void weigh(double grams) {
    const std::size_t before = waiting();
    program->desk.goTo({0, 0});
    program->desk.weigh(Grams(grams));
    waitUntil("it waits", [&] { return waiting() == before + 1; });
  }
  [[nodiscard]] std::vector<intake::Weighing> weighings() const {
    return kitchen.bowl("family").items.at(0).weighings;
  }
  [[nodiscard]] std::string text() const { return program->bar.text().toStdString(); }

  store::Kitchen kitchen;
  std::unique_ptr<Program> program;
};

TEST_F(CutOffTest, AWeightWaitsOnThisDeskAndIsOnTheServerOnceItIsBack) {
  cutOff();
  EXPECT_THAT(text(), HasSubstr("all other rooms wait for the server"));
  weigh(119.5);
  EXPECT_TRUE(isWeighed(program->desk.sheet()->sheet.bowls.at(0).bowl.items.at(0)));
  EXPECT_THAT(stateOf(program->collection).savedText.toStdString(), HasSubstr("cut off from the server"));
  EXPECT_THAT(text(), HasSubstr("1 entr"));
  EXPECT_THAT(weighings(), SizeIs(0));
  letServerAnswer();
  waitUntil("it is sent", [this] { return !program->collection.isCutOff() && waiting() == 0; });
  ASSERT_THAT(weighings(), SizeIs(1));
  EXPECT_EQ(weighings()[0].actual, Grams(119.5));
  EXPECT_EQ(weighings()[0].by.who, "Keeper A");
  EXPECT_TRUE(program->bar.isHidden());
}

TEST_F(CutOffTest, TheProgramStartedAgainWithoutTheServerShowsWhatWaits) {
  cutOff();
  weigh(119.5);
  start();
  waitUntil("it is cut off", [this] { return program->collection.isOnCopy(); });
  waitUntil("the copy is read", [this] { return program->desk.sheet().has_value(); });
  EXPECT_EQ(waiting(), 1U);
  EXPECT_TRUE(isWeighed(program->desk.sheet()->sheet.bowls.at(0).bowl.items.at(0)));
  letServerAnswer();
  waitUntil("it is sent", [this] { return !program->collection.isCutOff() && waiting() == 0; });
  EXPECT_THAT(weighings(), SizeIs(1));
}

TEST_F(CutOffTest, WhatAnotherDeskWeighedMeanwhileIsChosenByAPerson) {
  cutOff();
  weigh(119.5);
  kitchen.weigh(kitchen.item("family", 1), 125, {"Keeper B", "2026-11-25T07:40:00Z"});
  letServerAnswer();
  waitUntil("a conflict", [this] { return conflicts() == 1; });
  waitUntil("a choice", [this] { return program->bar.mineButton().isEnabled(); });
  EXPECT_THAT(text(), HasSubstr("choose what counts"));
  const store::WaitingEntry& entry = program->collection.station()->entries().at(0);
  EXPECT_EQ(valueText(entry.entry->value), QStringLiteral("119.5 g"));
  EXPECT_EQ(theirsText(entry), QStringLiteral("125 g, Keeper B"));
  program->bar.mineButton().click();
  waitUntil("it is settled", [this] { return conflicts() == 0; });
  EXPECT_EQ(intake::entryThatCounts(weighings())->actual, Grams(119.5));
  EXPECT_THAT(weighings(), SizeIs(2));
}

TEST_F(CutOffTest, ADayThatTheCopyDoesNotHoldIsNotShownAsIfNobodyHadOpenedIt) {
  cutOff();
  bool said = false;
  QObject::connect(&program->desk, &KitchenDesk::dayNotOnCopy, &program->window, [&said] { said = true; });
  program->desk.showDay(quantity::parseDate("2026-10-01").value());
  EXPECT_TRUE(said);
  EXPECT_FALSE(program->desk.sheet());
}

TEST_F(CutOffTest, ALotWaitsForTheServerAndSaysSo) {
  cutOff();
  bool said = false;
  QObject::connect(&program->desk, &KitchenDesk::waitsForServer, &program->window, [&said] { said = true; });
  program->desk.beginLot(QStringLiteral("B7"));
  EXPECT_TRUE(said);
  EXPECT_FALSE(program->desk.isUnsettled());
}

}  // namespace
}  // namespace tarebowl::ui
