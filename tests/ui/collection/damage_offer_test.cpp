// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/damage_offer.h"

#include "core/store/backup.h"
#include "core/store/food_reading.h"
#include "ui/collection/collection_files.h"

#include <QTemporaryDir>
#include <QTest>
#include <QWidget>

#include <gtest/gtest.h>

#include <fstream>

namespace tarebowl::ui {
namespace {

namespace fs = std::filesystem;

const store::Author kKeeper{"Keeper A", "2026-11-25T07:30:00Z"};

/// A collection of 400 foods with a backup, of which one page was written over; the dialogs answer what the
/// test told them.
class DamageOfferTest : public ::testing::Test {
 protected:
  void SetUp() override {
    {
      store::Collection made = store::Collection::create(file, kKeeper);
      for (int i = 0; i < 400; ++i) {
        const std::string code = "food-" + std::to_string(i);
        store::addFood(made, {.food = {.code = code, .name = code}}, kKeeper);
      }
    }
    backup = store::makeBackup(file, kKeeper.at, "daily");
    std::fstream bytes(file, std::ios::in | std::ios::out | std::ios::binary);
    bytes.seekp(4096 * 20);
    bytes << std::string(std::size_t{4096} * 20, '\xff');
  }
  /// So that it is looked through as it is opened.
  void leaveALog() { std::ofstream(file.string() + "-wal") << "left by a program that was killed"; }
  Dialogs dialogs() {
    Dialogs made;
    made.collectionToCreate = [this](QWidget*, const fs::path&) { return std::optional(fresh); };
    made.damagedCollection = [this](QWidget*, const QString& why, const QString& backupOf) {
      ++asked;
      EXPECT_TRUE(why.contains(QStringLiteral("is damaged"))) << why.toStdString();
      EXPECT_TRUE(backupOf.startsWith(QStringLiteral("25 Nov 2026"))) << backupOf.toStdString();
      return answer;
    };
    made.tell = [this](QWidget*, const QString&, const QString& text) { told = text; };
    return made;
  }
  void open() { CollectionFiles(collection, dialogs(), &window).open(file); }
  std::size_t foodsIn(const fs::path& in) {
    return store::countFoods(
        store::Collection::open(in, kKeeper.at, {.check = store::OpenOptions::Check::Always}));
  }

  QTemporaryDir folder;
  const fs::path file = fs::path(folder.path().toStdString()) / "a.tarebowl";
  const fs::path fresh = fs::path(folder.path().toStdString()) / "fresh.tarebowl";
  fs::path backup;
  DamageAnswer answer = DamageAnswer::Leave;
  int asked = 0;
  QString told;
  QWidget window;
  OpenCollection collection;
  DamageOffer offer{collection, dialogs(), &window};
};

TEST_F(DamageOfferTest, LeavesItAloneWhereThePersonWouldRather) {
  leaveALog();
  open();
  ASSERT_TRUE(QTest::qWaitFor([this] { return asked > 0; }));
  EXPECT_FALSE(collection.file());
  EXPECT_FALSE(fs::exists(fresh));
}

TEST_F(DamageOfferTest, PutsTheBackupInItsPlace) {
  answer = DamageAnswer::RestoreBackup;
  leaveALog();
  open();
  ASSERT_TRUE(QTest::qWaitFor([this] { return asked > 0 && collection.file() && collection.isIdle(); }));
  EXPECT_EQ(asked, 1);
  EXPECT_EQ(collection.file()->file, file);
  EXPECT_EQ(foodsIn(file), 400U);
}

TEST_F(DamageOfferTest, SalvagesIntoANewFileAndSaysWhatIsMissing) {
  answer = DamageAnswer::Salvage;
  leaveALog();
  open();
  ASSERT_TRUE(QTest::qWaitFor([this] { return !told.isEmpty(); }));
  EXPECT_EQ(asked, 1);
  EXPECT_EQ(collection.file()->file, fresh);
  EXPECT_TRUE(told.contains(QStringLiteral("could not be read"))) << told.toStdString();
  EXPECT_TRUE(fs::exists(file));
  (void)foodsIn(fresh);  // sound
}

/// As rooms do: what they show is read again whenever it may be old.
TEST_F(DamageOfferTest, WhereDamageIsMetLaterTheCollectionIsClosedAndItIsOfferedOnce) {
  int readings = 0;
  const auto read = [this, &readings] {
    ++readings;
    collection.ask([](store::Collection& opened) { return store::listFoods(opened).size(); },
                   [](std::size_t /*foods*/) {});
  };
  QObject::connect(&collection, &OpenCollection::outdated, &window, read);
  open();
  read();
  ASSERT_TRUE(QTest::qWaitFor([this] { return asked > 0 && collection.isIdle(); }));
  QTest::qWait(50);
  EXPECT_EQ(asked, 1);
  EXPECT_FALSE(collection.file());
  EXPECT_EQ(readings, 1);
}

/// A disk that fails, say: reading again at once would fail again.
TEST_F(DamageOfferTest, WhatCannotBeReadIsReadAgainOnceAndNotForEver) {
  fs::copy_file(backup, file, fs::copy_options::overwrite_existing);
  int readings = 0;
  const auto read = [this, &readings] {
    ++readings;
    collection.ask(
        [this](store::Collection& /*opened*/) -> int {
          throw store::StoreError(store::StoreErrorCode::DiskError, file, "cannot be read");
        },
        [](int /*nothing*/) {});
  };
  QObject::connect(&collection, &OpenCollection::outdated, &window, read);
  open();
  read();
  constexpr int kPatienceMs = 30'000;
  ASSERT_TRUE(QTest::qWaitFor([&] { return readings == 2 && collection.isIdle(); }, kPatienceMs));
  QTest::qWait(100);  // in which a third would come
  EXPECT_EQ(readings, 2);
  EXPECT_EQ(asked, 0);
}

}  // namespace
}  // namespace tarebowl::ui
