// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/own_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace tarebowl::store {

namespace fs = std::filesystem;

OwnFolder::OwnFolder() {
  const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
  std::string name = std::string(test->test_suite_name()) + '.' + test->name();
  std::replace(name.begin(), name.end(), '/', '.');
  folder_ = fs::path(::testing::TempDir()) / "tarebowl-store" / name;
  fs::remove_all(folder_);
  fs::create_directories(folder_);
}

std::string contentOf(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

void write(const fs::path& file, const std::string& content) {
  std::ofstream(file, std::ios::binary) << content;
}

}  // namespace tarebowl::store
