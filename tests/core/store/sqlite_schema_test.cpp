// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a file's schema is the program's own is told from the statements, where the engine would write down
// the same.
#include "core/store/sqlite_schema.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace tarebowl::store {
namespace {

std::vector<std::string> asTexts(SqliteSchema schema) {
  std::erase_if(schema, [](const SchemaLine& line) { return line.text.empty(); });
  std::vector<std::string> texts;
  for (const SchemaLine& line : schema) texts.push_back(line.kind + " " + line.name + ": " + line.text);
  std::ranges::sort(texts);
  return texts;
}

TEST(SqliteSchema, OfEveryVersionStatementsSayWhatTheEngineMakesOfThem) {
  const auto steps = migrations();
  for (std::size_t count = 0; count <= steps.size(); ++count) {
    const auto written = schemaWrittenBy(steps.first(count));
    ASSERT_TRUE(written) << count;
    EXPECT_EQ(asTexts(*written), asTexts(schemaMadeBy(steps.first(count)))) << count;
  }
}

TEST(SqliteSchema, WhatDependsOnATableGoesWithIt) {
  const std::array<Migration, 1> steps{
      {{1, "one", "CREATE TABLE a (b TEXT) /* append-only */;\nCREATE INDEX c ON a (b);\nDROP TABLE a;\n"}}};
  const auto written = schemaWrittenBy(steps);
  ASSERT_TRUE(written);
  EXPECT_TRUE(written->empty());
}

class NotFollowed : public testing::TestWithParam<const char*> {};

TEST_P(NotFollowed, IsLeftToTheEngine) {
  const std::array<Migration, 1> steps{{{1, "one", GetParam()}}};
  EXPECT_FALSE(schemaWrittenBy(steps));
}

INSTANTIATE_TEST_SUITE_P(Statement, NotFollowed,
                         testing::Values("CREATE VIEW a AS SELECT 1;",
                                         "CREATE TABLE a (b TEXT);\nALTER TABLE a ADD COLUMN c TEXT;",
                                         "CREATE TABLE a (b TEXT);\nCREATE INDEX c ON a (b);\n"
                                         "ALTER TABLE a RENAME TO d;",
                                         "DROP TABLE a;"));

}  // namespace
}  // namespace tarebowl::store
