// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Two clocks that disagree: it is said, and nothing is written at a wrong time.
#include "core/store/server_clock.h"
#include "tests/core/store/own_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using namespace std::chrono_literals;
using testing::HasSubstr;

std::function<Instant()> clockThatIsAhead(std::chrono::seconds by) {
  return [by] { return std::chrono::system_clock::now() + by; };
}

class ServerClock : public testing::Test {
 protected:
  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("a"), kKeeper);
};

TEST_F(ServerClock, TellsHowFarThisMachinesIsAhead) {
  for (const auto by : {0s, 3600s, -86400s}) {
    const auto told = aheadOfServer(collection, clockThatIsAhead(by));
    EXPECT_LE(std::chrono::abs(told - by), 1s) << by.count();
  }
}

TEST_F(ServerClock, AMinuteIsNoMatter) {
  EXPECT_NO_THROW(refuseOtherTime(collection, clockThatIsAhead(60s)));
  EXPECT_NO_THROW(refuseOtherTime(collection, clockThatIsAhead(-60s)));
}

TEST_F(ServerClock, AQuarterOfAnHourIsSaidWithWhatToDo) {
  const auto ahead = errorOf([&] { refuseOtherTime(collection, clockThatIsAhead(15min)); });
  ASSERT_TRUE(ahead);
  EXPECT_EQ(ahead->code(), StoreErrorCode::Refused);
  EXPECT_THAT(ahead->what(),
              testing::AllOf(HasSubstr("15 min ahead of the server"), HasSubstr("set the clock")));
  const auto behind = errorOf([&] { refuseOtherTime(collection, clockThatIsAhead(-15min)); });
  ASSERT_TRUE(behind);
  EXPECT_THAT(behind->what(), HasSubstr("15 min behind the server"));
}

TEST(ClockOfAFile, IsThisMachines) {
  const OwnFolder folder;
  const Collection file = Collection::create(folder / "a.tarebowl", kKeeper);
  EXPECT_EQ(aheadOfServer(file, clockThatIsAhead(3600s)), 0s);
}

}  // namespace
}  // namespace tarebowl::store
