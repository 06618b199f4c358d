// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/file_rules.h"

#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>

namespace tarebowl::architecture {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

const char* const kCopyright = "// SPDX-FileCopyrightText: 2026 The Tarebowl authors";
const char* const kLicence = "// SPDX-License-Identifier: GPL-3.0-or-later";

TEST(FilesOfTheHouse, EachSaysWhoseItIsAndUnderWhichLicence) {
  const auto findings = checkLicenceHeaders(readSources(TAREBOWL_SOURCE_DIR));
  EXPECT_TRUE(findings.empty()) << describe(findings);
}

TEST(FilesOfTheHouse, ALongOneSaysWhy) {
  const auto findings = checkLengths(readSources(TAREBOWL_SOURCE_DIR));
  EXPECT_TRUE(findings.empty()) << describe(findings);
}

TEST(FilesOfTheHouse, HeadersAreGuarded) {
  const auto findings = checkGuards(readSources(TAREBOWL_SOURCE_DIR));
  EXPECT_TRUE(findings.empty()) << describe(findings);
}

TEST(FilesOfTheHouse, EveryTopFolderNamesTheFirstFilesToRead) {
  const auto findings = checkReadmes(TAREBOWL_SOURCE_DIR);
  EXPECT_TRUE(findings.empty()) << describe(findings);
}

TEST(FileRules, AMissingLicenceLineIsReported) {
  const std::vector<SourceFile> files = {{"core/a.h", {kCopyright, kLicence, "#pragma once"}},
                                         {"app/run", {"#!/usr/bin/env bash", kCopyright, kLicence}},
                                         {"core/b.h", {kCopyright, "", "", kLicence}},
                                         {"core/c.h", {}}};
  EXPECT_THAT(checkLicenceHeaders(files),
              ElementsAre(Finding{"core/b.h", 0, "no SPDX-License-Identifier line"},
                          Finding{"core/c.h", 0, "no SPDX-FileCopyrightText line"},
                          Finding{"core/c.h", 0, "no SPDX-License-Identifier line"}));
}

TEST(FileRules, AFileOverTheLimitNeedsAReason) {
  SourceFile atTheLimit{"core/a.cpp", std::vector<std::string>(kLongFile)};
  SourceFile over{"core/b.cpp", std::vector<std::string>(kLongFile + 1)};
  SourceFile withReason = over;
  withReason.path = "core/c.cpp";
  withReason.lines[2] = "// Long because a table belongs in one place.";
  EXPECT_THAT(checkLengths(std::vector{atTheLimit, over, withReason}),
              ElementsAre(Finding{"core/b.cpp", 0, "601 lines and no reason in its first lines"}));
}

TEST(FileRules, AHeaderWithoutGuardIsReported) {
  const std::vector<SourceFile> files = {
      {"core/a.h", {"#pragma once"}}, {"core/b.h", {""}}, {"core/b.cpp", {""}}};
  EXPECT_THAT(checkGuards(files), ElementsAre(Finding{"core/b.h", 0, "no #pragma once"}));
}

TEST(FileRules, AReadmeThatIsMissingOrNamesNothingIsReported) {
  const fs::path house = fs::path(testing::TempDir()) / "tarebowl_readme_rule";
  fs::remove_all(house);
  for (const char* folder : {"app", "core", "ui", "build", ".git"}) fs::create_directories(house / folder);
  std::ofstream(house / "core/a.h") << "\n";
  std::ofstream(house / "core/b.h") << "\n";
  std::ofstream(house / "core/README.md") << "Start with `a.h`, then `core/b.h`.\n";
  std::ofstream(house / "ui/README.md") << "Start with `gone.h` and `lost.h`.\n";
  EXPECT_THAT(checkReadmes(house),
              ElementsAre(Finding{"app/README.md", 0, "missing"},
                          Finding{"ui/README.md", 0, "does not name the first files to read"}));
  fs::remove_all(house);
}

}  // namespace
}  // namespace tarebowl::architecture
