// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rotation_page.h"

#include "core/diet/rotation_standing.h"
#include "tests/core/exchange/foreign_page.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

using quantity::Grams;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

diet::RotationProblem problem() {
  diet::RotationProblem problem;
  problem.base.invented = true;
  problem.base.eater.count = 4;
  for (const char* name : {"Kale", "Endive <young>"}) {
    diet::DietFood food;
    food.id = food.name = name;
    food.group = "leafy vegetable";
    problem.base.foods.push_back(food);
  }
  problem.rules.days = 8;
  diet::PurchaseLoss peel;
  peel.edible = 0.8;
  problem.rules.purchase = {peel};
  return problem;
}

std::string page(const diet::RotationProblem& of, const std::vector<diet::Diet>& days,
                 const PageTongue& tongue = {}) {
  const diet::RotationStanding standing = diet::standingOf(of, days);
  return rotationAsHtml({.title = "Lemurs",
                         .state = "planned by Nutritionist",
                         .problem = of,
                         .days = days,
                         .period = standing.period,
                         .from = quantity::parseDate("2026-11-30").value()},
                        tongue);
}

TEST(RotationPage, HasEachDayAndWhatIsBoughtForIt) {
  const diet::RotationProblem of = problem();
  // 100 g of kale every day; endive, 50 g, on the eighth day alone
  std::vector<diet::Diet> days(8, diet::Diet{Grams(100), Grams(0)});
  days[7][1] = Grams(50);
  const std::string html = page(of, days);
  EXPECT_THAT(html, HasSubstr("Mon 11-30"));
  EXPECT_THAT(html, HasSubstr("2026-12-07 to 2026-12-07"));  // the second week has one day
  EXPECT_THAT(html, HasSubstr("Endive &lt;young&gt;"));
  EXPECT_THAT(html, Not(HasSubstr("Endive <young>")));
  EXPECT_THAT(html, HasSubstr("2.800"));  // kg offered in the first week: 7 * 4 * 0.1
  EXPECT_THAT(html, HasSubstr("3.500"));  // to buy: 2.8 / 0.8
  EXPECT_THAT(html, HasSubstr("0.600"));  // offered of both in the second week: 4 * (0.1 + 0.05)
  EXPECT_THAT(html, HasSubstr("0.750"));  // to buy: 0.6 / 0.8
  EXPECT_THAT(html, HasSubstr("INVENTED"));
}

TEST(RotationPage, NothingOnItIsSaidInEnglishAlone) {
  diet::RotationProblem of = problem();
  of.base.targets = {{.id = "calcium",
                      .nutrient = food::findByTagname("CA").value(),
                      .min = 5,
                      .max = {},
                      .unit = quantity::Unit::Gram,
                      .basis = quantity::Basis::DryMatter,
                      .origin = {}}};
  animal::ShareRule leaves;
  leaves.group = "leafy vegetable";
  leaves.max = 0.5;
  of.base.shares = {leaves};
  std::set<std::string> asked;
  const std::string html =
      page(of, std::vector<diet::Diet>(8, diet::Diet{Grams(100), Grams(2.5)}), foreignTongue(asked));
  EXPECT_THAT(wordsNotAskedFor(html, {"Lemurs", "planned", "Nutritionist", "Kale", "Endive", "young", "leafy",
                                      "vegetable"}),
              IsEmpty());
  EXPECT_THAT(unknownToLanguages(asked), IsEmpty());
  EXPECT_THAT(html, HasSubstr("2,800"));
}

}  // namespace
}  // namespace tarebowl::exchange
