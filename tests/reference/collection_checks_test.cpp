// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/collection_checks.h"

#include "tests/reference/ifct_table.h"
#include "tests/reference/imported_tables.h"
#include "tests/reference/reference_data.h"
#include "tests/reference/sr28.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace tarebowl::reference {
namespace {

using food::CheckCode;

constexpr quantity::Date kDay{std::chrono::year{2026}, std::chrono::November, std::chrono::day{25}};

struct Measured {
  std::vector<std::string> codes;                 ///< of the foods
  std::map<CheckCode, std::set<std::string>> of;  ///< codes of the foods that a check doubts

  [[nodiscard]] double share(CheckCode code) const {
    const auto doubted = of.find(code);
    return doubted == of.end()
               ? 0.0
               : static_cast<double>(doubted->second.size()) / static_cast<double>(codes.size());
  }
};

/// TAREBOWL_SHOW_FINDINGS=1 prints every finding, for a person to judge.
Measured measure(const PublishedTable& table) {
  exchange::MemorySink sink;
  (void)exchange::importTable(table.input, table.mapping, sink);
  const auto foods = checkedFoods(sink);
  Measured measured;
  for (const auto& [code, food] : sink.foods) measured.codes.push_back(code);
  for (const auto& it : food::checkFoods(foods, kDay)) {
    measured.of[it.finding.code].insert(measured.codes[it.food]);
    if (std::getenv("TAREBOWL_SHOW_FINDINGS") == nullptr) continue;
    const auto& ids = it.finding.nutrients;
    std::cout << static_cast<int>(it.finding.code) << '\t' << foods[it.food].name << '\t'
              << (ids.empty() ? "" : food::describe(ids[0]).tagname) << '\t' << it.finding.found << '\t'
              << it.finding.against << '\t' << it.robustZ << '\t' << (it.other ? foods[*it.other].name : "")
              << '\n';
  }
  for (const auto& [code, doubted] : measured.of)
    ::testing::Test::RecordProperty("foods_with_code_" + std::to_string(static_cast<int>(code)),
                                    static_cast<int>(doubted.size()));
  return measured;
}

/// A check that doubts more than so many foods of a published table is noise.
constexpr double kNoise = 0.025;

TEST(ChecksOverSr28, DoubtFewFoods) {
  const auto table = sr28Table();
  if (!table) GTEST_SKIP() << missingNote(kSr28Amounts);
  const Measured measured = measure(*table);
  for (const auto& [code, doubted] : measured.of)
    EXPECT_LT(measured.share(code), kNoise) << static_cast<int>(code);
}

TEST(ChecksOverSr28, FindWhatIsWrongInIt) {
  const auto table = sr28Table();
  if (!table) GTEST_SKIP() << missingNote(kSr28Amounts);
  Measured measured = measure(*table);
  // Nutrient 619 (18:3) of lamb foreshank, lean, raw: 0.058 from 3 samples with a standard error of 0.067,
  // more than the mean, which no three amounts can have.
  EXPECT_TRUE(measured.of[CheckCode::ScatterWiderThanValue].contains("17288"));
  // Twenty breads are given 0.01 g protein in 100 g; other baked foods have some 7 g.
  for (int code = 28377; code <= 28396; ++code) {
    EXPECT_TRUE(measured.of[CheckCode::UnitSlip].contains(std::to_string(code))) << code;
  }
}

TEST(ChecksOverIfct, DoubtFewFoodsButForEnergyAndCarbohydrateWhichTheTableDoesNotHaveByDifference) {
  const auto table = ifctTableWithMapping();
  if (!table) GTEST_SKIP() << ifctMissingNote();
  const Measured measured = measure(*table);
  for (const CheckCode code :
       {CheckCode::UnitSlip, CheckCode::RatioFarFromGroup, CheckCode::MineralsOverAsh, CheckCode::SameName,
        CheckCode::SameComposition, CheckCode::PartsOverWhole, CheckCode::ValueOverFood})
    EXPECT_LT(measured.share(code), kNoise) << static_cast<int>(code);
}

}  // namespace
}  // namespace tarebowl::reference
