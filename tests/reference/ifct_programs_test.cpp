// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/ifct_programs.h"

#include "tests/reference/ifct_foods.h"

#include <gtest/gtest.h>

namespace tarebowl::reference {
namespace {

using Targets = ProgramKind::Targets;

class ProgramsOfTheIndianTables : public testing::Test {
 protected:
  void SetUp() override {
    const auto file = ifctFile();
    if (!file) GTEST_SKIP() << ifctMissingNote();
    table = readIfctTable(*file);
  }
  IfctTable table;
};

TEST_F(ProgramsOfTheIndianTables, MostOf542FoodsHaveKnownWaterAndEverySizeFindsItsRows) {
  EXPECT_EQ(table.groups.size(), 528u);
  for (ProgramKind kind : {kSmall, kMedium, kForty, kLarge, kLargest}) {
    const solver::Program program = seededProgram(table, kind, 7).program;
    EXPECT_EQ(program.rowCount(), kind.rows);
    EXPECT_EQ(program.variableCount(), kind.foods);
    EXPECT_TRUE((program.rowLower.array() < program.rowUpper.array()).all());
    EXPECT_GT(program.rows.cwiseAbs().rowwise().maxCoeff().minCoeff(), 0.0);
  }
}

TEST_F(ProgramsOfTheIndianTables, TheHiddenDietMeetsEveryBandUnlessTheyAreMoved) {
  for (ProgramKind kind : {kSmall, kMedium, kLarge}) {
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
      kind.targets = Targets::Hard;
      const SeededProgram hard = seededProgram(table, kind, seed);
      EXPECT_LE(solver::hardViolation(hard.program, hard.hidden), 0.0);
      kind.targets = Targets::Unmet;
      const SeededProgram unmet = seededProgram(table, kind, seed);
      EXPECT_GT(solver::elasticViolation(unmet.program, unmet.hidden), 0.0);
    }
  }
}

TEST_F(ProgramsOfTheIndianTables, TheSameSeedDrawsTheSameProgramOnEveryMachine) {
  const SeededProgram first = seededProgram(table, kSmall, 1);
  const SeededProgram again = seededProgram(table, kSmall, 1);
  EXPECT_EQ(first.program.rows, again.program.rows);
  EXPECT_NE(first.program.rows, seededProgram(table, kSmall, 2).program.rows);
}

TEST_F(ProgramsOfTheIndianTables, ChoicesAndScatterHoldForTheHiddenDietToo) {
  ProgramKind kind = kLarge;
  kind.twoOfSix = true;
  kind.guard = 1.6448536269514722;
  kind.targets = Targets::Hard;
  const SeededProgram seeded = seededProgram(table, kind, 3);
  ASSERT_EQ(seeded.program.choices.size(), 2u);
  EXPECT_EQ((seeded.hidden.head(6).array() >= 5.0).count(), 2);
  EXPECT_EQ((seeded.hidden.head(6).array() > 0.0).count(), 2);
  ASSERT_TRUE(seeded.program.scatter);
  EXPECT_GT(seeded.program.scatter->maxCoeff(), 0.0);
  EXPECT_LE(solver::hardViolation(seeded.program, seeded.hidden), 1e-12);
}

}  // namespace
}  // namespace tarebowl::reference
