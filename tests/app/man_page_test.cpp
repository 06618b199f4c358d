// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The man page says what the program's own help says.
#include "tests/app/program.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace tarebowl::app {
namespace {

using ::testing::HasSubstr;

/// As it is read: without the marks of the typesetter.
std::string manPage() {
  std::ifstream file(TAREBOWL_SOURCE_DIR "/resources/desktop/tarebowl.1");
  std::ostringstream text;
  for (std::string line; std::getline(file, line); text << line << '\n')
    for (auto mark = line.find("\\-"); mark != std::string::npos; mark = line.find("\\-", mark))
      line.erase(mark, 1);
  return text.str();
}

TEST(ManPage, NamesEveryCommandInTheWordsOfTheHelp) {
  const std::string page = manPage();
  std::istringstream help(tarebowl({"--help"}).out);
  int commands = 0;
  bool areCommands = false;
  for (std::string line; std::getline(help, line);) {
    if (areCommands && line.empty()) break;
    if (areCommands) {
      std::istringstream words(line);
      std::string name;
      std::string what;
      words >> name >> std::ws;
      std::getline(words, what);
      EXPECT_THAT(page, HasSubstr(".B " + name + '\n' + what + '\n'));
      ++commands;
    }
    areCommands = areCommands || line == "Subcommands:";
  }
  EXPECT_GT(commands, 20);
}

TEST(ManPage, SaysWhichVersionItIsOf) {
  const std::string version = tarebowl({"--version"}).out;  // "tarebowl 0.1.0\n"
  EXPECT_THAT(manPage(), HasSubstr("\"Tarebowl " + version.substr(9, version.size() - 10) + '"'));
}

}  // namespace
}  // namespace tarebowl::app
