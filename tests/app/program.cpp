// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"

#include "tests/source_dir.h"

#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace tarebowl::app {

namespace {

namespace fs = std::filesystem;

fs::path ownFolder() {
  const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
  fs::path folder = fs::path(::testing::TempDir()) / "tarebowl-app" / test->test_suite_name() / test->name();
  fs::create_directories(folder);
  return folder;
}

std::string quoted(const std::string& text) {
  std::string result = "'";
  for (const char c : text) result += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return result + "'";
}

std::string contentOf(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

}  // namespace

fs::path fileWith(const std::string& name, const std::string& text) {
  fs::path file = ownFolder() / name;
  std::ofstream(file, std::ios::binary) << text;
  return file;
}

Outcome tarebowl(const std::vector<std::string>& arguments, const std::string& standardInput,
                 const std::string& environment) {
  const fs::path in = fileWith("in", standardInput);
  const fs::path out = ownFolder() / "out";
  const fs::path err = ownFolder() / "err";
  std::string command =
      "env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM " + environment + ' ' + quoted(TAREBOWL_PROGRAM);
  for (const std::string& argument : arguments) command += ' ' + quoted(argument);
  command += " <" + quoted(in) + " >" + quoted(out) + " 2>" + quoted(err);
  const int status = std::system(command.c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, contentOf(out), contentOf(err)};
}

std::string sample(const std::string& name) {
  return TAREBOWL_SOURCE_DIR "/sample-data/" + name;
}

}  // namespace tarebowl::app
