// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/include_rules.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::architecture {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(IncludeDirection, NoArrowOfTheHouseRunsBack) {
  const auto findings = checkIncludes(readSources(TAREBOWL_SOURCE_DIR));
  EXPECT_TRUE(findings.empty()) << describe(findings);
}

TEST(IncludeDirection, TheTestSeesTheRealHouse) {
  const auto sources = readSources(TAREBOWL_SOURCE_DIR);
  const auto has = [&](const char* path) {
    return std::ranges::find(sources, path, &SourceFile::path) != sources.end();
  };
  EXPECT_TRUE(has("core/diet/solve.h"));
  EXPECT_TRUE(has("core/solver/solve.h"));
  EXPECT_TRUE(has("core/quantity/unit.cpp"));
  EXPECT_TRUE(has("tests/architecture/include_rules.cpp"));
}

/// A house of one file with one include line.
std::vector<Finding> including(const std::string& path, const std::string& line) {
  return checkIncludes(std::vector<SourceFile>{{path, {line}}});
}

struct Arrow {
  const char* from;
  const char* include;
  const char* what;
};

class ForbiddenArrow : public testing::TestWithParam<Arrow> {};

TEST_P(ForbiddenArrow, IsReportedWithItsLine) {
  const Arrow& arrow = GetParam();
  EXPECT_THAT(including(arrow.from, std::string("#include ") + arrow.include),
              ElementsAre(Finding{arrow.from, 1, arrow.what}));
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(TestOfTheTest, ForbiddenArrow, testing::Values(
  Arrow{"core/food/a.h",      "\"core/diet/problem.h\"",       "the arrow from core/food/ to core/diet/ runs back: core/diet/problem.h"},
  Arrow{"core/quantity/a.h",  "\"core/food/nutrient.h\"",      "the arrow from core/quantity/ to core/food/ runs back: core/food/nutrient.h"},
  Arrow{"core/diet/a.cpp",    "\"core/exchange/a.h\"",         "the arrow from core/diet/ to core/exchange/ runs back: core/exchange/a.h"},
  Arrow{"core/intake/a.cpp",  "\"core/health/a.h\"",           "the arrow from core/intake/ to core/health/ runs back: core/health/a.h"},
  Arrow{"core/exchange/a.h",  "\"core/store/a.h\"",            "the arrow from core/exchange/ to core/store/ runs back: core/store/a.h"},
  Arrow{"core/store/a.h",     "\"core/transfer/a.h\"",         "the arrow from core/store/ to core/transfer/ runs back: core/transfer/a.h"},
  Arrow{"core/exchange/a.h",  "\"ui/frame/window.h\"",         "the arrow from core/exchange/ to ui/ runs back: ui/frame/window.h"},
  Arrow{"ui/diets/a.cpp",     "\"app/command_line.h\"",        "the arrow from ui/ to app/ runs back: app/command_line.h"},
  Arrow{"core/diet/a.h",      "\"../exchange/a.h\"",           "the arrow from core/diet/ to core/exchange/ runs back: core/exchange/a.h"},
  Arrow{"core/diet/a.h",      "\"core/utils/a.h\"",            "a room the direction of dependence does not know: core/utils/a.h"},
  Arrow{"core/solver/a.cpp",  "\"core/food/composition.h\"",   "the solver knows nothing of the trade: core/food/composition.h"},
  Arrow{"core/solver/a.cpp",  "\"core/quantity/quantity.h\"",  "the solver knows nothing of the trade: core/quantity/quantity.h"},
  Arrow{"core/solver/a.cpp",  "<core/diet/problem.h>",         "the solver knows nothing of the trade: core/diet/problem.h"},
  Arrow{"core/exchange/a.h",  "\"core/solver/program.h\"",     "only diet speaks to the solver: core/solver/program.h"},
  Arrow{"ui/diets/a.cpp",     "\"core/solver/solve.h\"",       "only diet speaks to the solver: core/solver/solve.h"},
  Arrow{"core/diet/a.cpp",    "<QString>",                     "Qt in core: QString"},
  Arrow{"core/solver/a.cpp",  "<QtCore/QObject>",              "Qt in core: QtCore/QObject"},
  Arrow{"core/exchange/a.h",  "<qglobal.h>",                   "Qt in core: qglobal.h"},
  Arrow{"core/diet/a.cpp",    "\"tests/core/diet/a.h\"",       "a test is included outside the tests: tests/core/diet/a.h"},
  Arrow{"resources/a.h",      "\"core/food/nutrient.h\"",      "resources include nothing of the house: core/food/nutrient.h"}
));
// clang-format on

TEST(IncludeDirection, ARelativeIncludeIsFollowedToItsRoom) {
  const std::vector<SourceFile> house = {
      {"core/exchange/problem_json.h", {}},
      {"core/diet/balance.cpp", {"", "  #  include \"../exchange/problem_json.h\""}}};
  EXPECT_THAT(checkIncludes(house),
              ElementsAre(Finding{
                  "core/diet/balance.cpp", 2,
                  "the arrow from core/diet/ to core/exchange/ runs back: core/exchange/problem_json.h"}));
}

TEST(IncludeDirection, EveryFindingOfAHouseIsReported) {
  const std::vector<SourceFile> house = {
      {"core/food/energy.h", {"#pragma once", "#include \"core/diet/problem.h\"", "#include <QVector>"}},
      {"core/solver/solve.cpp", {"#include \"core/food/energy.h\""}}};
  EXPECT_EQ(checkIncludes(house).size(), 3u);
}

TEST(IncludeDirection, ArrowsThatRunForwardPass) {
  EXPECT_THAT(including("app/main.cpp", "#include \"ui/frame/window.h\""), IsEmpty());
  EXPECT_THAT(including("ui/diets/ladder.h", "#include <QWidget>"), IsEmpty());
  EXPECT_THAT(including("ui/diets/ladder.h", "#include \"core/quantity/unit.h\""), IsEmpty());
  EXPECT_THAT(including("core/exchange/a.cpp", "#include \"core/diet/solve.h\""), IsEmpty());
  EXPECT_THAT(including("core/diet/a.cpp", "#include \"core/solver/solve.h\""), IsEmpty());
  EXPECT_THAT(including("core/food/nutrient.cpp", "#include \"resources/embedded.h\""), IsEmpty());
  EXPECT_THAT(including("core/solver/a.cpp", "#include <queue>"), IsEmpty());
  EXPECT_THAT(including("tests/core/food/a.cpp", "#include \"core/solver/solve.h\""), IsEmpty());
  EXPECT_THAT(including("core/food/a.h", "// #include \"core/diet/problem.h\""), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::architecture
