// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/diets/example_diets.h"
#include "ui/diets/rotation_planner.h"

#include <string>

namespace tarebowl::ui {

/// A rotation without a collection: kale, crickets and a mealworm that is given unweighed, three days from
/// Monday 2026-11-30, for two animals. Kale 4 g and crickets 12 g a day, no crickets on the second.
[[nodiscard]] RotationView exampleRotation();

/// Plans what the version gives each day, with what is locked and fed as it is; nothing where crickets are
/// locked above 90 g.
[[nodiscard]] diet::RotationPlan plainPlan(const diet::RotationProblem& problem,
                                           const diet::RotationOptions&);

/// A planner on the draft of ExampleDiets, with what it told last.
struct PlannerAlone {
  explicit PlannerAlone(const ExampleDiets& example, quantity::Date today = exampleToday());
  void settle();
  /// Seven days from a day on, by rules that ask for nothing.
  void plan(quantity::Date from);

  OpenCollection collection{};
  RotationPlanner planner;
  QString told{};
  std::vector<diet::Diet> begunFrom{};  ///< what the last planning began from
};

}  // namespace tarebowl::ui
