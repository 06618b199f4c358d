// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/observation_file.h"

#include "core/exchange/problem_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace tarebowl::exchange {
namespace {

/// The table with one line under its titles.
std::vector<health::Observation> read(const std::string& line) {
  const auto file = std::filesystem::temp_directory_path() /
                    ("tarebowl-observations-" +
                     std::string(testing::UnitTest::GetInstance()->current_test_info()->name()) + ".csv");
  std::ofstream(file) << "date,time,group,kind,scale,score,note,by\n" << line << '\n';
  auto observations = readObservations(file);
  std::filesystem::remove(file);
  return observations;
}

std::string refusalOf(const std::string& line) {
  try {
    (void)read(line);
  } catch (const FormatError& error) {
    return error.what();
  }
  return "";
}

TEST(ObservationFile, aScoreIsReadWithAllThatItsScaleSays) {
  const auto seen = read("2026-07-29,08:07,lemurs,faeces,faeces-7,6,soft,Keeper A");
  ASSERT_EQ(seen.size(), 1U);
  EXPECT_EQ(seen[0].group, "lemurs");
  EXPECT_EQ(seen[0].time, "08:07");
  EXPECT_EQ(seen[0].faeces, (health::FaecalScore{"faeces-7", 6, 1, 7, 4, health::Softer::Higher}));
  EXPECT_EQ(seen[0].note, "soft");
}

TEST(ObservationFile, whatIsNoObservationIsRefusedWithItsLine) {
  EXPECT_THAT(refusalOf("2026-07-29,08:07,lemurs,faeces,,6,,Keeper A"), testing::HasSubstr("scale"));
  EXPECT_THAT(refusalOf("2026-07-29,08:07,lemurs,faeces,faeces-7,8,,Keeper A"),
              testing::HasSubstr("on the scale"));
  EXPECT_THAT(refusalOf("2026-07-29,8.07,lemurs,vomiting,,,,Keeper A"), testing::HasSubstr("HH:MM"));
  EXPECT_THAT(refusalOf("2026-07-29,08:07,lemurs,dancing,,,,Keeper A"), testing::HasSubstr("faeces"));
  EXPECT_THAT(refusalOf("2026-07-29,08:07,lemurs,treatment,,,,Keeper A"), testing::HasSubstr("kind"));
}

}  // namespace
}  // namespace tarebowl::exchange
