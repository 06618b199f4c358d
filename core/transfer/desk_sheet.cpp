// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/desk_sheet.h"

#include "core/exchange/problem_json.h"

#include <algorithm>
#include <utility>

namespace tarebowl::transfer {

diet::ProblemOfVersion asDecided(const DeskDiet& desk) {
  diet::ProblemOfVersion made = desk.made;
  const auto& decided = desk.version.record.decided;
  if (!decided || desk.decisionUnreadable) return made;
  diet::BalanceProblem problem = exchange::parseProblem(decided->problem, "what was decided on");
  if (!std::ranges::equal(problem.foods, made.problem.foods, {}, &diet::DietFood::id, &diet::DietFood::id))
    return made;
  // What was decided on as eaten stays as it was decided.
  const bool asEaten =
      std::ranges::any_of(problem.foods, [](const diet::DietFood& food) { return food.eatenFraction < 1.0; });
  made.problem = desk.counted == CountedAs::Eaten && !asEaten
                     ? countedEaten(std::move(problem), made.places, desk.eaten)
                     : std::move(problem);
  return made;
}

exchange::DietSheet sheetOf(const DeskDiet& desk, const exchange::PageTongue& tongue) {
  return exchange::sheetOf({.diet = desk.diet.record,
                            .species = desk.group.species.scientificName,
                            .section = desk.group.group.record.section},
                           desk.version.record.version, asDecided(desk), tongue);
}

}  // namespace tarebowl::transfer
