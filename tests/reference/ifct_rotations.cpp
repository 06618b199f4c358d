// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/ifct_rotations.h"

#include "core/diet/measure.h"
#include "tests/reference/draw.h"

#include <algorithm>
#include <array>

namespace tarebowl::reference {
namespace {

using quantity::Basis;
using quantity::Grams;

constexpr std::array<const char*, 20> kNutrients{"PROCNT", "FAT",  "FIBTG", "CA",  "P",    "MG",   "K",
                                                 "NA",     "FE",   "ZN",    "CU",  "MN",   "SE",   "VITC",
                                                 "THIA",   "RIBF", "NIA",   "FOL", "VITK", "CARTB"};

class RotationDraw {
 public:
  RotationDraw(const std::vector<diet::DietFood>& table, const RandomRotation& wanted)
      : table_(table), wanted_(wanted), draw_(wanted.seed) {}

  diet::RotationProblem problem() {
    pickFoods();
    hideDays();
    addTargets();
    return std::move(problem_);
  }

 private:
  void pickFoods() {
    diet::BalanceProblem& base = problem_.base;
    base.eater.bodyMass = quantity::Kilograms(draw_.between(0.3, 3.0));
    base.objective.kind =
        wanted_.cheapest ? diet::Objective::Kind::LowestCost : diet::Objective::Kind::Closest;
    const std::size_t listed = wanted_.lists * wanted_.listed;
    std::size_t place = 0;
    for (const std::size_t at : draw_.some(listed + wanted_.others, table_.size())) {
      diet::DietFood food = table_[at];
      food.group =
          place < listed ? std::string("list ").append(std::to_string(place / wanted_.listed)) : "other";
      food.scaleStep = Grams(draw_.chance(0.2) ? wanted_.largestStep : 1.0);
      food.max = Grams(food.scaleStep.value() *
                       static_cast<double>(wanted_.leastLimit + draw_.below(wanted_.limitSpread)));
      food.costPerKg = draw_.between(1.0, 20.0);
      base.foods.push_back(std::move(food));
      ++place;
    }
    problem_.rules.days = wanted_.days;
    for (std::size_t list = 0; list < wanted_.lists; ++list) {
      diet::DayStructure structure;
      structure.id = structure.of.group = std::string("list ").append(std::to_string(list));
      structure.atLeast = wanted_.chosen;
      structure.atMost = wanted_.chosen;
      structure.minEach = Grams(wanted_.minEach);
      problem_.rules.structure.push_back(structure);
    }
    if (wanted_.lists > 0) {
      diet::FoodFrequency run;
      for (std::size_t j = 0; j < listed; ++j) run.of.foods.push_back(base.foods[j].id);
      run.longestRun = 2;
      problem_.rules.frequency.push_back(run);
    }
    problem_.rules.daily.widen = 0.5;
  }

  /// Each list's foods take turns.
  void hideDays() {
    const std::size_t foods = problem_.base.foods.size();
    hidden_ = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(foods));
    for (std::size_t j = 0; j < foods; ++j) {
      const double most = problem_.base.foods[j].max->value();
      const bool isListed = j < wanted_.lists * wanted_.listed;
      const double turns =
          isListed ? static_cast<double>(wanted_.chosen) / static_cast<double>(wanted_.listed) : 1.0;
      hidden_[static_cast<Eigen::Index>(j)] =
          turns * draw_.between(std::min(wanted_.minEach, 0.5 * most), 0.6 * most);
    }
  }

  void addTargets() {
    addTarget(food::nutrients::energy(), Basis::Day);
    constexpr std::array kBases{Basis::DryMatter, Basis::Energy, Basis::Day};
    std::size_t tried = 0;
    while (problem_.base.targets.size() < wanted_.targets) {
      const std::size_t at = tried % kNutrients.size();
      addTarget(food::findByTagname(kNutrients[at]).value(),
                kBases[(tried / kNutrients.size()) % kBases.size()]);
      ++tried;
    }
  }

  void addTarget(food::NutrientId nutrient, Basis basis) {
    animal::Target target{.id = std::string("t").append(std::to_string(problem_.base.targets.size())),
                          .nutrient = nutrient,
                          .min = 1.0,
                          .max = std::nullopt,
                          .unit = food::describe(nutrient).unit,
                          .basis = basis,
                          .origin = {}};
    diet::BalanceProblem probe = problem_.base;
    probe.targets = {target};
    const diet::Measure measure = diet::measuresOf(probe).front();
    const double part = measure.part.at(hidden_);
    if (!(part > 0.0)) return;
    const double moved = draw_.chance(wanted_.displaced) ? draw_.between(0.5, 2.0) : 1.0;
    const double value = part / measure.whole.at(hidden_) * moved;
    const double width = draw_.between(0.03, 0.3);
    const std::size_t sides = draw_.below(4);
    target.min = sides == 1 ? std::nullopt : std::optional(value * (1.0 - width));
    target.max = sides == 2 ? std::nullopt : std::optional(value * (1.0 + width));
    problem_.base.targets.push_back(target);
  }

  const std::vector<diet::DietFood>& table_;
  const RandomRotation& wanted_;
  Draw draw_;
  diet::RotationProblem problem_;
  Eigen::VectorXd hidden_;
};

}  // namespace

diet::RotationProblem randomRotation(const std::vector<diet::DietFood>& table, const RandomRotation& wanted) {
  return RotationDraw(table, wanted).problem();
}

}  // namespace tarebowl::reference
