// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The server's disk is full: what was written before is there, and it goes on once there is room again.
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/own_database.h"
#include "tests/core/store/own_folder.h"
#include "tests/core/store/server/own_server.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::HasSubstr;

TEST(ServerOnAFullDisk, SaysSoKeepsWhatWasWrittenAndGoesOnOnceThereIsRoom) {
  const OwnFolder folder;
  const OwnServer server(folder / "", {.smallDisk = "32m"});
  if (!server.runs()) GTEST_SKIP() << "no disk in memory can be made here (unshare, mount)";
  ASSERT_EQ(refusedTo(server.address(), "", "CREATE DATABASE zoo TEMPLATE template0 TABLESPACE small_disk"),
            "");
  const auto address = server.address("zoo");
  Collection collection = Collection::create(address, kKeeper);
  (void)addFood(collection, plain("kale"), kKeeper);

  // Somebody else's data fills the disk to its end.
  ASSERT_EQ(refusedTo(address, "",
                      "CREATE TABLE ballast (filler TEXT); ALTER TABLE ballast ALTER filler SET STORAGE "
                      "PLAIN"),
            "");
  for (const int rows : {1000, 100, 10, 1})
    while (refusedTo(address, "",
                     fmt::format("INSERT INTO ballast SELECT repeat('x', 7000) FROM generate_series(1, "
                                 "{})",
                                 rows))
               .empty())
      continue;

  std::optional<StoreError> error;
  std::size_t written = 1;
  for (int i = 0; i < 100 && !error; ++i) {
    FoodRecord next = plain(fmt::format("food-{}", i));
    for (int word = 0; word < 2000; ++word) next.food.note += std::to_string(word * 7919 * (i + 1));
    error = errorOf([&] { (void)addFood(collection, next, kKeeper); });
    if (!error) ++written;
  }
  ASSERT_TRUE(error) << "the disk was never full";
  EXPECT_EQ(error->code(), StoreErrorCode::DiskFull) << error->what();
  EXPECT_THAT(error->what(), HasSubstr("the server's disk is full; nothing was written"));
  EXPECT_EQ(countFoods(collection), written) << "what could not be written is not there by half";

  ASSERT_EQ(refusedTo(address, "", "DROP TABLE ballast"), "");
  (void)addFood(collection, plain("endive"), kKeeper);
  EXPECT_EQ(countFoods(Collection::open(address, kNow)), written + 1);
}

}  // namespace
}  // namespace tarebowl::store
