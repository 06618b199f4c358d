// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A desk that listens to the server is told of another's write without asking.
#include "core/store/server_watch.h"

#include "core/store/opening.h"
#include "core/store/server_setup.h"
#include "tests/core/store/larder.h"

#include <gtest/gtest.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <chrono>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using News = ServerWatch::News;

/// What a watch told, in its order.
class Told {
 public:
  [[nodiscard]] ServerWatch::Tell tell() {
    return [this](News news, int writer) {
      const std::lock_guard lock(mutex_);
      told_.emplace_back(news, writer);
      added_.notify_all();
    };
  }
  /// The next one; nothing where it does not come for long.
  std::optional<std::pair<News, int>> next() {
    std::unique_lock lock(mutex_);
    if (!added_.wait_for(lock, std::chrono::seconds(60), [this] { return !told_.empty(); }))
      return std::nullopt;
    const auto first = told_.front();
    told_.pop_front();
    return first;
  }
  std::optional<News> nextNews() {
    const auto told = next();
    return told ? std::optional(told->first) : std::nullopt;
  }

 private:
  std::mutex mutex_;
  std::condition_variable added_;
  std::deque<std::pair<News, int>> told_;
};

class ServerWatchTest : public testing::Test {
 protected:
  /// Every connection to the collection, as a server does that is stopped.
  void hangUp() const {
    (void)refusedTo(address, "",
                    "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = "
                    "current_database() AND pid <> pg_backend_pid()");
  }

  OwnFolder folder;
  fs::path address = folder.collection("a");
  Collection there = Collection::create(address, kKeeper);
  Told told;
};

TEST_F(ServerWatchTest, AWriteIsToldWithWhoWroteIt) {
  const ServerWatch watch(address, {}, told.tell());
  EXPECT_EQ(told.nextNews(), News::Listening);
  (void)addFood(there, plain("kale"), kKeeper);
  EXPECT_EQ(told.next(), std::pair(News::Written, there.inner().connection.number()));
}

TEST_F(ServerWatchTest, WhatWasRefusedIsNotTold) {
  const ServerWatch watch(address, {}, told.tell());
  EXPECT_EQ(told.nextNews(), News::Listening);
  (void)addFood(there, plain("kale"), kKeeper);
  EXPECT_EQ(codeOf([&] { (void)addFood(there, plain("kale"), kKeeper); }), StoreErrorCode::Refused);
  Collection other = Collection::open(address, kNow);
  (void)addFood(other, plain("fennel"), kKeeper);
  EXPECT_EQ(told.next(), std::pair(News::Written, there.inner().connection.number()));
  EXPECT_EQ(told.next(), std::pair(News::Written, other.inner().connection.number()));
}

TEST_F(ServerWatchTest, AConnectionThatIsLostIsToldAndTakenUpAgain) {
  const ServerWatch watch(address, {}, told.tell());
  EXPECT_EQ(told.nextNews(), News::Listening);
  hangUp();
  EXPECT_EQ(told.nextNews(), News::Lost);
  EXPECT_EQ(told.nextNews(), News::Listening);
  Collection other = Collection::open(address, kNow);
  (void)addFood(other, plain("kale"), kKeeper);
  EXPECT_EQ(told.nextNews(), News::Written);
}

TEST_F(ServerWatchTest, AReaderThatWasLostReadsOnAndTakesAllForTouched) {
  Collection here = Collection::open(address, kNow);
  EXPECT_FALSE(here.changesElsewhere());
  hangUp();
  std::optional<Touched> touched;
  for (int tries = 0; tries < 3000 && !touched; ++tries) {
    touched = here.changesElsewhere();
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  ASSERT_TRUE(touched);
  EXPECT_TRUE(touched->isAll());
  EXPECT_TRUE(listFoods(here).empty());
}

TEST_F(ServerWatchTest, AServerThatLetsNobodyInIsToldAsLost) {
  const ServerWatch watch("postgresql://anna@localhost:1/zoo", {}, told.tell());
  EXPECT_EQ(told.nextNews(), News::Lost);
}

TEST_F(ServerWatchTest, ThePasswordThatOpenedTheCollectionServesTheWatchToo) {
  const std::string person = "watches_with_password";
  (void)refusedTo(address, "", "DROP ROLE IF EXISTS " + person);
  letIn(address, {}, person, "reader", "right one");
  std::string theirs = address.string();
  theirs.replace(theirs.find("owner"), 5, person);
  {
    const ServerWatch watch(
        theirs, [](const fs::path&) { return std::optional<std::string>("right one"); }, told.tell());
    EXPECT_EQ(told.nextNews(), News::Listening);
    (void)addFood(there, plain("kale"), kKeeper);
    EXPECT_EQ(told.nextNews(), News::Written);
  }
  (void)refusedTo(address, "", "DROP ROLE " + person);
}

/// It would wait ten seconds for the answer, and then tell that there is none.
TEST_F(ServerWatchTest, EndsWithoutWaitingForAServerThatSaysNothing) {
  const int silent = ::socket(AF_INET, SOCK_STREAM, 0);
  sockaddr_in here{};
  here.sin_family = AF_INET;
  here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof here;
  ASSERT_EQ(::bind(silent, reinterpret_cast<sockaddr*>(&here), size), 0);
  ASSERT_EQ(::getsockname(silent, reinterpret_cast<sockaddr*>(&here), &size), 0);
  ASSERT_EQ(::listen(silent, 4), 0);
  bool isTold = false;
  {
    const ServerWatch watch("postgresql://anna@127.0.0.1:" + std::to_string(ntohs(here.sin_port)) + "/zoo",
                            {}, [&isTold](News, int) { isTold = true; });
  }
  EXPECT_FALSE(isTold);
  ::close(silent);
}

}  // namespace
}  // namespace tarebowl::store
