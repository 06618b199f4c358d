// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/phase_in.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

using quantity::Grams;

struct Way {
  std::string food;
  Grams from{};
  Grams to{};
};

std::vector<Way> waysBetween(std::span<const FoodGrams> from, std::span<const FoodGrams> to) {
  std::vector<Way> ways;
  const auto wayOf = [&](const std::string& food) -> Way& {
    const auto found = std::ranges::find(ways, food, &Way::food);
    return found != ways.end() ? *found : ways.emplace_back(Way{.food = food});
  };
  for (const FoodGrams& old : from) wayOf(old.food).from += old.amount;
  for (const FoodGrams& next : to) wayOf(next.food).to += next.amount;
  return ways;
}

Grams onStep(Grams mass, Grams step) {
  return std::round(mass / step) * step;
}

}  // namespace

std::vector<std::vector<FoodGrams>> phaseIn(std::span<const FoodGrams> from, std::span<const FoodGrams> to,
                                            int days,
                                            const std::function<Grams(const std::string&)>& stepOf) {
  if (days < 1) throw std::invalid_argument("a phase-in takes at least one day");
  const std::vector<Way> ways = waysBetween(from, to);
  std::vector<std::vector<FoodGrams>> plan;
  for (int day = 1; day <= days; ++day) {
    const double share = static_cast<double>(day) / days;
    std::vector<FoodGrams>& bowl = plan.emplace_back();
    for (const Way& way : ways) {
      const Grams between = (1.0 - share) * way.from + share * way.to;
      bowl.push_back({way.food, day == days ? way.to : onStep(between, stepOf(way.food))});
    }
  }
  return plan;
}

}  // namespace tarebowl::diet
