// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The window on a collection on a server: what another desk writes shows by itself, and nothing else is read
// again.
#include "core/store/animal_verbs.h"
#include "core/store/server_setup.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_database.h"
#include "ui/animals/animal_desk.h"
#include "ui/collection/collection_files.h"
#include "ui/foods/food_desk.h"
#include "ui/shared/password_question.h"

#include <QSignalSpy>
#include <QTest>
#include <QWidget>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr int kPatienceMs = 60'000;
const store::Author kOther{"Keeper B", "2026-11-25T07:30:00Z"};

store::FoodRecord plain(const char* code) {
  store::FoodRecord record;
  record.food.code = code;
  record.food.name = code;
  record.food.group = "vegetable";
  return record;
}

class LiveTest : public testing::Test {
 protected:
  LiveTest() {
    qputenv("XDG_DATA_HOME", ::testing::TempDir().c_str());  // where a desk keeps its copy
    QObject::connect(&collection, &OpenCollection::refused, &widget,
                     [this](const Refusal& refusal) { refused = refusal.why.toStdString(); });
  }
  [[nodiscard]] Dialogs dialogs() {
    Dialogs made;
    made.password = [this](QWidget*, PasswordQuestion& question) { question.answer(password); };
    return made;
  }
  void open(const std::filesystem::path& address) {
    QSignalSpy listening(&collection, &OpenCollection::cutOffChanged);
    files.open(address);
    ASSERT_TRUE(listening.wait(kPatienceMs)) << refused;
    settle();
  }
  void settle() {
    QTest::qWait(500);  // longer than what comes at once is gathered
    EXPECT_TRUE(QTest::qWaitFor([this] { return collection.isIdle(); }, kPatienceMs));
  }
  void hangUp() const {
    (void)store::refusedTo(database.address(), "",
                           "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = "
                           "current_database() AND pid <> pg_backend_pid()");
  }

  store::OwnDatabase database{testing::UnitTest::GetInstance()->current_test_info()->name()};
  store::Collection there = store::Collection::create(database.address(), kOther);
  std::string password;
  std::string refused;
  QWidget widget;
  OpenCollection collection;
  CollectionFiles files{collection, dialogs(), &widget};
  FoodDesk foods{collection};
  AnimalDesk animals{collection, [] { return quantity::parseDate("2026-11-25").value(); }};
};

TEST_F(LiveTest, AnotherDesksFoodAppearsByItself) {
  open(database.address());
  EXPECT_TRUE(foods.foods().empty());
  (void)store::addFood(there, plain("kale"), kOther);
  EXPECT_TRUE(QTest::qWaitFor([this] { return foods.foods().size() == 1; }, kPatienceMs));
}

TEST_F(LiveTest, WhatWasNotTouchedIsNotReadAgain) {
  open(database.address());
  QSignalSpy foodsRead(&foods, &FoodDesk::listChanged);
  QSignalSpy animalsRead(&animals, &AnimalDesk::listChanged);
  animal::Species species;
  species.code = "lemur";
  species.name = "Ring-tailed lemur";
  species.scientificName = "Lemur catta";
  (void)store::addSpecies(there, species, kOther);
  EXPECT_TRUE(QTest::qWaitFor([&] { return animalsRead.count() == 1; }, kPatienceMs));
  settle();
  EXPECT_EQ(foodsRead.count(), 0);
  (void)store::addFood(there, plain("kale"), kOther);
  EXPECT_TRUE(QTest::qWaitFor([&] { return foodsRead.count() == 1; }, kPatienceMs));
  settle();
  EXPECT_EQ(animalsRead.count(), 1);
}

TEST_F(LiveTest, NobodyLooksWhileNothingIsWritten) {
  open(database.address());
  int asked = 0;
  QObject::connect(&collection, &OpenCollection::busyChanged, &widget, [&asked] { ++asked; });
  QSignalSpy outdated(&collection, &OpenCollection::outdated);
  QTest::qWait(4000);  // twice what a file on another machine is looked at
  EXPECT_TRUE(collection.isIdle());
  EXPECT_EQ(asked, 0);
  EXPECT_EQ(outdated.count(), 0);
}

TEST_F(LiveTest, AConnectionThatIsLostIsSaidAndTakenUpAgain) {
  open(database.address());
  std::vector<bool> cutOff;
  QObject::connect(&collection, &OpenCollection::cutOffChanged, &widget,
                   [&] { cutOff.push_back(collection.isCutOff()); });
  hangUp();
  EXPECT_TRUE(QTest::qWaitFor([&] { return cutOff == std::vector<bool>{true, false}; }, kPatienceMs));
  store::Collection other = store::Collection::open(database.address(), kOther.at);
  (void)store::addFood(other, plain("kale"), kOther);
  EXPECT_TRUE(QTest::qWaitFor([this] { return foods.foods().size() == 1; }, kPatienceMs));
  EXPECT_EQ(refused, "");
}

TEST_F(LiveTest, WhomNobodyHasLetInIsToldWhoDoesSo) {
  const std::string person = "let_in_by_nobody";
  (void)store::refusedTo(database.address(), "", "DROP ROLE IF EXISTS " + person);
  database.run("CREATE ROLE " + person + " LOGIN PASSWORD 'typed'");
  password = "typed";
  files.open(database.addressOf(person));
  EXPECT_TRUE(QTest::qWaitFor([this] { return !refused.empty(); }, kPatienceMs));
  EXPECT_THAT(refused, HasSubstr("tarebowl server add"));
  EXPECT_THAT(refused, Not(HasSubstr("typed")));
  EXPECT_FALSE(collection.file());
  (void)store::refusedTo(database.address(), "", "DROP ROLE " + person);
}

TEST_F(LiveTest, ThePasswordOfThePersonOpensAndListens) {
  const std::string person = "listens_with_password";
  (void)store::refusedTo(database.address(), "", "DROP ROLE IF EXISTS " + person);
  store::letIn(database.address(), {}, person, "keeper", "kept-nowhere-7");
  password = "kept-nowhere-7";
  open(database.addressOf(person));
  (void)store::addFood(there, plain("kale"), kOther);
  EXPECT_TRUE(QTest::qWaitFor([this] { return foods.foods().size() == 1; }, kPatienceMs));
  EXPECT_THAT(collection.file()->file.string(), Not(HasSubstr("kept-nowhere-7")));
}

}  // namespace
}  // namespace tarebowl::ui
