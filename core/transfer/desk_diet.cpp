// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/desk_diet.h"

#include "core/diet/judged.h"
#include "core/diet/locked.h"
#include "core/exchange/problem_json.h"
#include "core/store/food_reading.h"
#include "core/store/profile_lineage.h"
#include "core/store/reading.h"
#include "core/transfer/group_facts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <variant>

namespace tarebowl::transfer {

namespace {

using diet::DietVersion;

std::string titleOf(const DeskDiet& desk) {
  const std::string& group = desk.group.group.record.name;
  const std::string& name = desk.diet.record.name;
  return fmt::format("{}{}, version {}", name.starts_with(group) ? "" : group + ", ", name,
                     desk.version.record.version.number);
}

/// The version of the profile that the diet names, whatever is in force now.
void readProfile(const store::Collection& collection, DeskDiet& desk) {
  const animal::ProfileReference& named = desk.version.record.version.profile;
  const store::ProfileLineage lineage(collection, named.code);
  const auto stored = lineage.find(named);
  desk.profileMissing = !stored;
  if (!stored) return;
  auto resolved = animal::resolve(stored->record.profile, lineage.lookup());
  if (auto* profile = std::get_if<animal::ResolvedProfile>(&resolved))
    desk.context.profile = std::move(*profile);
}

void nameNewerProfile(DeskDiet& desk) {
  if (!desk.group.version) return;
  const animal::TargetProfile& fedBy = desk.group.version->record.profile;
  const animal::ProfileReference now{fedBy.code, fedBy.version};
  if (now != desk.version.record.version.profile) desk.newerProfile = now;
}

void readFoods(const store::Collection& collection, DeskDiet& desk) {
  const auto read = [&](const std::string& code) {
    if (desk.context.foods.contains(code)) return;
    if (auto food = store::dietFood(collection, code)) desk.context.foods.emplace(code, std::move(*food));
  };
  const auto ask = [&](const std::string& code) {
    store::askAhead(collection, [&] { return store::dietFood(collection, code); });
  };
  for (const diet::DietLine& line : desk.version.record.version.lines) ask(line.food);
  for (const diet::Allowance& allowance : desk.version.record.version.allowances) ask(allowance.food);
  for (const diet::DietLine& line : desk.version.record.version.lines) read(line.food);
  for (const diet::Allowance& allowance : desk.version.record.version.allowances) read(allowance.food);
}

/// What a diet counts with: amounts and their scatter, whoever stated them.
bool sameValues(const food::Composition& before, const food::Composition& now) {
  if (before.knownNutrients() != now.knownNutrients()) return false;
  return std::ranges::all_of(before.knownNutrients(), [&](food::NutrientId nutrient) {
    return before.amountPer100g(nutrient) == now.amountPer100g(nutrient) &&
           before.sdPer100g(nutrient) == now.sdPer100g(nutrient);
  });
}

std::vector<std::string> changedSince(const store::DecidedDiet& decided, const diet::BalanceProblem& now) {
  const diet::BalanceProblem then = exchange::parseProblem(decided.problem, "what was decided on");
  std::vector<std::string> changed;
  for (const diet::DietFood& food : now.foods) {
    const auto before = std::ranges::find(then.foods, food.id, &diet::DietFood::id);
    if (before != then.foods.end() && !sameValues(before->composition, food.composition) &&
        std::ranges::find(changed, food.name) == changed.end())
      changed.push_back(food.name);
  }
  return changed;
}

bool areSame(const diet::Diet& a, const diet::Diet& b) {
  return std::ranges::equal(a, b, [](quantity::Grams x, quantity::Grams y) {
    return std::abs((x - y).value()) <= 1e-6 * std::max(1.0, x.value());
  });
}

void readDecision(DeskDiet& desk) {
  const auto& decided = desk.version.record.decided;
  if (!decided || desk.counted == CountedAs::Eaten) return;
  try {
    desk.foodsChanged = changedSince(*decided, desk.made.problem);
  } catch (const exchange::FormatError&) {
    desk.decisionUnreadable = true;
  }
}

std::optional<DeskDiet> layOut(const store::Collection& collection, const store::StoredVersion& version,
                               quantity::Date day, CountedAs counted) {
  DeskDiet desk{.version = version};
  const auto readGroup = [&]() -> std::optional<store::KnownGroup> {
    const auto named = store::findDiet(collection, version.record.diet);
    if (!named) return std::nullopt;
    desk.diet = *named;
    return store::knowGroup(collection, named->record.group, day);
  };
  store::askAhead(
      collection, readGroup, [&] { return houseCautions(collection); },
      [&] { return readProfile(collection, desk); }, [&] { return readFoods(collection, desk); });
  auto group = readGroup();
  if (!group) return std::nullopt;
  desk.group = std::move(*group);
  desk.context.title = titleOf(desk);
  desk.context.facts = groupFacts(desk.group);
  desk.context.houseCautions = houseCautions(collection);
  readProfile(collection, desk);
  nameNewerProfile(desk);
  readFoods(collection, desk);
  desk.context.invented =
      desk.diet.record.invented || desk.context.profile.profile.invented || desk.group.group.record.invented;
  desk.counted = counted;
  if (counted == CountedAs::Eaten) {
    std::vector<intake::FoodOfClass> foods;
    for (const auto& [code, food] : desk.context.foods) foods.push_back({code, food.group});
    desk.eaten = learnEating(collection, eatersOn(desk.group.group, day), foods);
    countEaten(desk.context, desk.eaten);
  }
  desk.made = diet::versionProblem(desk.version.record.version, desk.context);
  readDecision(desk);
  return desk;
}

}  // namespace

std::optional<DeskDiet> readDesk(const store::Collection& collection, store::VersionId version,
                                 quantity::Date day, CountedAs counted) {
  const auto stored = store::findVersion(collection, version);
  return stored ? layOut(collection, *stored, day, counted) : std::nullopt;
}

std::optional<DeskDiet> readDesk(const store::Collection& collection, const store::VersionRecord& version,
                                 quantity::Date day) {
  return layOut(collection, {.record = version}, day, CountedAs::Offered);
}

store::DecidedDiet decisionOn(const diet::ProblemOfVersion& made) {
  const diet::BalanceProblem problem = diet::withLocked(made.problem, made.amounts, made.locked);
  diet::DietSolution solution = diet::solve(problem);
  if (!areSame(solution.grams, made.amounts)) solution = diet::judged(problem, made.amounts);
  solution.solveTime = {};  // a decision is no measurement of the solver
  return {exchange::writeProblem(problem), exchange::writeResult(problem, solution)};
}

}  // namespace tarebowl::transfer
