// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is read together takes a few ways there and back, and reads as it does one by one.
#include "core/store/reading.h"

#include "core/store/larder_reading.h"
#include "core/store/opening.h"
#include "core/store/row_query.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/other_desk.h"
#include "tests/core/store/own_database.h"
#include "tests/core/store/server/slow_way.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <vector>

namespace tarebowl::store {
namespace {

using testing::ElementsAre;
using namespace std::chrono_literals;

class ReadTogether : public testing::Test {
 protected:
  static std::filesystem::path filled(const std::filesystem::path& address) {
    Collection made = Collection::create(address, kKeeper);
    for (int i = 0; i < 10; ++i) {
      const Written food = addFood(made, plain(fmt::format("food-{}", i)), kKeeper);
      (void)addSample(made, FoodId{food.id}, analysis(fmt::format("lab {}", i), "2026-10-01", 40.0 + i),
                      kKeeper);
    }
    return address;
  }
  int tripsOf(const std::function<void()>& work) {
    const int before = way.roundTrips();
    work();
    return way.roundTrips() - before;
  }
  /// Of some tries: where another test writes in between, what is remembered takes one more to be looked at.
  int fewestTripsOf(const std::function<void()>& work) {
    int fewest = tripsOf(work);
    for (int i = 0; i < 20 && fewest > 1; ++i) fewest = std::min(fewest, tripsOf(work));
    return fewest;
  }
  static long long numberOf(Collection& collection, const std::string& query) {
    return guarded(collection.file(), [&] {
      long long number = -1;
      RowQuery rows(collection.inner().connection, query);
      (void)rows.next(number);
      return number;
    });
  }

  OwnFolder folder;
  std::filesystem::path address = filled(folder.collection("a"));
  SlowWay way{address, 5ms};
  Collection far = Collection::open(way.address(), kNow);
};

/// One food after another.
std::vector<KnownFood> everyFood(const Collection& collection) {
  std::vector<KnownFood> foods;
  const auto lines = listFoods(collection);
  for (const food::FoodLine& line : lines)
    askAhead(collection, [&] { return knowFood(collection, FoodId{line.id}); });
  for (const food::FoodLine& line : lines)
    if (auto known = knowFood(collection, FoodId{line.id})) foods.push_back(std::move(*known));
  return foods;
}

TEST_F(ReadTogether, WhatIsAskedAheadIsFetchedWithWhatIsAskedFirst) {
  const auto twoNumbers = [](Collection& c) {
    const auto samples = [&] { return numberOf(c, "SELECT COUNT(*) FROM sample"); };
    askAhead(c, samples);
    const long long foods = numberOf(c, "SELECT COUNT(*) FROM food");
    return std::pair(foods, samples());
  };
  EXPECT_EQ(tripsOf([&] { EXPECT_EQ(readTogether(far, twoNumbers), std::pair(10LL, 10LL)); }), 1);
}

TEST_F(ReadTogether, NothingIsDoneWithRowsThatAreNotThereYet) {
  (void)readTogether(far, [](Collection& c) {
    const auto foods = listFoods(c);
    EXPECT_EQ(foods.size(), 10U);
    return foods.at(9).id;
  });
}

TEST_F(ReadTogether, TenFoodsTakeNoMoreWaysThanOne) {
  std::vector<KnownFood> foods;
  const int trips = tripsOf([&] { foods = readTogether(far, [](Collection& c) { return everyFood(c); }); });
  EXPECT_LE(trips, 3);
  const auto oneByOne = everyFood(far);
  ASSERT_EQ(foods.size(), oneByOne.size());
  for (std::size_t i = 0; i < foods.size(); ++i) {
    EXPECT_EQ(foods[i].food.record, oneByOne[i].food.record);
    EXPECT_EQ(foods[i].composition, oneByOne[i].composition);
    EXPECT_EQ(foods[i].samples.size(), 1U);
  }
}

/// As an intake does of the foods of its bowls, stretch after stretch.
std::vector<std::optional<diet::DietFood>> expectedFoods(const Collection& collection) {
  NamedFoodReader reader(collection, {food::nutrients::calcium()}, ValueSources::Kept);
  std::vector<std::optional<diet::DietFood>> foods;
  for (const std::vector<std::string>& codes :
       {std::vector<std::string>{"food-3", "food-1", "food-2", "no-such-food", "without-sample"},
        std::vector<std::string>{"food-2", "food-4"}}) {
    reader.expect(codes);
    for (const std::string& code : codes) foods.push_back(reader.find(code));
  }
  return foods;
}

TEST_F(ReadTogether, FoodsThatAreExpectedAreAskedTogetherAndAreAsEachByItself) {
  (void)addFood(far, plain("without-sample"), kKeeper);
  std::vector<std::optional<diet::DietFood>> foods;
  const int trips =
      tripsOf([&] { foods = readTogether(far, [](Collection& c) { return expectedFoods(c); }); });
  EXPECT_LE(trips, 4);
  ASSERT_EQ(foods, expectedFoods(far));  // not within a reading: one by one
  ASSERT_EQ(foods.size(), 7U);
  EXPECT_EQ(foods[0]->id, "food-3");
  EXPECT_FALSE(foods[3]);
  EXPECT_EQ(foods[4]->id, "without-sample");
  EXPECT_EQ(foods[5], foods[2]);
}

TEST_F(ReadTogether, AllOfItIsOfOneMoment) {
  Collection near = Collection::open(address, kNow);
  bool isWritten = false;
  const auto counts = readTogether(far, [&](Collection& c) {
    const long long first = numberOf(c, "SELECT COUNT(*) FROM food");
    if (!std::exchange(isWritten, true)) (void)addFood(near, plain("late"), kKeeper);
    return std::pair(first, numberOf(c, "SELECT COUNT(*) FROM food WHERE id > 0"));
  });
  EXPECT_EQ(counts, std::pair(10LL, 10LL));
  EXPECT_EQ(readTogether(far, [](Collection& c) { return numberOf(c, "SELECT COUNT(*) FROM food"); }), 11);
}

TEST_F(ReadTogether, OneQuestionThatTheServerRefusesDoesNotSpoilTheOthers) {
  const auto ten = readTogether(far, [](Collection& c) {
    askAhead(c, [&] { return numberOf(c, "SELECT 1 / (COUNT(*) - 10) FROM food"); });
    return numberOf(c, "SELECT COUNT(*) FROM food");
  });
  EXPECT_EQ(ten, 10);
}

/// The first answers are read while the one that is refused is still under way.
TEST_F(ReadTogether, WhatIsRefusedAfterTheFirstAnswersWereReadIsAskedAgainFromTheFirst) {
  int firsts = 0;
  const auto sum = readTogether(far, [&](Collection& c) {
    const auto samples = [&] { return numberOf(c, "SELECT COUNT(*) FROM sample"); };
    askAhead(
        c, [&] { return numberOf(c, "SELECT COUNT(*) FROM food"); },
        [&] { return numberOf(c, "SELECT 1 / (COUNT(*) - 10) FROM food"); }, samples);
    const long long foods = numberOf(c, "SELECT COUNT(*) FROM food");
    ++firsts;
    return foods + samples();
  });
  EXPECT_EQ(sum, 20);
  EXPECT_EQ(firsts, 2);
}

/// As what reads a single number by the engine's own words does.
TEST_F(ReadTogether, WhatIsAskedAtOnceWaitsForWhatIsUnderWay) {
  const auto three = readTogether(far, [](Collection& c) {
    const auto late = [&] { return numberOf(c, "SELECT 71 FROM pg_sleep(0.05)"); };
    askAhead(c, late);
    const long long foods = numberOf(c, "SELECT COUNT(*) FROM food");
    int samples = 0;
    c.inner().sql() << "SELECT COUNT(*) FROM sample", soci::into(samples);
    return std::vector<long long>{foods, samples, late()};
  });
  EXPECT_THAT(three, ElementsAre(10, 10, 71));
}

TEST_F(ReadTogether, NobodyNeedReadAllThatWasAsked) {
  const auto first = [](Collection& c) {
    askAhead(c, [&] { return numberOf(c, "SELECT 71 FROM pg_sleep(0.05)"); });
    return numberOf(c, "SELECT COUNT(*) FROM food");
  };
  EXPECT_EQ(readTogether(far, first), 10);
  EXPECT_THROW(
      readTogether(far,
                   [&](Collection& c) -> long long { throw std::runtime_error(std::to_string(first(c))); }),
      std::runtime_error);
  (void)addFood(far, plain("kale"), kKeeper);
  EXPECT_EQ(readTogether(far, first), 11);
}

TEST_F(ReadTogether, AJobOfManyStepsIsNotRunForEachOfThem) {
  int runs = 0;
  const auto last = readTogether(far, [&](Collection& c) {
    ++runs;
    long long number = 0;
    for (int i = 0; i < 30; ++i) number = numberOf(c, fmt::format("SELECT CAST({} AS BIGINT)", number + 1));
    return number;
  });
  EXPECT_EQ(last, 30);
  EXPECT_LT(runs, 15);
}

/// Nothing is asked ahead where all is answered, and what rests on no answer but once.
TEST_F(ReadTogether, AsksAheadOnlyWhereAnAnswerIsMissing) {
  int first = 0;
  int everyRound = 0;
  const auto last = readTogether(far, [&](Collection& c) {
    askFirst(c, [&] { return ++first, numberOf(c, "SELECT 71"); });
    askAhead(c, [&] { return ++everyRound, numberOf(c, "SELECT 72"); });
    long long number = 0;
    for (int i = 0; i < 3; ++i) number = numberOf(c, fmt::format("SELECT CAST({} AS BIGINT)", number + 1));
    return number;
  });
  EXPECT_EQ(last, 3);
  EXPECT_EQ(first, 1);
  EXPECT_EQ(everyRound, 3);
}

TEST_F(ReadTogether, WhatComesInEachReadingTheServerKeepsReady) {
  for (long long i = 1; i <= 3; ++i)
    EXPECT_EQ(readTogether(far,
                           [i](Collection& c) {
                             long long sum = 0;
                             RowQuery rows(c.inner().connection,
                                           "SELECT CAST(:more AS BIGINT) + COUNT(*) FROM food", i);
                             (void)rows.next(sum);
                             return sum;
                           }),
              10 + i);
  EXPECT_EQ(numberOf(far,
                     "SELECT COUNT(*) FROM pg_prepared_statements WHERE statement LIKE '%AS BIGINT) + "
                     "COUNT(*) FROM food'"),
            1);
}

TEST_F(ReadTogether, WhatIsWrongInTheJobIsSaid) {
  EXPECT_THROW(readTogether(far,
                            [](Collection& c) -> int {
                              if (numberOf(c, "SELECT COUNT(*) FROM food") == 10)
                                throw std::runtime_error("ten");
                              throw std::logic_error("there was no answer");
                            }),
               std::runtime_error);
  EXPECT_THROW(readTogether(far, [](Collection& c) { return numberOf(c, "SELECT nothing FROM nowhere"); }),
               std::exception);
  EXPECT_EQ(countFoods(far), 10U);
}

/// Three questions, each of which rests on the one before.
long long threeSteps(Collection& c, const std::function<long long(Collection&, const std::string&)>& ask) {
  const long long foods = ask(c, "SELECT COUNT(*) FROM food");
  const long long samples = ask(c, fmt::format("SELECT COUNT(*) + {} FROM sample", foods));
  return ask(c, fmt::format("SELECT COUNT(*) + {} FROM sample_value", samples));
}

TEST_F(ReadTogether, WhatIsReadAgainTakesOneWay) {
  const auto read = [&] { return readTogether(far, [](Collection& c) { return threeSteps(c, &numberOf); }); };
  long long first = 0;
  EXPECT_EQ(tripsOf([&] { first = read(); }), 3);
  EXPECT_EQ(fewestTripsOf([&] { EXPECT_EQ(read(), first); }), 1);
}

TEST_F(ReadTogether, WhatIsReadAgainIsNeverAsItWasBeforeSomebodyWrote) {
  Collection near = Collection::open(address, kNow);
  const auto read = [&] { return readTogether(far, [](Collection& c) { return threeSteps(c, &numberOf); }); };
  long long before = read();
  for (int i = 0; i < 3; ++i) {
    (void)addFood(near, plain(fmt::format("late-{}", i)), kKeeper);
    EXPECT_EQ(read(), before + 1);
    ++before;
  }
  (void)addFood(far, plain("own"), kKeeper);
  EXPECT_EQ(read(), before + 1);
}

TEST_F(ReadTogether, WhatAskedTheSameTakesTwoWaysAfterSomebodyWrote) {
  Collection near = Collection::open(address, kNow);
  const auto read = [&] {
    return readTogether(far, [](Collection& c) {
      long long sum = 0;
      for (int id = 1; id <= 5; ++id)  // one after another, though none rests on the one before
        sum += numberOf(c, fmt::format("SELECT COUNT(*) FROM sample WHERE food_id = {}", id));
      return sum;
    });
  };
  EXPECT_EQ(read(), 5);
  (void)addSample(near, FoodId{1}, analysis("another lab", "2026-10-02", 41.0), kKeeper);
  EXPECT_LE(tripsOf([&] { EXPECT_EQ(read(), 6); }), 2);
}

TEST_F(ReadTogether, WhatIsWrongWithFormerAnswersIsNotSaid) {
  Collection near = Collection::open(address, kNow);
  const auto refusesTen = [](Collection& c) {
    const long long foods = numberOf(c, "SELECT COUNT(*) FROM food");
    if (foods == 10) throw std::runtime_error("ten");
    return foods;
  };
  EXPECT_THROW((void)readTogether(far, refusesTen), std::runtime_error);
  (void)addFood(near, plain("late"), kKeeper);
  EXPECT_EQ(readTogether(far, refusesTen), 11);
}

TEST_F(ReadTogether, ANutrientThatSomebodyWroteMeanwhileIsKnown) {
  Collection near = Collection::open(address, kNow);
  const auto read = [&] {
    return readTogether(far, [](Collection& c) { return knowFood(c, FoodId{1}).value().samples; });
  };
  ASSERT_EQ(read().size(), 1U);
  food::Sample fresh = analysis("another lab", "2026-10-02", 41.0);
  fresh.values.push_back({.nutrient = nutrient("VITD"), .amount = fresh.values.front().amount});
  (void)addSample(near, FoodId{1}, fresh, kKeeper);
  const auto samples = read();
  ASSERT_EQ(samples.size(), 2U);
  EXPECT_EQ(samples.back().sample.values.size(), fresh.values.size());
}

TEST_F(ReadTogether, OfMoreThanIsKeptTheOldestIsForgotten) {
  const auto read = [&](int number) {
    return readTogether(far, [number](Collection& c) {
      RowQuery rows(c.inner().connection, fmt::format("SELECT repeat('x', 1000000 + {})", number));
      std::string text;
      (void)rows.next(text);
      return numberOf(c, fmt::format("SELECT {} + COUNT(*) FROM food", text.size()));  // rests on it
    });
  };
  constexpr int kMany = 40;
  for (int i = 0; i < kMany; ++i) EXPECT_EQ(read(i), 1'000'010 + i);
  EXPECT_EQ(fewestTripsOf([&] { EXPECT_EQ(read(kMany - 1), 1'000'010 + kMany - 1); }), 1);
  std::vector<int> forgotten;  // what is read of them takes the place of the next older ones
  for (int i = 0; i < 5; ++i) forgotten.push_back(tripsOf([&] { EXPECT_EQ(read(i), 1'000'010 + i); }));
  EXPECT_EQ(*std::ranges::min_element(forgotten), 2);
}

TEST_F(ReadTogether, ItDoesNotWriteAndWritingGoesOnAfterwards) {
  EXPECT_EQ(codeOf([&] {
              (void)readTogether(far, [](Collection& c) { return addFood(c, plain("kale"), kKeeper).id; });
            }),
            StoreErrorCode::Failed);
  (void)addFood(far, plain("kale"), kKeeper);
  EXPECT_EQ(countFoods(far), 11U);
}

TEST_F(ReadTogether, AnothersWriteIsHeardOfAfterwards) {
  (void)far.changedElsewhere();
  (void)readTogether(far, [](Collection& c) { return listFoods(c); });
  Collection near = Collection::open(address, kNow);
  (void)addFood(near, plain("kale"), kKeeper);
  EXPECT_TRUE(hearsOfWrite(far));
}

TEST_F(ReadTogether, MoreThanIsHeldIsReadAllTheSame) {
  const auto bytes = readTogether(far, [](Collection& c) {
    std::size_t sum = 0;
    for (int i = 0; i < 12; ++i) {
      RowQuery rows(c.inner().connection, fmt::format("SELECT repeat('x', 4000000 + {})", i));
      std::string text;
      if (rows.next(text)) sum += text.size();
    }
    return sum;
  });
  EXPECT_EQ(bytes, 12U * 4'000'000 + 66);
}

TEST_F(ReadTogether, AConnectionThatIsCutWithinItIsSaid) {
  int run = 0;
  EXPECT_EQ(codeOf([&] {
              (void)readTogether(far, [&](Collection& c) {
                const long long foods = numberOf(c, "SELECT COUNT(*) FROM food");
                if (++run == 1)
                  (void)refusedTo(address, "",
                                  "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname "
                                  "= current_database() AND pid <> pg_backend_pid()");
                return foods < 0 ? 0 : numberOf(c, "SELECT COUNT(*) FROM sample");
              });
            }),
            StoreErrorCode::NoServer);
  EXPECT_TRUE(far.changedElsewhere());
  EXPECT_EQ(readTogether(far, [](Collection& c) { return listFoods(c).size(); }), 10U);
}

TEST(ReadTogetherOfAFile, IsReadOnce) {
  const OwnFolder folder;
  Collection file = Collection::create(folder / "a.tarebowl", kKeeper);
  int run = 0;
  EXPECT_EQ(
      readTogether(file, [&run](Collection& c) { return ++run + static_cast<int>(listFoods(c).size()); }), 1);
}

}  // namespace
}  // namespace tarebowl::store
