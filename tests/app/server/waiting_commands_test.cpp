// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk wrote down while its server was away, by the command line.
#include "tests/app/program.h"
#include "tests/core/store/cut_off_desk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::app {
namespace {

using testing::HasSubstr;

class WaitingCommands : public testing::Test {
 protected:
  [[nodiscard]] Outcome server(std::vector<std::string> words) const {
    words.insert(words.begin(), "server");
    words.insert(words.begin() + 2, kitchen.collection.file().string());
    return tarebowl(words, {}, "XDG_DATA_HOME=" + (kitchen.folder / "data").string());
  }
  /// As the window leaves it behind: a copy with one weight that waits.
  void weighWhileCutOff() {
    namespace fs = std::filesystem;
    const fs::path file =
        store::stationFile(kitchen.folder / "data" / "tarebowl" / "desks", kitchen.collection.file());
    desk.takeCopyOf(kitchen.collection);
    desk.weigh("family", 1, 119.5, 1);
    fs::create_directories(file.parent_path());
    desk.own = store::openStation(kitchen.folder / "other.desk", store::kKeeper);  // closes the first one
    fs::rename(desk.file, file);
  }

  store::Kitchen kitchen;
  store::CutOffDesk desk{kitchen.folder, "bench"};
};

TEST_F(WaitingCommands, ADeskThatNeverWasCutOffHasNothingThatWaits) {
  EXPECT_THAT(server({"waiting"}).out, HasSubstr("nothing waits"));
  EXPECT_THAT(server({"send"}).out, HasSubstr("nothing waits"));
}

TEST_F(WaitingCommands, WhatWaitsIsListedAndSentOnce) {
  weighWhileCutOff();
  const Outcome listed = server({"waiting"});
  EXPECT_EQ(listed.status, 0) << listed.err;
  EXPECT_THAT(listed.out, HasSubstr("Family, morning"));
  EXPECT_THAT(listed.out, HasSubstr("119.5 g"));
  const Outcome sent = server({"send"});
  EXPECT_EQ(sent.status, 0) << sent.err;
  EXPECT_THAT(sent.out, HasSubstr("1 entry sent"));
  EXPECT_THAT(server({"send"}).out, HasSubstr("0 entries sent"));
  EXPECT_THAT(server({"waiting"}).out, HasSubstr("nothing waits for the server"));
  const intake::Bowl bowl = kitchen.bowl("family");
  ASSERT_EQ(bowl.items.at(0).weighings.size(), 1U);
  EXPECT_EQ(bowl.items.at(0).weighings.at(0).by.who, "bench");
}

TEST_F(WaitingCommands, AConflictIsSettledByItsNumber) {
  weighWhileCutOff();
  kitchen.weigh(kitchen.item("family", 1), 125);
  EXPECT_THAT(server({"send"}).out, HasSubstr("need a choice"));
  EXPECT_THAT(server({"waiting"}).out, HasSubstr("125 g, Keeper A"));
  EXPECT_EQ(server({"settle", "9", "mine"}).status, 2);
  const Outcome settled = server({"settle", "1", "mine", "--reason", "weighed twice"});
  EXPECT_EQ(settled.status, 0) << settled.err;
  const intake::Bowl bowl = kitchen.bowl("family");
  EXPECT_EQ(intake::entryThatCounts(bowl.items.at(0).weighings)->actual, quantity::Grams(119.5));
  EXPECT_EQ(bowl.items.at(0).weighings.at(1).correction, "weighed twice");
}

}  // namespace
}  // namespace tarebowl::app
