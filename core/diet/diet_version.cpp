// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/diet_version.h"

#include "core/diet/diet_words.h"

#include <set>
#include <utility>

namespace tarebowl::diet {
namespace {

std::optional<VersionProblem> problemWith(const DietLine& line) {
  if (line.food.empty()) return VersionProblem::NoFood;
  const quantity::Grams none(0);
  if (line.amount < none || line.min < none || line.max.value_or(none) < none)
    return VersionProblem::AmountNegative;
  if (line.max && *line.max < line.min) return VersionProblem::MinAboveMax;
  return std::nullopt;
}

std::optional<VersionProblem> problemWith(const Allowance& allowance) {
  if (allowance.food.empty()) return VersionProblem::NoFood;
  if (allowance.low < quantity::Grams(0)) return VersionProblem::AmountNegative;
  if (allowance.high < allowance.low) return VersionProblem::AllowanceTurnedRound;
  return std::nullopt;
}

}  // namespace

std::string_view symbolOf(VersionState state) {
  return animal::symbolOf(state);
}

std::string_view symbolOf(Purpose purpose) {
  return animal::symbolOf(purpose);
}

bool mayGo(VersionState from, VersionState to) {
  using enum VersionState;
  switch (from) {
    case Draft:
      return to == Submitted;
    case Submitted:
      return to == Approved || to == Draft;
    case Approved:
      return to == Retired;
    case Retired:
      return false;
  }
  return false;
}

std::vector<VersionFinding> problemsWith(const DietVersion& version) {
  std::vector<VersionFinding> findings;
  std::set<std::pair<std::string, std::string>> seen;
  for (const DietLine& line : version.lines) {
    if (const auto problem = problemWith(line)) findings.push_back({*problem, line.food});
    if (!seen.emplace(line.meal, line.food).second)
      findings.push_back({VersionProblem::FoodTwiceInAMeal, line.food});
  }
  for (const Allowance& allowance : version.allowances)
    if (const auto problem = problemWith(allowance)) findings.push_back({*problem, allowance.food});
  return findings;
}

}  // namespace tarebowl::diet
