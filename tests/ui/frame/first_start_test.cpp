// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The first minute: three ways in, what an empty collection says, and coming back the next day.
#include "tests/ui/collection/asking_server.h"
#include "tests/ui/diets/example_diet.h"
#include "tests/ui/foods/example_foods.h"
#include "tests/ui/shared/sample_in_room.h"
#include "ui/animals/animals_room.h"
#include "ui/collection/start_page.h"
#include "ui/foods/foods_room.h"
#include "ui/foods/import_desk.h"
#include "ui/frame/collection_menu.h"
#include "ui/frame/main_window.h"
#include "ui/frame/room_numbers.h"
#include "ui/shared/password_question.h"
#include "ui/shared/paths.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

constexpr int kHeight = 745;  // not that of a first start

class FirstStartTest : public ::testing::Test {
 protected:
  std::unique_ptr<MainWindow> start(const std::optional<std::filesystem::path>& file = {}) {
    Dialogs dialogs;
    dialogs.collectionToCreate = [this](QWidget*, const auto&) { return at("house.tarebowl"); };
    dialogs.serverToOpen = [this](QWidget*, const auto& remembered) {
      rememberedServers = remembered;
      return std::optional<std::filesystem::path>("postgresql://ann@localhost:1/zoo");
    };
    dialogs.tableToOpen = [this](QWidget*, const auto&) { return at("greens.csv"); };
    auto window = std::make_unique<MainWindow>(&exampleSolve, dialogs,
                                               Preferences(folder.filePath(QStringLiteral("seat.ini"))));
    window->takeItsPlace();
    window->open(file);
    window->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
    settle(*window);
    return window;
  }
  static void settle(const MainWindow& window) {
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.isWhole() && window.collection().isIdle(); }, 30'000));
    QTest::qWait(20);
  }
  std::optional<std::filesystem::path> at(const char* name) const { return toPath(folder.path()) / name; }
  /// Makes a collection of its own, empty, and closes the window again.
  void workOnce(int room) {
    const auto window = start();
    pressIn(*window, "Start empty…");
    settle(*window);
    window->goToRoom(room);
    window->resize(window->width(), kHeight);
    QTest::qWait(20);
    EXPECT_TRUE(window->close());
  }

  QTemporaryDir folder;
  std::vector<std::filesystem::path> rememberedServers;
};

TEST_F(FirstStartTest, OffersTheServersThatWereOpenAndSaysWhereOneDoesNotAnswer) {
  const Preferences preferences(folder.filePath(QStringLiteral("seat.ini")));
  preferences.setLastCollection("postgresql://ann@server/zoo");
  preferences.setLastCollection(*at("not-there.tarebowl"));
  const auto window = start();
  for (auto* link : window->findChildren<QLabel*>())
    if (link->isVisible() && link->accessibleName() == QLatin1String("Open a collection on a server")) {
      EXPECT_EQ(link->textFormat(), Qt::RichText) << "its tags are not read";
      emit link->linkActivated(QStringLiteral("#"));
    }
  settle(*window);
  EXPECT_THAT(rememberedServers, ::testing::ElementsAre("postgresql://ann@server/zoo"));
  EXPECT_THAT(saidIn(*window), HasSubstr("the server does not answer; look at its name"));
}

TEST_F(FirstStartTest, TheWindowClosesWhileAServerWaitsForAPassword) {
  const AskingServer server;
  bool isAsked = false;
  Dialogs dialogs;
  dialogs.password = [&isAsked](QWidget*, PasswordQuestion&) { isAsked = true; };
  auto window = std::make_unique<MainWindow>(&exampleSolve, dialogs,
                                             Preferences(folder.filePath(QStringLiteral("seat.ini"))));
  window->open(server.address());
  EXPECT_TRUE(QTest::qWaitFor([&isAsked] { return isAsked; }, 30'000));
  window.reset();
}

TEST_F(FirstStartTest, TheMenuLeadsToAServerToo) {
  const auto window = start();
  auto* menu = window->findChild<CollectionMenu*>();
  for (QAction* entry : menu->findChild<QMenu*>()->actions())
    if (entry->text() == QStringLiteral("Open on a server…")) entry->trigger();
  settle(*window);
  EXPECT_THAT(saidIn(*window), HasSubstr("postgresql://ann@localhost:1/zoo"));
}

TEST_F(FirstStartTest, EveryRoomOffersTheThreeWaysInWhileNothingIsOpen) {
  const auto window = start();
  for (int room = 1; room <= 7; ++room) {
    window->goToRoom(room);
    for (const char* way : {"Open the invented sample", "Import a table…", "Start empty…"}) {
      int offered = 0;
      for (const auto* button : window->findChildren<QPushButton*>())
        offered += button->isVisible() && button->text() == QString::fromUtf8(way) ? 1 : 0;
      EXPECT_EQ(offered, 1) << way << " in room " << room;
    }
  }
  auto* first = qobject_cast<QPushButton*>(QApplication::focusWidget());
  ASSERT_NE(first, nullptr) << "a hand on the keys can begin";
  EXPECT_EQ(first->text(), QStringLiteral("Open the invented sample"));
}

TEST_F(FirstStartTest, StartingEmptyMakesACollectionAndSaysWhatToDoFirst) {
  const auto window = start();
  pressIn(*window, "Start empty…");
  settle(*window);
  EXPECT_TRUE(std::filesystem::exists(*at("house.tarebowl")));
  EXPECT_THAT(saidIn(*window), HasSubstr("No food is in this collection yet."));
  const std::vector<std::pair<int, const char*>> rooms{
      {1, "Nothing is due yet."},          {3, "There is no animal in this collection yet."},
      {4, "No diet can be designed yet."}, {5, "There is no bowl to prepare yet."},
      {6, "Nothing was fed yet."},         {7, "There is no patient yet."}};
  for (const auto& [room, words] : rooms) {
    window->goToRoom(room);
    settle(*window);
    EXPECT_THAT(saidIn(*window), HasSubstr(words));
  }
  pressIn(*window, "Add a species");  // of the room for the vet, who needs no food for a patient
  settle(*window);
  EXPECT_TRUE(window->animals().isVisible());
  window->goToRoom(kKitchenNumber);
  settle(*window);
  pressIn(*window, "Begin with foods");
  EXPECT_TRUE(window->foods().isVisible());
}

TEST_F(FirstStartTest, ImportingATableAsksWhereTheCollectionIsKeptAndShowsWhatWillHappen) {
  QFile table(folder.filePath(QStringLiteral("greens.csv")));
  ASSERT_TRUE(table.open(QIODevice::WriteOnly));
  table.write("Food,CA (mg)\nEndive,52\n");
  table.close();
  const auto window = start();
  pressIn(*window, "Import a table…");
  const ImportDesk& desk = window->foods().importDesk();
  ASSERT_TRUE(QTest::qWaitFor([&] { return desk.stage() == ImportDesk::Stage::Planned; }, 20'000));
  EXPECT_EQ(desk.planned()->valuesNew, 1U);
  EXPECT_TRUE(window->foods().isVisible());
}

TEST_F(FirstStartTest, TheNextDayTheWindowIsAsItWasLeft) {
  workOnce(5);
  const auto window = start();
  EXPECT_EQ(window->height(), kHeight);
  ASSERT_TRUE(window->collection().file());
  EXPECT_EQ(window->collection().file()->file, *at("house.tarebowl"));
  EXPECT_THAT(saidIn(*window), HasSubstr("There is no bowl to prepare yet.")) << "it is in the kitchen";
}

TEST_F(FirstStartTest, ACollectionThatIsGoneIsToldAndTheWaysInAreThere) {
  workOnce(2);
  std::filesystem::rename(*at("house.tarebowl"), *at("elsewhere.tarebowl"));
  const auto window = start();
  EXPECT_THAT(saidIn(*window), HasSubstr("house.tarebowl"));
  EXPECT_FALSE(window->collection().file());
  EXPECT_FALSE(std::filesystem::exists(*at("house.tarebowl"))) << "none is made in its place";
  pressIn(*window, "Open the invented sample");
}

TEST_F(FirstStartTest, OnceEveryRoomHasReadTheLineBelowSaysThatAllIsSaved) {
  const ExampleCollection other;
  const auto window = start(other.file());
  EXPECT_THAT(saidIn(*window), HasSubstr("all saved"));
  EXPECT_THAT(saidIn(*window), testing::Not(HasSubstr("working…")));
}

TEST_F(FirstStartTest, ACollectionThatIsNamedButNotThereIsToldInTheWindow) {
  const auto window = start(at("typo.tarebowl"));
  EXPECT_THAT(saidIn(*window), HasSubstr("typo.tarebowl"));
  EXPECT_FALSE(std::filesystem::exists(*at("typo.tarebowl")));
}

TEST_F(FirstStartTest, TheMenuOpensAgainWhatWasOpenAndShowsWhatIsGone) {
  workOnce(2);
  Preferences(folder.filePath(QStringLiteral("seat.ini"))).setLastCollection(*at("gone.tarebowl"));
  ExampleCollection other;
  const auto window = start(other.file());
  QMenu* again = nullptr;
  for (auto* menu : window->findChildren<QMenu*>())
    if (menu->title() == QStringLiteral("Open again")) again = menu;
  ASSERT_NE(again, nullptr);
  emit again->aboutToShow();
  QAction* house = nullptr;
  QAction* gone = nullptr;
  for (QAction* action : again->actions()) {
    if (action->text().startsWith(QStringLiteral("house"))) house = action;
    if (action->text().startsWith(QStringLiteral("gone"))) gone = action;
  }
  ASSERT_NE(house, nullptr);
  ASSERT_NE(gone, nullptr);
  EXPECT_FALSE(gone->isEnabled());
  house->trigger();
  settle(*window);
  EXPECT_EQ(window->collection().file()->file, *at("house.tarebowl"));
}

}  // namespace
}  // namespace tarebowl::ui
