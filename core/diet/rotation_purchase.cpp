// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_purchase.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

constexpr int kDaysOfWeek = 7;

const PurchaseLoss* lossOf(const RotationRules& rules, const DietFood& food) {
  const PurchaseLoss* found = nullptr;
  for (const PurchaseLoss& loss : rules.purchase)
    if (loss.of.has(food)) found = &loss;
  return found;
}

bool isOver(const RotationRules& rules, int day) {
  return std::ranges::find(rules.fed, day, &FedDay::day) != rules.fed.end();
}

}  // namespace

std::vector<PurchaseLine> purchaseList(const RotationProblem& problem, std::span<const Diet> days) {
  std::vector<PurchaseLine> lines;
  const int count = static_cast<int>(days.size());
  for (int first = 0; first < count; first += kDaysOfWeek) {
    const std::size_t before = lines.size();
    for (std::size_t food = 0; food < problem.base.foods.size(); ++food) {
      quantity::Grams sum;
      for (int day = first; day < std::min(count, first + kDaysOfWeek); ++day)
        if (!isOver(problem.rules, day)) sum += days[std::size_t(day)][food];
      if (!(sum.value() > 0.0)) continue;
      const quantity::Kilograms offered = quantity::toKilograms(sum * problem.base.eater.count);
      const PurchaseLoss* loss = lossOf(problem.rules, problem.base.foods[food]);
      const double left = loss ? loss->edible * (1.0 - loss->waste) : 1.0;
      lines.push_back({.week = first / kDaysOfWeek,
                       .food = food,
                       .offered = offered,
                       .bought = quantity::Kilograms(offered.value() / left),
                       .lossIsKnown = loss != nullptr});
    }
    std::stable_sort(lines.begin() + static_cast<std::ptrdiff_t>(before), lines.end(),
                     [&](const PurchaseLine& a, const PurchaseLine& b) {
                       return problem.base.foods[a.food].group < problem.base.foods[b.food].group;
                     });
  }
  return lines;
}

std::vector<PurchaseOfGroup> byGroup(const RotationProblem& problem, std::span<const PurchaseLine> lines) {
  std::vector<PurchaseOfGroup> groups;
  for (const PurchaseLine& line : lines) {
    const std::string& group = problem.base.foods[line.food].group;
    if (groups.empty() || groups.back().week != line.week || groups.back().group != group)
      groups.push_back({.week = line.week, .group = group});
    groups.back().offered += line.offered;
    groups.back().bought += line.bought;
    groups.back().lossIsKnown = groups.back().lossIsKnown && line.lossIsKnown;
  }
  return groups;
}

}  // namespace tarebowl::diet
