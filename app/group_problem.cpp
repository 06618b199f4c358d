// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/group_problem.h"

#include "app/command_line.h"
#include "app/food_codes.h"
#include "app/not_counted.h"
#include "app/open_collection.h"
#include "core/store/food_reading.h"
#include "core/transfer/group_facts.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <set>

namespace tarebowl::app {

namespace {

/// Whether an empty bowl falls short of anything.
bool asksForFood(const diet::BalanceProblem& problem) {
  using quantity::Basis;
  return !problem.choices.empty() ||
         std::any_of(problem.targets.begin(), problem.targets.end(), [](const animal::Target& target) {
           return target.min.value_or(0.0) > 0.0 &&
                  (target.basis == Basis::Day || target.basis == Basis::BodyMass ||
                   target.basis == Basis::MetabolicMass);
         });
}

std::vector<diet::DietFood> foodsIn(const store::Collection& collection, const std::string& words) {
  const std::vector<std::string> codes = foodCodes(words);
  if (codes.empty()) throw UsageError("--foods: expected codes of foods, found none");
  std::vector<diet::DietFood> foods;
  std::set<std::string> named;
  for (const std::string& code : codes) {
    if (!named.insert(code).second) throw UsageError("--foods: " + code + " is named twice");
    auto food = store::dietFood(collection, code);
    if (!food)
      throw UsageError(fmt::format("--foods: there is no food {} in {} (see tarebowl foods)", code,
                                   collection.file().string()));
    foods.push_back(std::move(*food));
  }
  return foods;
}

}  // namespace

diet::BalanceProblem groupProblemOf(const FoodsForGroup& words, quantity::Date day, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const store::KnownGroup known = fedGroupOf(collection, words.group, day);
  auto made =
      diet::profileProblem(*known.profile, transfer::groupFacts(known), foodsIn(collection, words.foods));
  made.problem.title = fmt::format("{}, {} {}", known.group.record.name, known.profile->profile.code,
                                   known.profile->profile.version);
  made.problem.cautions = transfer::houseCautions(collection);
  tellNotCounted(made.notCounted, streams.err);
  if (!asksForFood(made.problem))
    streams.err
        << "no target says how much to give: an empty bowl would do (give the group an energy plan and a "
           "mass, or its profile a target per day or per body mass)\n";
  tellNotGiven(made.problem, streams.err);
  return std::move(made.problem);
}

}  // namespace tarebowl::app
