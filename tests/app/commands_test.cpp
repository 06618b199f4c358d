// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include "tests/source_dir.h"

#include <CLI/CLI.hpp>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

namespace tarebowl::app {
namespace {

namespace fs = std::filesystem;
using ::testing::IsEmpty;
using ::testing::IsSupersetOf;
using ::testing::Not;

/// Every command, as the program has them.
struct Listed {
  CLI::App app{"", "tarebowl"};
  Run chosen{};
  Listed() { defineCommands(app, chosen); }
};

/// A command, and the words that lead to it: `server add` is two.
struct Command {
  const CLI::App* app = nullptr;
  std::vector<std::string> before{};
};

/// Every command and every part of one.
std::vector<Command> allIn(const CLI::App& app, const std::vector<std::string>& before = {}) {
  std::vector<Command> all;
  for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) {
    all.push_back({command, before});
    std::vector<std::string> further = before;
    further.push_back(command->get_name());
    for (Command& part : allIn(*command, further)) all.push_back(std::move(part));
  }
  return all;
}

std::set<std::string> namesIn(const CLI::App& app) {
  std::set<std::string> names;
  for (const Command& command : allIn(app)) names.insert(command.app->get_name());
  return names;
}

/// Names that the files of the house give to commands.
std::set<std::string> namesInTheSources() {
  static const std::regex kNaming(R"rx(add_subcommand\(\s*"([^"]+)")rx");
  std::set<std::string> names;
  for (const auto& entry : fs::directory_iterator(TAREBOWL_SOURCE_DIR "/app")) {
    if (entry.path().extension() != ".cpp") continue;
    std::ifstream file(entry.path());
    const std::string text(std::istreambuf_iterator<char>(file), {});
    for (std::sregex_iterator named(text.begin(), text.end(), kNaming), end; named != end; ++named)
      names.insert((*named)[1]);
  }
  return names;
}

/// A line that gives a command no more than it must have.
std::vector<std::string> shortestLine(const Command& command) {
  static const std::map<std::string, std::string> kWhereNotAnyWordWillDo{
      {"--from", "1"}, {"--rotation", "1"}, {"--sign", "faeces"},
      {"NUMBER", "1"}, {"ROLE", "keeper"},  {"WHICH", "mine"}};
  std::vector<std::string> line = command.before;
  line.push_back(command.app->get_name());
  for (const CLI::Option* option : command.app->get_options()) {
    if (!option->get_required()) continue;
    const std::string name = option->get_name();
    if (!option->get_positional()) line.push_back(name);
    const auto known = kWhereNotAnyWordWillDo.find(name);
    line.push_back(known == kWhereNotAnyWordWillDo.end() ? "word" : known->second);
  }
  return line;
}

TEST(Commands, EveryOneThatAFileDefinesIsInTheList) {
  Listed listed;
  EXPECT_EQ(namesIn(listed.app), namesInTheSources());
  EXPECT_THAT(namesIn(listed.app), IsSupersetOf({"solve", "new", "diets", "prep", "observe"}));
}

TEST(Commands, EveryOneDocumentsItselfAndItsOptions) {
  Listed listed;
  for (const Command& named : allIn(listed.app)) {
    const CLI::App* const command = named.app;
    EXPECT_THAT(command->get_description(), Not(IsEmpty())) << command->get_name();
    for (const CLI::Option* option : command->get_options())
      EXPECT_THAT(option->get_description(), Not(IsEmpty())) << command->get_name() << option->get_name();
  }
}

TEST(Commands, EveryOneIsChosenWhereItIsNamed) {
  const Listed all;
  for (const Command& command : allIn(all.app)) {
    if (!command.app->get_subcommands([](const CLI::App*) { return true; }).empty())
      continue;  // its parts are
    Listed listed;
    std::vector<std::string> line = shortestLine(command);
    const std::string shown = ::testing::PrintToString(line);
    std::reverse(line.begin(), line.end());  // as CLI11 takes them
    EXPECT_NO_THROW(listed.app.parse(line)) << shown;
    EXPECT_TRUE(listed.chosen) << shown;
  }
}

TEST(Commands, NoneIsChosenWhereNoneIsNamed) {
  Listed listed;
  listed.app.parse(std::vector<std::string>{});
  EXPECT_FALSE(listed.chosen);
}

}  // namespace
}  // namespace tarebowl::app
