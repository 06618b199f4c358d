// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/text_file.h"
#include "tests/app/own_collections.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

constexpr const char* kDay = "2026-11-25";

/// The invented collection, made once for all tests of a process.
const std::string& brackenmere() {
  static const std::string kFile = sampleCollection("diets.tarebowl");
  return kFile;
}

json parsed(const Outcome& outcome) {
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  return json::parse(outcome.out);
}

/// One line of complaint and status 2.
std::string complaint(const std::vector<std::string>& arguments) {
  const Outcome outcome = tarebowl(arguments);
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(outcome.out, "");
  return outcome.err;
}

TEST(DietCommands, DietsListsEachWithItsVersionsAndTheOneThatIsFed) {
  const json read = parsed(tarebowl({"diets", brackenmere(), "--day", kDay}));
  EXPECT_EQ(read.at("format"), "tarebowl-diets/1");
  EXPECT_GE(read.at("diets").size(), 7U);
  const json one =
      parsed(tarebowl({"diets", brackenmere(), "--group", "fennecs", "--day", kDay})).at("diets");
  ASSERT_EQ(one.size(), 1U);
  EXPECT_EQ(one[0].at("fed"), 2);
  EXPECT_EQ(one[0].at("versions")[0].at("state"), "retired");
  EXPECT_EQ(one[0].at("versions")[2].at("state"), "draft");
  EXPECT_THAT(tarebowl({"diets", brackenmere(), "--table", "--day", kDay}).out,
              HasSubstr("1 retired, 2 approved, 3 draft"));
}

TEST(DietCommands, AVersionIsShownWithItsLinesAndItsBalance) {
  const json read =
      parsed(tarebowl({"diets", brackenmere(), "--diet", "tenrec-evening", "--version", "1", "--day", kDay}));
  EXPECT_EQ(read.at("diet").at("versions")[0].at("lines")[0].at("food"), "crickets-adult");
  EXPECT_EQ(read.at("result").at("status"), "balanced");
  const Outcome table =
      tarebowl({"diets", brackenmere(), "--diet", "tenrec-evening", "--table", "--day", kDay});
  EXPECT_THAT(table.out, HasSubstr("Lesser hedgehog tenrecs (trio), evening bowl, version 2"));
  EXPECT_THAT(table.err, HasSubstr("not counted: arginine"));
}

TEST(DietCommands, WhatIsShownIsWhatTheDeskSolves) {
  const std::vector<std::string> which{brackenmere(), "--diet", "lemur-daily", "--version",
                                       "1",           "--day",  kDay};
  std::vector<std::string> solve{"solve"};
  std::vector<std::string> show{"diets"};
  solve.insert(solve.end(), which.begin(), which.end());
  show.insert(show.end(), which.begin(), which.end());
  const json solved = parsed(tarebowl(solve));
  const json shown = parsed(tarebowl(show)).at("result");
  EXPECT_EQ(solved.at("grams"), shown.at("grams"));
  for (std::size_t i = 0; i < solved.at("targets").size(); ++i)
    EXPECT_EQ(solved.at("targets")[i].at("value"), shown.at("targets")[i].at("value"));
}

TEST(DietCommands, TwoVersionsAreComparedInWordsAndInNumbers) {
  const std::vector<std::string> which{"compare", brackenmere(), "--diet", "fennec-evening", "--from",
                                       "1",       "--to",        "2",      "--day",          kDay};
  const json read = parsed(tarebowl(which));
  EXPECT_EQ(read.at("differences")[0].at("kind"), "amount");
  EXPECT_EQ(read.at("differences")[0].at("sentence"), "insect-eater-pellet, evening: 19 → 18.9 g");
  EXPECT_EQ(read.at("ladder")[0].contains("from"), true);
  std::vector<std::string> asTable = which;
  asTable.emplace_back("--table");
  const std::string text = tarebowl(asTable).out;
  EXPECT_THAT(text, HasSubstr("beetroot-raw, evening: left out, it was 8 g"));
  EXPECT_THAT(text, HasSubstr("phased in over 0 → 7 days"));
  EXPECT_THAT(text, HasSubstr("Cost per animal and day"));
}

TEST(DietCommands, ASheetIsWrittenOfTheVersionThatIsFed) {
  const auto page = fileWith("sheet.html", "");
  const Outcome outcome =
      tarebowl({"sheet", brackenmere(), page.string(), "--diet", "fennec-evening", "--day", kDay});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("version 2 is written to"));
  const std::string html = exchange::readText(page);
  EXPECT_THAT(html, HasSubstr("INVENTED SAMPLE"));
  EXPECT_THAT(html, HasSubstr("Approved by Vet on 2026-10-01"));
  const auto table = fileWith("sheet.xlsx", "");
  EXPECT_EQ(tarebowl({"sheet", brackenmere(), table.string(), "--diet", "bat-evening", "--day", kDay}).status,
            0);
  EXPECT_GT(std::filesystem::file_size(table), 1000U);
}

TEST(DietCommands, TheProblemOfAVersionSolvesToTheSameResultByItself) {
  const auto file = fileWith("problem.json", "");
  ASSERT_EQ(tarebowl({"export", brackenmere(), file.string(), "--diet", "tenrec-evening", "--version", "1",
                      "--problem"})
                .status,
            0);
  json alone = parsed(tarebowl({"solve", file.string()}));
  json desk = parsed(tarebowl({"solve", brackenmere(), "--diet", "tenrec-evening", "--version", "1"}));
  alone.erase("solve_us");
  desk.erase("solve_us");
  EXPECT_EQ(alone, desk);
}

TEST(DietCommands, ADietLeavesTheCollectionAsAFileAndComesBack) {
  const auto file = fileWith("bats.json", "");
  ASSERT_EQ(tarebowl({"export", brackenmere(), file.string(), "--diet", "bat-evening"}).status, 0);
  EXPECT_THAT(complaint({"import", brackenmere(), file.string()}),
              HasSubstr("there is another diet with the code bat-evening"));
  std::string text = exchange::readText(file);
  text.replace(text.find("bat-evening"), 11, "bat-morning");
  const auto renamed = fileWith("morning.json", text);
  EXPECT_THAT(tarebowl({"import", brackenmere(), renamed.string(), "--dry-run"}).out,
              HasSubstr("nothing written"));
  EXPECT_EQ(tarebowl({"import", brackenmere(), renamed.string()}).status, 0);
  const json read = parsed(tarebowl({"diets", brackenmere(), "--diet", "bat-morning"}));
  EXPECT_EQ(read.at("diet").at("versions")[0].at("state"), "approved");
}

TEST(DietCommands, WhatIsNotThereIsNamed) {
  EXPECT_THAT(complaint({"diets", brackenmere(), "--diet", "nowhere"}),
              HasSubstr("there is no diet nowhere"));
  EXPECT_THAT(complaint({"solve", brackenmere(), "--diet", "bat-evening", "--version", "9"}),
              HasSubstr("there is no version 9 of bat-evening"));
  EXPECT_THAT(complaint({"sheet", brackenmere(), "sheet.doc", "--diet", "bat-evening"}),
              HasSubstr("expected NAME.html or NAME.xlsx"));
}

}  // namespace
}  // namespace tarebowl::app
