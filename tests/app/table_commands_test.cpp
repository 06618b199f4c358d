// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/collection.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>

// The tables are invented.
namespace tarebowl::app {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// A new, empty collection in a folder of this test's own.
std::string emptyCollection() {
  const auto file = fileWith("c.tarebowl", "");
  std::filesystem::remove(file);
  std::filesystem::remove_all(store::backupFolder(file));  // of an earlier run
  (void)store::Collection::create(file, {"Keeper A", "2026-11-25T07:30:00Z"});
  return file.string();
}

constexpr const char* kTable =
    "Food,Group,Water (g),CA (mg),CA sd\nKale,leaf,89.6,254,31\nEndive,leaf,93.8,52,\n";

TEST(ImportCommand, PlansWithoutWritingThenWritesThenChangesNothing) {
  const std::string collection = emptyCollection();
  const std::string table = fileWith("t.csv", kTable).string();
  const json planned = json::parse(tarebowl({"import", collection, table, "--dry-run"}).out);
  EXPECT_EQ(planned["format"], "tarebowl-import/1");
  EXPECT_EQ(planned["stage"], "planned");
  EXPECT_EQ(planned["foods"]["new"], 2);
  const json imported = json::parse(tarebowl({"import", collection, table}).out);
  EXPECT_EQ(imported["stage"], "imported");
  EXPECT_EQ(imported["foods"]["new"], 2);  // the plan had written nothing
  EXPECT_EQ(imported["values"]["new"], 4);
  const json again = json::parse(tarebowl({"import", collection, table}).out);
  EXPECT_EQ(again["foods"]["unchanged"], 2);
  EXPECT_EQ(again["values"]["new"], 0);
}

TEST(ImportCommand, MakesTheBackupOfTheDayBeforeItWrites) {
  const std::string collection = emptyCollection();
  const std::string table = fileWith("t.csv", kTable).string();
  (void)tarebowl({"import", collection, table, "--dry-run"});
  EXPECT_THAT(store::listBackups(collection), IsEmpty()) << "nothing was written yet";
  (void)tarebowl({"import", collection, table});
  const auto backups = store::listBackups(collection);
  ASSERT_EQ(backups.size(), 1U);
  EXPECT_EQ(backups[0].reason, "daily");
  EXPECT_EQ(json::parse(tarebowl({"foods", backups[0].file.string()}).out)["foods_in_collection"], 0);
  (void)tarebowl({"import", collection, table});
  EXPECT_EQ(store::listBackups(collection).size(), 1U);
}

TEST(ImportCommand, TellsPeopleWhatIsKeptUnderItsOwnNameAndWhatIsLeftOut) {
  const std::string collection = emptyCollection();
  const std::string table =
      fileWith("t.csv", "food,nutrient,value,unit\nKale,CA,254,mg\nKale,Lime,1,mg\nKale,Moon pH,6.5,pH\n")
          .string();
  EXPECT_EQ(tarebowl({"import", collection, table, "--table"}).out,
            "imported: 1 food new, 0 changed, 0 unchanged; 2 values new, 0 changed, 0 unchanged, 1 of these "
            "kept under the table's own name; 1 left out (without --table: which, and why); nothing is known "
            "in 0 cells\n");
  const json remarks = json::parse(tarebowl({"import", collection, table, "--dry-run"}).out)["remarks"];
  ASSERT_EQ(remarks.size(), 2U);
  EXPECT_EQ(remarks[0]["kind"], "unknown-nutrient");
  EXPECT_EQ(remarks[0]["first"][0]["found"], "Moon pH");
  EXPECT_EQ(remarks[1]["kind"], "kept-by-name");
  EXPECT_EQ(remarks[1]["first"][0]["found"], "Lime");
}

TEST(ImportCommand, RefusesABadTableInOneLineAndWritesNothingOfIt) {
  const std::string collection = emptyCollection();
  const std::string table = fileWith("t.csv", std::string(kTable) + "Chard,leaf,92.7,=D3,\n").string();
  const Outcome outcome = tarebowl({"import", collection, table});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.out, IsEmpty());
  EXPECT_THAT(
      outcome.err,
      HasSubstr("t.csv: line 4, column 4 (CA (mg)): expected a number and no formula, found \"=D3\"\n"));
  const std::string good = fileWith("t.csv", kTable).string();
  EXPECT_EQ(json::parse(tarebowl({"import", collection, good, "--dry-run"}).out)["foods"]["new"], 2);
}

TEST(ImportCommand, AsksForAMappingWhereTheDecimalMarkIsOpen) {
  const Outcome outcome =
      tarebowl({"import", emptyCollection(), fileWith("t.csv", "Food;CA (mg)\nKale;1,254\n").string()});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.err,
              HasSubstr("line 2: expected a mapping (--map) that says whether the decimal mark"));
}

TEST(ExportCommand, WritesWhatCanBeImportedIntoAnotherCollection) {
  const std::string collection = emptyCollection();
  ASSERT_EQ(tarebowl({"import", collection, fileWith("t.csv", kTable).string()}).status, 0);
  for (const char* name : {"out.csv", "out.xlsx"}) {
    const std::string out = fileWith(name, "").string();
    ASSERT_EQ(tarebowl({"export", collection, out}).status, 0);
    const json planned = json::parse(tarebowl({"import", collection, out, "--dry-run"}).out);
    EXPECT_EQ(planned["values"]["unchanged"], 4) << name;  // each value names its source, so it is found
    const json other = json::parse(tarebowl({"import", emptyCollection(), out}).out);
    EXPECT_EQ(other["values"]["new"], 4) << name;
    ASSERT_EQ(tarebowl({"import", collection, fileWith("t.csv", kTable).string()}).status, 0);
  }
  EXPECT_EQ(tarebowl({"export", collection, "out.doc"}).status, 2);
}

TEST(CheckCommand, NamesWhatIsDoubtful) {
  const std::string collection = emptyCollection();
  // 89.6 + 20 g are more than the food.
  ASSERT_EQ(tarebowl({"import", collection, fileWith("t.csv", "Food,Water,Protein\nKale,89.6,20\n").string()})
                .status,
            0);
  const json checked = json::parse(tarebowl({"check", collection}).out);
  EXPECT_EQ(checked["format"], "tarebowl-check/1");
  ASSERT_EQ(checked["findings"].size(), 1U);
  EXPECT_EQ(checked["findings"][0]["check"], "proximates-over-whole");
  EXPECT_THAT(tarebowl({"check", collection, "--table"}).out, HasSubstr("add up to 109.6 g in 100 g"));
}

}  // namespace
}  // namespace tarebowl::app
