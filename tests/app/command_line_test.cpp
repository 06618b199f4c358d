// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <sstream>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::Optional;
using ::testing::StartsWith;

/// 1 g of limestone holds 380 mg of calcium.
constexpr const char* kPowder = R"({ "format": "tarebowl-problem/1",
  "foods": [{ "id": "limestone", "name": "Limestone", "per_100_g": { "WATER": 0, "CA": 38000 }, "max_g": 10 }],
  "targets": [{ "id": "ca", "nutrient": "CA", "min": 380, "unit": "mg", "basis": "day", "hard": true }],
  "reference": { "limestone": 1 } })";

Asked parsed(std::vector<const char*> words) {
  words.insert(words.begin(), "tarebowl");
  return parseCommandLine(static_cast<int>(words.size()), words.data());
}

std::string complaintAbout(const std::vector<const char*>& words) {
  try {
    (void)parsed(words);
  } catch (const UsageError& error) {
    return error.what();
  }
  return "no complaint";
}

std::optional<std::string> windowFile(const std::vector<const char*>& words) {
  return std::get<OpenWindow>(parsed(words)).file;
}

std::string textOf(const std::vector<const char*>& words) {
  return std::get<ShowText>(parsed(words)).text;
}

/// What the command prints that these words name, with the powder as standard input.
std::string printed(const std::vector<const char*>& words) {
  std::istringstream in(kPowder);
  std::ostringstream out;
  std::ostringstream err;
  EXPECT_EQ(std::get<Run>(parsed(words))({in, out, err}), kDone) << err.str();
  return out.str();
}

TEST(CommandLine, WithoutWordsLeavesItToTheWindowWhatToOpen) {
  EXPECT_EQ(windowFile({}), std::nullopt);
}

TEST(CommandLine, WithAFileOpensTheWindowOnIt) {
  EXPECT_THAT(windowFile({"bowl.json"}), Optional(std::string("bowl.json")));
}

TEST(CommandLine, OpensTheSampleWhereItIsAskedFor) {
  EXPECT_TRUE(std::get<OpenWindow>(parsed({"--sample"})).sample);
  EXPECT_FALSE(std::get<OpenWindow>(parsed({})).sample);
  EXPECT_THAT(complaintAbout({"--sample", "bowl.json"}), HasSubstr("--sample"));
}

TEST(CommandLine, LeavesTheThemeToTheWindow) {
  EXPECT_THAT(windowFile({"--theme", "dark", "bowl.json"}), Optional(std::string("bowl.json")));
  EXPECT_THAT(complaintAbout({"--theme", "pink"}), HasSubstr("--theme"));
}

TEST(CommandLine, SolvesAFileAsJsonForTenSecondsUnlessToldOtherwise) {
  EXPECT_EQ(json::parse(printed({"solve", "-"}))["status"], "balanced");
  EXPECT_THAT(textOf({"solve", "--help"}), HasSubstr("--seconds FLOAT:FLOAT in [0.001 - 86400]=10"));
  EXPECT_THAT(printed({"solve", "--table", "--seconds", "0.5", "-"}), HasSubstr("Limestone"));
}

TEST(CommandLine, ReadsADashAsStandardInput) {
  EXPECT_EQ(json::parse(printed({"balance", "-"}))["grams"]["limestone"], 1);
}

TEST(CommandLine, ListsNutrients) {
  EXPECT_EQ(json::parse(printed({"nutrients"}))["format"], "tarebowl-nutrients/1");
  EXPECT_EQ(printed({"nutrients", "--json"}), printed({"nutrients"}));
  EXPECT_THAT(printed({"nutrients", "--table"}),
              AllOf(HasSubstr("Crude protein"), Not(HasSubstr("tarebowl-nutrients/1"))));
}

TEST(CommandLine, AnswersHelpAndVersion) {
  EXPECT_THAT(textOf({"--help"}), HasSubstr("solve"));
  EXPECT_THAT(textOf({"solve", "--help"}), HasSubstr("--seconds"));
  EXPECT_THAT(textOf({"--version"}), HasSubstr("tarebowl "));
}

TEST(CommandLine, RefusesWhatItDoesNotKnowInOneLine) {
  const std::vector<std::vector<const char*>> slips{{"solve"},
                                                    {"solve", "a.json", "b.json"},
                                                    {"solve", "a.json", "--tabel"},
                                                    {"solve", "a.json", "--seconds", "0"},
                                                    {"solve", "a.json", "--seconds", "-1"},
                                                    {"solve", "a.json", "--seconds", "soon"},
                                                    {"solve", "a.json", "--seconds", "nan"},
                                                    {"balance"},
                                                    {"nutrients", "--json", "--table"},
                                                    {"a.json", "b.json"},
                                                    {"--verbose"}};
  for (const auto& slip : slips) {
    EXPECT_THAT(complaintAbout(slip), HasSubstr("see tarebowl --help")) << ::testing::PrintToString(slip);
    EXPECT_THAT(complaintAbout(slip), Not(HasSubstr("\n")));
  }
}

TEST(CommandLine, RefusesWhatIsNoDayBeforeAnyFileIsRead) {
  EXPECT_EQ(complaintAbout({"targets", "no-such.tarebowl", "--group", "g", "--day", "2026-02-30"}),
            "--day: expected a day as YYYY-MM-DD, found \"2026-02-30\"");
  EXPECT_THAT(complaintAbout({"intake", "no-such.tarebowl", "--group", "g", "--to", "today"}),
              StartsWith("--to: expected a day"));
}

}  // namespace
}  // namespace tarebowl::app
