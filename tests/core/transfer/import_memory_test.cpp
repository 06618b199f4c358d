// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/mapping_guess.h"
#include "core/transfer/table_import.h"
#include "tests/core/transfer/allocation_peak.h"
#include "tests/core/transfer/endless_table.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>

namespace tarebowl::transfer {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kFoods = 1000;
constexpr std::size_t kValuesOfFood = 60;
constexpr std::size_t kMegabyte = std::size_t{1} << 20U;
const store::Author kAuthor{"Keeper A", "2026-11-25T07:30:00Z"};

struct Peak {
  std::size_t program = 0;
  std::size_t engine = 0;
};

class ImportMemory : public ::testing::Test {
 protected:
  ImportMemory() : folder_(fs::temp_directory_path() / ("tarebowl-memory-" + std::to_string(getpid()))) {
    fs::remove_all(folder_);
    fs::create_directories(folder_);
  }
  ~ImportMemory() override { fs::remove_all(folder_); }

  [[nodiscard]] store::Collection emptyCollection() const {
    const fs::path file = folder_ / "c.tarebowl";
    for (const char* tail : {"", "-wal", "-shm"}) fs::remove(file.string() + tail);
    return store::Collection::create(file, kAuthor);
  }

  /// What importing the table holds at most.
  static Peak peakOf(const exchange::TableInput& table, store::Collection& collection) {
    const exchange::TableMapping mapping = exchange::guessMapping(table).mapping;
    const AllocationPeak peak;
    const Imported imported =
        importTable(collection, {table, mapping, "made.csv"}, kAuthor, Keep::WhereItMay);
    EXPECT_TRUE(imported.plan.mayBeWritten());
    EXPECT_EQ(imported.plan.valuesRead() % kValuesOfFood, 0U);
    return {peak.ofProgram(), peak.ofEngine()};
  }

  Peak peakOfNew(const exchange::TableInput& table) const {
    store::Collection collection = emptyCollection();
    return peakOf(table, collection);
  }

 private:
  fs::path folder_;
};

TEST_F(ImportMemory, IsSeenByTheCounter) {
  const AllocationPeak peak;
  { const std::string text(kMegabyte, 'x'); }
  EXPECT_GE(peak.ofProgram(), kMegabyte);
  EXPECT_LT(peak.ofProgram(), 2 * kMegabyte);
}

TEST_F(ImportMemory, OfALongTableIsTheSameForOneFourTimesAsLong) {
  const Peak one = peakOfNew(longTable(kFoods, kValuesOfFood));
  const Peak four = peakOfNew(longTable(4 * kFoods, kValuesOfFood));
  RecordProperty("program", std::to_string(one.program) + " and " + std::to_string(four.program));
  RecordProperty("engine", std::to_string(one.engine) + " and " + std::to_string(four.engine));
  EXPECT_LE(four.program, one.program + 4096);
  // The engine's page cache is bounded; the smaller import may not fill it.
  EXPECT_LE(four.engine, 4 * kMegabyte);
}

// By a number for each food, a second record of it is seen, and whether a sample of an earlier import
// changed.
constexpr std::size_t kBytesAFood = 80;

TEST_F(ImportMemory, OfAWideTableGrowsBySomeBytesAFood) {
  const Peak one = peakOfNew(wideTable(kFoods, kValuesOfFood));
  const Peak four = peakOfNew(wideTable(4 * kFoods, kValuesOfFood));
  EXPECT_LE(four.program, one.program + 3 * kFoods * kBytesAFood);
  EXPECT_LE(four.engine, 4 * kMegabyte);
}

TEST_F(ImportMemory, OfATableThatIsThereAlreadyGrowsBySomeBytesAFood) {
  std::size_t peaks[2];
  for (std::size_t i = 0; i < 2; ++i) {
    const exchange::TableInput table = longTable(i == 0 ? kFoods : 4 * kFoods, kValuesOfFood);
    store::Collection collection = emptyCollection();
    (void)peakOf(table, collection);
    peaks[i] = peakOf(table, collection).program;
  }
  EXPECT_LE(peaks[1], peaks[0] + 3 * kFoods * kBytesAFood);
}

}  // namespace
}  // namespace tarebowl::transfer
