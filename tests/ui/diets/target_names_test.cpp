// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/target_names.h"

#include "tests/ui/diets/example_diet.h"
#include "ui/diets/problem_files.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr RungRef kInsectShare{diet::TargetKind::Share, 0};

TEST(TargetNames, AShareNamesItsOwnSourceAndModelSpecies) {
  diet::BalanceProblem problem = exampleProblem();
  problem.shares[0].origin = {"A published guideline", animal::Provenance::FromMemory, "hedgehog"};
  const QString text = originText(problem, kInsectShare);
  EXPECT_TRUE(text.contains(QStringLiteral("A published guideline"))) << text.toStdString();
  EXPECT_TRUE(text.contains(QStringLiteral("hedgehog"))) << text.toStdString();
  EXPECT_TRUE(text.contains(QStringLiteral("memory"))) << text.toStdString();
  EXPECT_TRUE(modelSpecies(problem).contains(QStringLiteral("hedgehog")));
}

TEST(TargetNames, AShareWithoutASourceClaimsNone) {
  EXPECT_EQ(originText(exampleProblem(), kInsectShare), QString());
}

}  // namespace
}  // namespace tarebowl::ui
