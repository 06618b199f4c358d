// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Two desks and the server's own, with lost answers, restarts and copies taken anew, in any order that a seed
// says: at the end each entry is there once, or a person has set it aside.
#include "core/store/station_outbox.h"
#include "tests/core/store/cut_off_desk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <random>

namespace tarebowl::store {
namespace {

struct Line {
  const char* group;
  int item;
};
constexpr std::array<Line, 3> kLines{{{"family", 1}, {"family", 2}, {"pair", 1}}};

class ManyFaults {
 public:
  explicit ManyFaults(unsigned seed) : chance_(seed) {
    for (CutOffDesk* desk : {&bench_, &window_}) desk->takeCopyOf(shared());
  }

  void work(int steps) {
    for (int step = 0; step < steps; ++step) {
      CutOffDesk& desk = oneIn(2) ? bench_ : window_;
      switch (upTo(7)) {
        case 0:
          loseAnswer(desk);
          break;
        case 1:
          desk.startAgain();
          break;
        case 2:
          desk.send(shared());
          break;
        case 3:
          desk.takeCopyOf(shared(), "2026-11-25", oneIn(2) ? CopyExtent::All : CopyExtent::Kitchen);
          break;
        case 4:
          chooseOne(desk);
          break;
        case 5:
          writeOnServer();
          break;
        default:
          write(desk);
      }
    }
  }

  void comeToAnEnd() {
    for (CutOffDesk* desk : {&bench_, &window_}) {
      desk->send(shared());
      while (countWaiting(desk->own).conflicts > 0) chooseOne(*desk);
      EXPECT_EQ(countWaiting(desk->own), WaitingCount{});
    }
  }

  /// Each second of the day is one entry's: how often it stands on the server, and how often it was set
  /// aside.
  void expectEachOnce() const {
    std::map<std::string, int> found;
    for (const Line& line : kLines) {
      const intake::Bowl bowl = kitchen_.bowl(line.group);
      for (const intake::Weighing& weighing :
           bowl.items.at(static_cast<std::size_t>(line.item) - 1).weighings)
        ++found[weighing.by.at];
    }
    for (const CutOffDesk* desk : {&bench_, &window_})
      for (const WaitingEntry& entry : entriesOf(desk->own))
        if (entry.state == EntryState::SetAside) ++found[entry.entry->author.at];
    EXPECT_THAT(found, testing::SizeIs(static_cast<std::size_t>(written_)));
    for (const auto& [at, times] : found) EXPECT_EQ(times, 1) << at;
  }

  /// Whoever wrote a line's entries, those of one desk stand in the order in which it sent them.
  void expectOrderOfEachDesk() const {
    for (const CutOffDesk* desk : {&bench_, &window_}) {
      std::int64_t before = 0;
      for (const WaitingEntry& entry : entriesOf(desk->own)) {
        EXPECT_GT(entry.number, before);
        before = entry.number;
      }
    }
  }

 private:
  [[nodiscard]] Collection& shared() { return kitchen_.collection; }
  [[nodiscard]] int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(chance_); }
  [[nodiscard]] bool oneIn(int times) { return upTo(times - 1) == 0; }
  [[nodiscard]] const Line& someLine() { return kLines.at(static_cast<std::size_t>(upTo(2))); }
  [[nodiscard]] double someGrams() { return 20 + upTo(3); }

  void write(CutOffDesk& desk) {
    const Line& line = someLine();
    const bool isWeighed = valueThatCounts(desk.bowl(line.group), line.item, Noted::Weight).has_value();
    const int second = ++written_;
    if (isWeighed)
      desk.correct(line.group, line.item, someGrams(), second);
    else
      desk.weigh(line.group, line.item, someGrams(), second);
  }

  void writeOnServer() {
    const Line& line = someLine();
    const Author author{"server's desk",
                        fmt::format("2026-11-25T08:{:02}:{:02}Z", written_ / 60, written_ % 60)};
    ++written_;
    const WeightRead weight{kitchen_.item(line.group, line.item), quantity::Grams(someGrams())};
    if (valueThatCounts(kitchen_.bowl(line.group), line.item, Noted::Weight))
      correctWeight(shared(), weight, "put right", author);
    else
      (void)weighIn(shared(), {&weight, 1}, author);
  }

  /// The server writes the first that waits, and the desk never hears of it.
  void loseAnswer(CutOffDesk& desk) {
    for (const WaitingEntry& entry : entriesOf(desk.own)) {
      if (entry.state != EntryState::Waiting) continue;
      (void)deliver(shared(), entry.entry.value(), desk.name);
      return;
    }
  }

  void chooseOne(CutOffDesk& desk) {
    for (const WaitingEntry& entry : entriesOf(desk.own)) {
      if (entry.state != EntryState::Conflict) continue;
      settle(desk.own, shared(), desk.name, entry.number, oneIn(2) ? Choice::Mine : Choice::Theirs,
             "weighed while cut off", kKeeper);
      return;
    }
  }

  std::mt19937 chance_;
  Kitchen kitchen_;
  CutOffDesk bench_{kitchen_.folder, "bench"};
  CutOffDesk window_{kitchen_.folder, "window"};
  int written_ = 0;
};

class StationFaults : public testing::TestWithParam<unsigned> {};

TEST_P(StationFaults, EachEntryIsThereOnceOrSetAsideByAPerson) {
  for (unsigned seed = GetParam() * 10; seed < GetParam() * 10 + 10; ++seed) {
    SCOPED_TRACE(seed);
    ManyFaults faults(seed);
    faults.work(30);
    faults.comeToAnEnd();
    faults.expectEachOnce();
    faults.expectOrderOfEachDesk();
  }
}

INSTANTIATE_TEST_SUITE_P(TenSeeds, StationFaults, testing::Range(0U, 5U));

}  // namespace
}  // namespace tarebowl::store
