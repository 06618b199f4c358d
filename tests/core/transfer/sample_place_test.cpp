// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/sample_place.h"

#include "tests/core/store/own_folder.h"

#include <gtest/gtest.h>

namespace tarebowl::transfer {
namespace {

namespace fs = std::filesystem;

TEST(SamplePlace, IsBesideTheProgramWhereverThatWasInstalled) {
  const store::OwnFolder folder;
  const fs::path prefix = folder / "opt";
  fs::create_directories(prefix / "bin");
  fs::create_directories(prefix / "share/tarebowl/sample-data");
  EXPECT_EQ(sampleFolderOf(prefix / "bin/tarebowl"), prefix / "share/tarebowl/sample-data");
}

TEST(SamplePlace, IsTheSourceTreeForAProgramThatWasNotInstalled) {
  const store::OwnFolder folder;
  EXPECT_TRUE(fs::is_regular_file(sampleFolderOf(folder / "bin/tarebowl") / "laboratory.csv"));
  EXPECT_TRUE(fs::is_regular_file(sampleFolderOf({}) / "laboratory.csv"));
}

}  // namespace
}  // namespace tarebowl::transfer
