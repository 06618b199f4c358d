// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/version_problem.h"

#include "core/diet/allowance.h"

#include <algorithm>
#include <utility>

namespace tarebowl::diet {

namespace {

using quantity::Grams;

/// Calls visit(rule) for every rule of the problem whose bounds a version may change.
template <class Problem, class Visit>
void visitRules(Problem& problem, Visit visit) {
  for (auto& target : problem.targets) visit(target);
  for (auto& ratio : problem.ratios) visit(ratio);
  for (auto& share : problem.shares) visit(share);
}

template <class Bounds>
auto boundsOf(Bounds& bounds, const std::string& rule) {
  return std::ranges::find(bounds, rule, &ChangedBound::rule);
}

bool isNotCounted(const std::vector<RuleNotCounted>& rules, const std::string& id) {
  return std::ranges::find(rules, id, &RuleNotCounted::id) != rules.end();
}

/// The foods of a version beside what they are in it.
class Bowl {
 public:
  explicit Bowl(const std::map<std::string, DietFood>& foods) : known_(foods) {}

  void add(const DietLine& line, ProblemOfVersion& made) {
    auto food = known(line.food, made);
    if (!food) return;
    if (!line.meal.empty() && isTaken(food->id)) food->id += " (" + line.meal + ")";
    food->min = line.min;
    food->max = line.max;
    if (!line.preparation.empty()) food->preparation = line.preparation;
    put(std::move(*food), {line.food, line.purpose, line.meal, {}}, line.amount, line.locked, made);
  }

  void add(const Allowance& allowance, ProblemOfVersion& made) {
    const auto food = known(allowance.food, made);
    if (!food) return;
    DietFood given = asFood(allowance, *food);
    const Grams middle = given.min;
    put(std::move(given), {allowance.food, allowance.purpose, {}, allowance}, middle, false, made);
  }

  [[nodiscard]] std::vector<DietFood> takeFoods() { return std::move(foods_); }
  [[nodiscard]] Diet takeAmounts() { return std::move(amounts_); }

 private:
  std::optional<DietFood> known(const std::string& code, ProblemOfVersion& made) const {
    const auto food = known_.find(code);
    if (food != known_.end()) return food->second;
    if (std::ranges::find(made.missingFoods, code) == made.missingFoods.end())
      made.missingFoods.push_back(code);
    return std::nullopt;
  }

  [[nodiscard]] bool isTaken(const std::string& id) const {
    return std::ranges::find(foods_, id, &DietFood::id) != foods_.end();
  }

  /// The same food may stand in two meals, and be given as two treats.
  [[nodiscard]] std::string ownId(const std::string& id) const {
    std::string own = id;
    for (int number = 2; isTaken(own); ++number) own = id + " " + std::to_string(number);
    return own;
  }

  void put(DietFood food, PlaceInVersion place, Grams amount, bool locked, ProblemOfVersion& made) {
    food.id = ownId(food.id);
    foods_.push_back(std::move(food));
    amounts_.push_back(amount);
    made.places.push_back(std::move(place));
    made.locked.push_back(locked);
  }

  const std::map<std::string, DietFood>& known_;
  std::vector<DietFood> foods_;
  Diet amounts_;
};

void changeBounds(const DietVersion& version, ProblemOfVersion& made) {
  visitRules(made.problem, [&](const auto& rule) {
    made.profileBounds.push_back({rule.id, rule.min, rule.max, {}});
  });
  visitRules(made.problem, [&](auto& rule) {
    const auto changed = boundsOf(version.changedBounds, rule.id);
    if (changed == version.changedBounds.end()) return;
    if (changed->min == rule.min && changed->max == rule.max) return;
    if (changed->reason.empty() && loosensHardRule(made, rule.id, changed->min, changed->max)) {
      made.boundsWithoutReason.push_back(rule.id);
      return;
    }
    rule.min = changed->min;
    rule.max = changed->max;
    rule.origin = ownBoundOrigin(changed->reason);
  });
  for (const ChangedBound& bound : version.changedBounds)
    if (boundsOf(made.profileBounds, bound.rule) == made.profileBounds.end() &&
        !isNotCounted(made.notCounted, bound.rule))
      made.boundsOfNoRule.push_back(bound.rule);
}

/// Rules that the version has beside those of its profile; one of a group that no food is of cannot be
/// judged.
void addOwnRules(const DietVersion& version, ProblemOfVersion& made) {
  BalanceProblem& problem = made.problem;
  const auto hasFoodOf = [&](const std::string& group, const std::string& id) {
    const bool has = std::ranges::find(problem.foods, group, &DietFood::group) != problem.foods.end();
    if (!has) made.notCounted.push_back({id, NotCounted::NoFoodOfGroup});
    return has;
  };
  for (const animal::ShareRule& share : version.shares)
    if (hasFoodOf(share.group, share.id)) problem.shares.push_back(share);
  for (const animal::ChoiceRule& choice : version.choices)
    if (hasFoodOf(choice.group, animal::idOf(choice))) problem.choices.push_back(choice);
}

std::vector<ChangedBound> changedBounds(const BalanceProblem& problem, const ProblemOfVersion& opened,
                                        const DietVersion& before) {
  std::vector<ChangedBound> changed;
  for (const ChangedBound& bound : before.changedBounds)
    if (boundsOf(opened.profileBounds, bound.rule) == opened.profileBounds.end() ||
        std::ranges::find(opened.boundsWithoutReason, bound.rule) != opened.boundsWithoutReason.end())
      changed.push_back(bound);
  visitRules(problem, [&](const auto& rule) {
    const auto profile = boundsOf(opened.profileBounds, rule.id);
    if (profile == opened.profileBounds.end() || (profile->min == rule.min && profile->max == rule.max))
      return;
    const auto stated = boundsOf(before.changedBounds, rule.id);
    changed.push_back(
        {rule.id, rule.min, rule.max, stated == before.changedBounds.end() ? std::string() : stated->reason});
  });
  return changed;
}

std::vector<animal::ShareRule> ownShares(const BalanceProblem& problem, const ProblemOfVersion& opened,
                                         const DietVersion& before) {
  std::vector<animal::ShareRule> own;
  for (const animal::ShareRule& share : problem.shares)
    if (boundsOf(opened.profileBounds, share.id) == opened.profileBounds.end()) own.push_back(share);
  for (const animal::ShareRule& share : before.shares)
    if (isNotCounted(opened.notCounted, share.id)) own.push_back(share);
  return own;
}

std::vector<animal::ChoiceRule> ownChoices(const BalanceProblem& problem, const ProblemOfVersion& opened,
                                           const DietVersion& before) {
  std::vector<animal::ChoiceRule> own;
  for (std::size_t i = opened.profileChoices; i < problem.choices.size(); ++i)
    own.push_back(problem.choices[i]);
  for (const animal::ChoiceRule& choice : before.choices)
    if (isNotCounted(opened.notCounted, animal::idOf(choice))) own.push_back(choice);
  return own;
}

}  // namespace

animal::TargetOrigin ownBoundOrigin(const std::string& reason) {
  return {.source = reason.empty() ? "this diet's own bound" : "this diet's own bound: " + reason,
          .provenance = animal::Provenance::HouseRule,
          .modelSpecies = {}};
}

bool loosensHardRule(const ProblemOfVersion& opened, const std::string& rule, std::optional<double> min,
                     std::optional<double> max) {
  const auto profile = boundsOf(opened.profileBounds, rule);
  if (profile == opened.profileBounds.end()) return false;
  bool isHard = false;
  visitRules(opened.problem, [&](const auto& one) { isHard = isHard || (one.id == rule && one.hard); });
  const bool lowers = profile->min && min.value_or(0.0) < *profile->min;
  const bool raises = profile->max && (!max || *max > *profile->max);
  return isHard && (lowers || raises);
}

ProblemOfVersion versionProblem(const DietVersion& version, const VersionContext& context) {
  ProblemOfVersion made;
  Bowl bowl(context.foods);
  for (const DietLine& line : version.lines) bowl.add(line, made);
  for (const Allowance& allowance : version.allowances) bowl.add(allowance, made);
  auto [problem, notCounted] =
      profileProblem(context.profile, context.facts, bowl.takeFoods(), version.energyMethod);
  made.problem = std::move(problem);
  made.problem.title = context.title;
  made.problem.notes = version.note;
  made.problem.invented = context.invented;
  made.problem.cautions = context.houseCautions;
  made.notCounted = std::move(notCounted);
  made.profileChoices = made.problem.choices.size();
  changeBounds(version, made);
  addOwnRules(version, made);
  made.amounts = bowl.takeAmounts();
  if (std::ranges::any_of(made.amounts, [](Grams mass) { return mass > Grams(0); }))
    made.problem.reference = made.amounts;
  made.problem.objective = version.objective;
  made.problem.confidence = version.confidence;
  made.problem.wholeSteps = version.wholeSteps;
  made.problem.lifted = version.lifted;
  return made;
}

DietVersion versionOf(const BalanceProblem& problem, const Diet& grams, const std::vector<bool>& locked,
                      const std::vector<PlaceInVersion>& places, const ProblemOfVersion& opened,
                      const DietVersion& before) {
  DietVersion version = before;
  const auto isMissing = [&](const auto& entry) {
    return std::ranges::find(opened.missingFoods, entry.food) != opened.missingFoods.end();
  };
  version.lines.clear();
  version.allowances.clear();
  for (std::size_t i = 0; i < problem.foods.size(); ++i) {
    const DietFood& food = problem.foods[i];
    const PlaceInVersion& place = places.at(i);
    if (place.allowance) {
      version.allowances.push_back(*place.allowance);
    } else {
      version.lines.push_back({place.food, grams.at(i), food.min, food.max, locked.at(i), place.purpose,
                               place.meal, food.preparation});
    }
  }
  std::ranges::copy_if(before.lines, std::back_inserter(version.lines), isMissing);
  std::ranges::copy_if(before.allowances, std::back_inserter(version.allowances), isMissing);
  version.changedBounds = changedBounds(problem, opened, before);
  version.shares = ownShares(problem, opened, before);
  version.choices = ownChoices(problem, opened, before);
  version.objective = problem.objective;
  version.confidence = problem.confidence;
  version.energyMethod = problem.energyMethod;
  version.wholeSteps = problem.wholeSteps;
  version.lifted = problem.lifted;
  return version;
}

}  // namespace tarebowl::diet
