// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/salvage.h"
#include "tests/core/store/own_folder.h"
#include "tests/faults/how_often.h"
#include "tests/faults/kitchen_work.h"
#include "tests/faults/table_dump.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;

constexpr std::size_t kBlock = 512;
constexpr int kSteps = 120;
const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

/// What a block is written over with.
std::string harm(std::size_t block, std::mt19937& random) {
  if (block % 3 == 0) return std::string(kBlock, '\0');
  if (block % 3 == 1) return std::string(kBlock, '\xff');
  std::string noise(kBlock, '\0');
  std::ranges::generate(noise, [&] { return static_cast<char>(random()); });
  return noise;
}

class Damage : public testing::Test {
 protected:
  void SetUp() override {
    makeKitchen(file);
    {
      Collection collection = Collection::open(file, kNow);
      for (int step = 0; step < kSteps; ++step) writeStep(collection, step);
    }
    backup = makeBackup(file, kNow, "daily");
    sound = contentOf(file);
    before = dumpOf(file);
  }

  /// Rows of a table are lost only where the report says of the table that something is lost, and none is
  /// there that was not, unless the report calls it doubtful.
  void expectHonest(const SalvageReport& report, const fs::path& fresh, std::size_t block) {
    const TableDump after = dumpOf(fresh);
    ASSERT_EQ(report.tables.size(), before.size());
    for (const SalvagedTable& table : report.tables) {
      const std::set<std::string>& were = before.at(table.name);
      std::set<std::string> are = after.at(table.name);
      if (table.name == "change_log")
        std::erase_if(are, [](const auto& row) { return row.find("|salvage|") != row.npos; });
      std::size_t strange = 0;
      for (const std::string& row : are) strange += were.contains(row) ? 0U : 1U;
      const std::size_t lost = were.size() + strange - are.size();
      EXPECT_LE(strange, table.doubtful) << table.name << " after block " << block;
      if (lost > strange) {
        EXPECT_FALSE(report.isWhole()) << table.name << " after block " << block;
        EXPECT_TRUE(!table.isWhole() || report.pagesWithoutTable > 0)
            << table.name << " after block " << block;
      }
      rows += were.size();
      rowsLost += lost;
    }
  }

  const OwnFolder folder;
  const fs::path file = folder / "kitchen.tarebowl";
  fs::path backup;
  std::string sound;
  TableDump before;
  std::size_t rows = 0;
  std::size_t rowsLost = 0;
};

/// Reading everything either works or says what is the matter.
std::optional<StoreError> readingAllOf(const fs::path& file) {
  return errorOf([&] {
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    for (int step = 0; step < kSteps; ++step) (void)findStep(collection, step);
  });
}

TEST_F(Damage, OfAnyBlockIsSaidWithTheNewestBackupAndTheRestIsSalvaged) {
  const std::size_t blocks = sound.size() / kBlock;
  const auto looked =
      std::min<std::size_t>(blocks, static_cast<std::size_t>(howOften("TAREBOWL_DAMAGED_BLOCKS", 60)));
  std::mt19937 random(20261130);
  int refused = 0;
  for (std::size_t i = 0; i < looked; ++i) {
    const std::size_t block = i * blocks / looked;
    std::string content = sound;
    content.replace(block * kBlock, kBlock, harm(block, random));
    write(file, content);
    const auto error = readingAllOf(file);
    if (error) {
      ++refused;
      EXPECT_TRUE(error->code() == StoreErrorCode::Damaged ||
                  error->code() == StoreErrorCode::NotACollection ||
                  error->code() == StoreErrorCode::Untrusted)
          << error->what();
      EXPECT_EQ(error->backup(), backup) << error->what();
    }
    EXPECT_EQ(contentOf(file), content) << "looking at it changed it";
    const fs::path fresh = folder / "fresh.tarebowl";
    const SalvageReport report = salvage(file, fresh, kKeeper);
    EXPECT_FALSE(codeOf([&] { (void)Collection::open(fresh, kNow, kReadThrough); })) << block;
    // The engine keeps no sums of what stands in a row: a text that was written over is found by salvage
    // alone.
    if (!error) {
      EXPECT_EQ(report.pagesWithoutTable, 0U) << block;
      EXPECT_TRUE(std::ranges::none_of(report.tables, &SalvagedTable::whereUnknown)) << block;
    }
    expectHonest(report, fresh, block);
    fs::remove(fresh);
  }
  // How many depends on where tables lie: in a larger schema more blocks hold what opening does not read.
  EXPECT_GT(refused, static_cast<int>(looked / 5));
  EXPECT_LT(rowsLost, rows / 20);  // of all rows of all rounds: one block is 1 part in `blocks`, a page is 8
  RecordProperty("blocks", static_cast<int>(looked));
  RecordProperty("refused", refused);
  RecordProperty("rows_lost_in_a_million", static_cast<int>(1'000'000 * rowsLost / rows));
}

TEST_F(Damage, TheNewestBackupThatIsSoundIsOffered) {
  const fs::path newer = makeBackup(file, "2026-11-26T07:30:00Z", "daily");
  std::string content = contentOf(newer);
  content.replace(4096 * 5, 4096, std::string(4096, '\xff'));
  write(newer, content);
  content = sound;
  content.replace(4096 * 7, 4096, std::string(4096, '\xff'));
  write(file, content);
  EXPECT_EQ(readingAllOf(file).value().backup(), backup);
}

}  // namespace
}  // namespace tarebowl::faults
