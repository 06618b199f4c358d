// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/feeding_file.h"

#include "core/exchange/problem_json.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>

namespace tarebowl::exchange {
namespace {

constexpr const char* kTitles =
    "date,bowl,meal,purpose,diet,animals,item,food,planned_g,weighed_g,left,left_g,lost_g,by\n";

/// A table in a file of its own.
class TableFile {
 public:
  explicit TableFile(const std::string& text) {
    const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
    path = std::filesystem::temp_directory_path() / (std::string("tarebowl-") + test->name() + ".csv");
    std::ofstream(path, std::ios::binary) << text;
  }
  ~TableFile() { std::filesystem::remove(path); }
  TableFile(const TableFile&) = delete;
  TableFile& operator=(const TableFile&) = delete;
  std::filesystem::path path;
};

TEST(FeedingFile, ReadsAFoodOfABowl) {
  std::string text = kTitles;
  text += "2026-10-20,2,noon,enrichment,lemur-daily/12,5,1,broccoli-raw,60,61,stolen,4,12,Keeper B\n";
  text += "2026-10-20,3,,,,5,1,kale-raw,60,,,,,\n";
  const TableFile file(text);
  const auto lines = readFeedingLines(file.path);
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_EQ(lines[0].diet, "lemur-daily");
  EXPECT_EQ(lines[0].version, 12);
  EXPECT_EQ(lines[0].weighed, quantity::Grams(61));
  EXPECT_EQ(lines[0].leftover, intake::LeftoverKind::Stolen);
  EXPECT_EQ(lines[0].lost, quantity::Grams(12));
  EXPECT_FALSE(lines[1].weighed);
  EXPECT_FALSE(lines[1].leftover);  // nobody has been there yet
  EXPECT_EQ(lines[1].version, 0);
}

TEST(FeedingFile, RefusesWhatItCannotRead) {
  for (const char* row :
       {"2026-13-20,1,,,,5,1,kale,60,,,,,\n", "2026-10-20,0,,,,5,1,kale,60,,,,,\n",
        "2026-10-20,1,,,lemur-daily,5,1,kale,60,,,,,\n", "2026-10-20,1,,,d/x,5,1,kale,60,,,,,\n",
        "2026-10-20,1,,,,5,1,kale,-3,,,,,\n", "2026-10-20,1,,,,5,1,kale,60,,eaten,,,\n"}) {
    const TableFile file(std::string(kTitles) + row);
    EXPECT_THROW((void)readFeedingLines(file.path), FormatError) << row;
  }
}

TEST(FeedingFile, ReadsPansOfAFoodOrOfAClass) {
  const TableFile file(
      "date,place,food,food_class,start_g,end_g,by\n"
      "2026-10-20,Small Mammals,kale-raw,,40,33.5,Keeper A\n"
      "2026-10-20,Small Mammals,,pellet,30,31.2,Keeper A\n"
      "2026-10-20,Small Mammals,,fruit,25,,Keeper A\n");
  const auto pans = readControlPans(file.path);
  ASSERT_EQ(pans.size(), 3U);
  EXPECT_EQ(pans[0].food, "kale-raw");
  EXPECT_EQ(pans[1].foodClass, "pellet");
  EXPECT_EQ(pans[1].end, quantity::Grams(31.2));
  EXPECT_EQ(pans[2].end, std::nullopt) << "it still stands";
}

}  // namespace
}  // namespace tarebowl::exchange
