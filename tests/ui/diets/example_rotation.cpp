// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/diets/example_rotation.h"

#include "core/exchange/plain_rules.h"

#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

diet::DietFood foodOf(const std::string& name, double step) {
  diet::DietFood food;
  food.id = food.name = name;
  food.group = "made";
  food.scaleStep = Grams(step);
  food.composition.set(*food::findByTagname("CA"), {.amount = quantity::AsFedContent(100)});
  return food;
}

/// At least 20 mg of calcium a day: 1 mg a gram, so 16 g bring 16 mg.
animal::Target calcium() {
  return {.id = "ca",
          .nutrient = *food::findByTagname("CA"),
          .min = 20.0,
          .max = {},
          .unit = quantity::Unit::Milligram,
          .basis = quantity::Basis::Day,
          .origin = {}};
}

}  // namespace

RotationView exampleRotation() {
  RotationView view;
  transfer::RotationDesk& desk = view.on.desk;
  desk.from = quantity::parseDate("2026-11-30").value();
  desk.problem.base.title = "Made-up diet";
  desk.problem.base.eater.count = 2;
  desk.problem.base.foods = {foodOf("kale", 1), foodOf("crickets", 0.5), foodOf("mealworm", 1)};
  desk.problem.base.foods[2].min = Grams(1);
  desk.problem.base.foods[2].max = Grams(1);
  desk.problem.base.targets = {calcium()};
  desk.problem.rules.days = 3;
  desk.problem.rules.daily.widen = 0.25;  // 15 mg will do for a day
  diet::Allowance allowance{.food = "mealworm", .low = Grams(1), .high = Grams(1)};
  desk.places = {{.food = "kale"}, {.food = "crickets"}, {.food = "mealworm", .allowance = allowance}};
  view.on.kept.record.diet = "made-up";
  view.on.kept.record.from = desk.from;
  view.on.kept.record.until = desk.until();
  view.on.kept.record.plannedFrom = desk.from;
  view.on.kept.record.who = "Nutritionist";
  view.on.kept.record.at = "2026-11-28T09:00:00Z";
  view.on.days = {
      {Grams(4), Grams(12), Grams(1)}, {Grams(4), Grams(0), Grams(1)}, {Grams(4), Grams(12), Grams(1)}};
  view.standing = diet::standingOf(desk.problem, view.on.days);
  return view;
}

diet::RotationPlan plainPlan(const diet::RotationProblem& problem, const diet::RotationOptions& /*options*/) {
  diet::RotationPlan plan;
  const auto& foods = problem.base.foods;
  plan.days.assign(static_cast<std::size_t>(problem.rules.days),
                   problem.base.reference.value_or(diet::Diet(foods.size())));
  for (const diet::LockedCell& cell : problem.rules.locked) {
    if (cell.grams > Grams(90)) {
      plan.status = diet::RotationStatus::Impossible;
      plan.reason = "hard rules";
      plan.days.clear();
      return plan;
    }
    const auto food = std::ranges::find(foods, cell.food, &diet::DietFood::id);
    plan.days[static_cast<std::size_t>(cell.day)][static_cast<std::size_t>(food - foods.begin())] =
        cell.grams;
  }
  for (const diet::FedDay& fed : problem.rules.fed) plan.days[static_cast<std::size_t>(fed.day)] = fed.fed;
  plan.status = diet::RotationStatus::Compromise;
  return plan;
}

PlannerAlone::PlannerAlone(const ExampleDiets& example, quantity::Date today)
    : planner(
          [this](const diet::RotationProblem& problem, const diet::RotationOptions& options) {
            begunFrom = options.start;
            return plainPlan(problem, options);
          },
          collection, [today] { return today; }) {
  QObject::connect(&planner, &RotationPlanner::told, &planner, [this](const QString& what) { told = what; });
  collection.setPerson(QStringLiteral("Keeper A"));
  collection.open({.name = QStringLiteral("Herd"), .file = example.file(), .invented = true},
                  example.opener());
  settle();
  planner.open("tenrec-evening", example.draft(), 1);
  settle();
}

void PlannerAlone::settle() {
  EXPECT_TRUE(QTest::qWaitFor([this] { return collection.isIdle() && !planner.isPlanning(); }, 20'000));
}

void PlannerAlone::plan(quantity::Date from) {
  planner.plan(exchange::writeRotationRules({.days = 7, .longestRun = std::nullopt}), from);
  settle();
  ASSERT_NE(planner.view(), nullptr) << told.toStdString();
}

}  // namespace tarebowl::ui
