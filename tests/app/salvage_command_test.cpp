// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>

namespace tarebowl::app {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

constexpr int kFoods = 400;
const store::Author kKeeper{"Keeper A", "2026-11-25T07:30:00Z"};

/// 400 foods; `pages` of the file from the 40th on are written over.
fs::path damaged(int pages) {
  const fs::path file = fileWith("damaged.tarebowl", "");
  fs::remove(file);
  {
    store::Collection made = store::Collection::create(file, kKeeper);
    for (int i = 0; i < kFoods; ++i) {
      const std::string code = "food-" + std::to_string(i);
      store::addFood(made, {.food = {.code = code, .name = code}}, kKeeper);
    }
  }
  std::fstream bytes(file, std::ios::in | std::ios::out | std::ios::binary);
  bytes.seekp(std::streamoff{4096} * 40);
  bytes << std::string(std::size_t{4096} * static_cast<std::size_t>(pages), '\xff');
  return file;
}

fs::path freshBeside(const fs::path& file) {
  fs::path fresh = file;
  fs::remove(fresh.replace_filename("fresh.tarebowl"));
  return fresh;
}

TEST(SalvageCommand, TellsTableByTableWhatWasSavedAndWhatWasNot) {
  const fs::path file = damaged(60);
  const fs::path fresh = freshBeside(file);
  const Outcome outcome = tarebowl({"salvage", file.string(), fresh.string(), "--json"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const auto json = nlohmann::json::parse(outcome.out);
  EXPECT_EQ(json.at("format"), "tarebowl-salvage/1");
  EXPECT_EQ(json.at("nothing_lost"), false);
  std::size_t foods = 0;
  for (const auto& table : json.at("tables"))
    if (table.at("table") == "food") foods = table.at("saved");
  EXPECT_EQ(foods, store::countFoods(store::Collection::open(fresh, kKeeper.at)));
}

TEST(SalvageCommand, OfASoundCollectionEverythingIsThere) {
  const fs::path file = damaged(0);
  const fs::path fresh = freshBeside(file);
  const Outcome outcome = tarebowl({"salvage", file.string(), fresh.string(), "--table"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("Nothing is missing"));
  EXPECT_EQ(store::countFoods(store::Collection::open(fresh, kKeeper.at)), 400U);
}

TEST(SalvageCommand, NeverWritesOverAFileAndRefusesWhatIsNoCollection) {
  const fs::path file = damaged(0);
  EXPECT_THAT(tarebowl({"salvage", file.string(), file.string()}).err, HasSubstr("is there already"));
  const fs::path chores = fileWith("chores.tarebowl", std::string(9000, 'x'));
  const fs::path fresh = freshBeside(file);
  const Outcome outcome = tarebowl({"salvage", chores.string(), fresh.string()});
  EXPECT_NE(outcome.status, 0);
  EXPECT_THAT(outcome.err, HasSubstr("nothing of a collection can be found"));
  EXPECT_FALSE(fs::exists(fresh));
}

}  // namespace
}  // namespace tarebowl::app
