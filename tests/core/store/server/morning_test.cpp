// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A morning in which many desks of the kitchen write down what they weigh and what comes back, while the
// server dies and the network goes again and again: what a desk was told is written is on the server once, as
// it was written. In short by itself; as long as wanted by hand (DEVELOPERS.md, "Faults").
#include "core/store/feeding_reading.h"
#include "tests/core/store/cut_off_desk.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/server/own_server.h"
#include "tests/core/store/server/slow_way.h"
#include "tests/faults/how_often.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <iostream>
#include <map>
#include <random>
#include <thread>

namespace tarebowl::store {
namespace {

using faults::howOften;
using quantity::Grams;
using namespace std::chrono_literals;

constexpr int kFoods = 9;
constexpr int kEveryMisread = 5;  // of the foods of a bowl
constexpr int kDeskPauseMs = 15;  // at the most, between two entries

std::string sectionOf(int desk) {
  return fmt::format("Section {:02}", desk);
}
std::string groupOf(int desk, int bowl) {
  return fmt::format("group-{:02}-{:02}", desk, bowl);
}
std::string foodOf(int item) {
  return fmt::format("food-{}", item);
}

intake::Bowl bowlOf(int desk, int number) {
  intake::Bowl bowl{
      .key = {groupOf(desk, number), day("2026-11-25"), 1}, .label = groupOf(desk, number), .animals = 5};
  for (int item = 1; item <= kFoods; ++item)
    bowl.items.push_back({.item = item, .food = foodOf(item), .planned = Grams(20 * item)});
  return bowl;
}

/// One entry as it must stand on the server: where, what, when, by whom, and how much.
using Line = std::string;
using Lines = std::map<Line, int>;  // and how often it stands there

Line lineOf(const intake::BowlKey& bowl, int item, const char* what, const intake::Signed& by, Grams grams) {
  return fmt::format("{} {} {} {} {} {:.1f} g", bowl.group, item, what, by.who, by.at, grams.value());
}

Lines linesOnServer(const std::filesystem::path& address, int desks, int bowls) {
  const Collection there = Collection::open(address, kNow);
  Lines lines;
  for (int desk = 0; desk < desks; ++desk)
    for (int number = 0; number < bowls; ++number)
      for (const intake::Bowl& bowl :
           bowlsOfGroup(there, groupOf(desk, number), day("2026-11-25"), day("2026-11-25")))
        for (const intake::BowlItem& item : bowl.items) {
          for (const auto& weighing : item.weighings)
            ++lines[lineOf(bowl.key, item.item, "in", weighing.by, weighing.actual)];
          for (const auto& left : item.leftovers)
            ++lines[lineOf(bowl.key, item.item, "left", left.by, left.left.value_or(Grams(-1)))];
        }
  return lines;
}

/// One desk, on a thread of its own: as the program does, it writes to the server while that answers, and
/// into its own file until all that waits there was sent.
class BusyDesk {
 public:
  BusyDesk(const OwnFolder& folder, const std::string& name, int number, int bowls,
           std::filesystem::path server)
      : number_(number),
        bowls_(bowls),
        chance_(static_cast<unsigned>(number)),
        server_(std::move(server)),
        desk_(folder, name) {}

  void takeCopyOf(Collection& shared) { desk_.takeCopyOf(shared); }

  void work() {
    for (int number = 0; number < bowls_; ++number)
      for (const Noted noted : {Noted::Weight, Noted::Leftover})
        for (int item = 1; item <= kFoods; ++item) {
          write(number, item, noted, false);
          if (noted == Noted::Weight && item % kEveryMisread == 1) write(number, item, noted, true);
        }
    while (countWaiting(desk_.own).waiting > 0) {
      send();
      std::this_thread::sleep_for(5ms);
    }
  }
  /// What it was told is written.
  [[nodiscard]] const std::vector<Line>& acknowledged() const { return acknowledged_; }
  [[nodiscard]] int keptForLater() const { return kept_; }
  [[nodiscard]] std::size_t conflicts() const { return countWaiting(desk_.own).conflicts; }

 private:
  void write(int number, int item, Noted noted, bool isCorrection) {
    std::this_thread::sleep_for(
        std::chrono::milliseconds(std::uniform_int_distribution<int>(0, kDeskPauseMs)(chance_)));
    if (countWaiting(desk_.own).waiting > 0) send();
    const KitchenEntry made = entry(number, item, noted, isCorrection);
    if (countWaiting(desk_.own).waiting > 0 || !reached([&] { (void)writeDown(*open_, made); })) {
      (void)keepForLater(desk_.own, made);
      ++kept_;
    } else {
      (void)writeDown(desk_.own, made);  // its copy follows
    }
    acknowledged_.push_back(lineOf(made.bowl.key, item, noted == Noted::Weight ? "in" : "left",
                                   {made.author.who, made.author.at}, *made.value.grams));
  }

  KitchenEntry entry(int number, int item, Noted noted, bool isCorrection) {
    KitchenEntry made{.id = ++desk_.lastId,
                      .section = sectionOf(number_),
                      .bowl = bowlOf(number_, number),
                      .noted = noted,
                      .item = item,
                      .value = {.grams = Grams(item + 0.1 * ++written_)},
                      .author = {desk_.name, fmt::format("2026-11-25T{:02}:{:02}:{:02}Z", 6 + written_ / 3600,
                                                         written_ / 60 % 60, written_ % 60)}};
    if (noted == Noted::Leftover) made.value.kind = intake::LeftoverKind::Weighed;
    if (isCorrection) made.reason = "misread";
    if (const auto there = findBowl(desk_.own, made.bowl.key))
      if (const auto seen = valueThatCounts(*there, item, noted)) made.seen = seen->value;
    for (int beside = 0; beside < bowls_; ++beside)
      if (beside != number && written_ == 1) made.beside.push_back(bowlOf(number_, beside));
    return made;
  }

  void send() {
    (void)reached([&] { sendWaiting(desk_.own, *open_, desk_.name); });
  }

  /// Whether the server answered to the end; who it was that did not hear of it is asked anew next time.
  template <class Work>
  bool reached(const Work& work) {
    try {
      if (!open_) open_.emplace(Collection::open(server_, kNow));
      work();
      return true;
    } catch (const StoreError& error) {
      if (error.code() != StoreErrorCode::NoServer) throw;
      open_.reset();
      return false;
    }
  }

  int number_;
  int bowls_;
  std::mt19937 chance_;
  std::filesystem::path server_;
  CutOffDesk desk_;
  std::optional<Collection> open_;
  int written_ = 0;
  int kept_ = 0;
  std::vector<Line> acknowledged_;
};

class Morning : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_TRUE(server.runs());
    ASSERT_EQ(refusedTo(server.address(), "", "CREATE DATABASE morning TEMPLATE template0"), "");
    Collection made = Collection::create(server.address("morning"), kKeeper);
    addSpecies(made, lemurSpecies(), kKeeper);
    for (int item = 1; item <= kFoods; ++item) addFood(made, plain(foodOf(item)), kKeeper);
    for (int desk = 0; desk < desks; ++desk)
      for (int bowl = 0; bowl < bowls; ++bowl) {
        animal::Group group = lemurGroup(groupOf(desk, bowl));
        group.section = sectionOf(desk);
        addGroup(made, group, kKeeper);
      }
  }

  void spoil(std::mt19937& chance, SlowWay& way) {
    const auto between = [&](int least, int most) {
      return std::chrono::milliseconds(std::uniform_int_distribution<int>(least, most)(chance));
    };
    while (!isOver) {
      std::this_thread::sleep_for(between(quietMs / 2, 2 * quietMs));
      if (cuts <= deaths) {
        way.breakOff();
        std::this_thread::sleep_for(between(20, 600));
        way.mend();
        ++cuts;
      } else {
        server.dieAndComeBack();
        ++deaths;
      }
    }
  }

  const int desks = howOften("TAREBOWL_DESKS", 4);
  const int bowls = howOften("TAREBOWL_BOWLS_OF_DESK", 3);
  const int quietMs = howOften("TAREBOWL_QUIET_MS", 400);  ///< between one harm and the next, about
  OwnFolder folder;
  OwnServer server{folder / "", {}};
  std::atomic<bool> isOver{false};
  int cuts = 0;
  int deaths = 0;
};

TEST_F(Morning, OfDesksWhoseServerDiesAndWhoseNetworkGoesHasEachEntryOnce) {
  for (int morning = 0; morning < howOften("TAREBOWL_MORNINGS", 1); ++morning) {
    SCOPED_TRACE(morning);
    isOver = false;
    const auto copied = fmt::format("morning_{}", morning);
    ASSERT_EQ(refusedTo(server.address(), "", fmt::format("CREATE DATABASE {} TEMPLATE morning", copied)),
              "");
    SlowWay way(server.address(copied), 0ms);
    std::vector<std::unique_ptr<BusyDesk>> all;
    {
      Collection shared = Collection::open(server.address(copied), kNow);
      for (int desk = 0; desk < desks; ++desk) {
        all.push_back(std::make_unique<BusyDesk>(folder, fmt::format("{} desk {}", copied, desk), desk, bowls,
                                                 way.address()));
        all.back()->takeCopyOf(shared);
      }
    }
    std::mt19937 chance(static_cast<unsigned>(morning));
    std::thread harm([&] { spoil(chance, way); });
    std::vector<std::thread> threads;
    threads.reserve(all.size());
    for (const auto& desk : all) threads.emplace_back([&desk] { desk->work(); });
    for (std::thread& thread : threads) thread.join();
    isOver = true;
    harm.join();
    Lines wanted;
    int kept = 0;
    for (const auto& desk : all) {
      for (const Line& line : desk->acknowledged()) ++wanted[line];
      kept += desk->keptForLater();
      EXPECT_EQ(desk->conflicts(), 0U);
    }
    EXPECT_EQ(linesOnServer(server.address(copied), desks, bowls), wanted);
    std::cout << fmt::format("morning {}: {} entries of {} desks, {} of them kept for later\n", morning,
                             wanted.size(), desks, kept);
    ASSERT_EQ(refusedTo(server.address(), "", fmt::format("DROP DATABASE {} WITH (FORCE)", copied)), "");
  }
  std::cout << fmt::format("the network went {} times, the server died {} times\n", cuts, deaths);
}

}  // namespace
}  // namespace tarebowl::store
