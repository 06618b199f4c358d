// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::app {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::Optional;

Command parsed(std::vector<const char*> words) {
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

TEST(CommandLine, WithoutWordsOpensTheWindowOnTheSample) {
  const Command command = parsed({});
  EXPECT_EQ(command.kind, Command::Kind::OpenWindow);
  EXPECT_EQ(command.file, std::nullopt);
}

TEST(CommandLine, WithAFileOpensTheWindowOnIt) {
  const Command command = parsed({"bowl.json"});
  EXPECT_EQ(command.kind, Command::Kind::OpenWindow);
  EXPECT_THAT(command.file, Optional(std::string("bowl.json")));
}

TEST(CommandLine, LeavesTheThemeToTheWindow) {
  EXPECT_EQ(parsed({"--theme", "dark", "bowl.json"}).kind, Command::Kind::OpenWindow);
  EXPECT_THAT(complaintAbout({"--theme", "pink"}), HasSubstr("--theme"));
}

TEST(CommandLine, SolvesAFileAsJsonForTenSecondsUnlessToldOtherwise) {
  const Command usual = parsed({"solve", "bowl.json"});
  EXPECT_EQ(usual.kind, Command::Kind::Solve);
  EXPECT_THAT(usual.file, Optional(std::string("bowl.json")));
  EXPECT_FALSE(usual.table);
  EXPECT_EQ(usual.deadline, std::chrono::seconds(10));
  const Command told = parsed({"solve", "--table", "--seconds", "0.5", "bowl.json"});
  EXPECT_TRUE(told.table);
  EXPECT_EQ(told.deadline, std::chrono::milliseconds(500));
}

TEST(CommandLine, ReadsADashAsStandardInput) {
  EXPECT_THAT(parsed({"balance", "-"}).file, Optional(std::string("-")));
}

TEST(CommandLine, ListsNutrients) {
  EXPECT_EQ(parsed({"nutrients"}).kind, Command::Kind::Nutrients);
  EXPECT_FALSE(parsed({"nutrients", "--json"}).table);
  EXPECT_TRUE(parsed({"nutrients", "--table"}).table);
}

TEST(CommandLine, AnswersHelpAndVersion) {
  EXPECT_THAT(parsed({"--help"}).text, HasSubstr("solve"));
  EXPECT_THAT(parsed({"solve", "--help"}).text, HasSubstr("--seconds"));
  EXPECT_THAT(parsed({"--version"}).text, HasSubstr("tarebowl "));
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

}  // namespace
}  // namespace tarebowl::app
