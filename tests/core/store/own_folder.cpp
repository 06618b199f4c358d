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
  test_ = std::string(test->test_suite_name()) + '.' + test->name();
  std::replace(test_.begin(), test_.end(), '/', '.');
  folder_ =
      fs::path(::testing::TempDir()) / (testsAreOnServer() ? "tarebowl-server" : "tarebowl-store") / test_;
  fs::remove_all(folder_);
  fs::create_directories(folder_);
}

fs::path OwnFolder::collection(const std::string& name) const {
  if (!testsAreOnServer()) return folder_ / (name + ".tarebowl");
  databases_.push_back(std::make_unique<OwnDatabase>(test_ + '/' + name));
  return databases_.back()->address();
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
