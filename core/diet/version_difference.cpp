// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/version_difference.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace tarebowl::diet {
namespace {

using Kind = DifferenceKind;

class Comparison {
 public:
  void about(std::string subject, std::string meal = {}) {
    subject_ = std::move(subject);
    meal_ = std::move(meal);
  }
  void number(Kind kind, std::optional<double> before, std::optional<double> after) {
    if (before == after) return;
    found_.push_back({.kind = kind, .subject = subject_, .meal = meal_, .before = before, .after = after});
  }
  void text(Kind kind, std::string before, std::string after) {
    if (before == after) return;
    found_.push_back({.kind = kind,
                      .subject = subject_,
                      .meal = meal_,
                      .textBefore = std::move(before),
                      .textAfter = std::move(after)});
  }
  void flag(Kind kind, bool before, bool after) { number(kind, before ? 1.0 : 0.0, after ? 1.0 : 0.0); }
  void fact(Kind kind) { found_.push_back({.kind = kind, .subject = subject_, .meal = meal_}); }
  [[nodiscard]] std::vector<VersionDifference> take() { return std::move(found_); }

 private:
  std::string subject_;
  std::string meal_;
  std::vector<VersionDifference> found_;
};

std::optional<double> numberOf(const std::optional<quantity::Grams>& mass) {
  return mass ? std::optional(mass->value()) : std::nullopt;
}

/// What stands in both lists under one key, what only in the first and what only in the second.
template <class Item, class Same, class Both, class Gone, class New>
void pairUp(const std::vector<Item>& before, const std::vector<Item>& after, Same same, Both both, Gone gone,
            New fresh) {
  const auto findIn = [&](const std::vector<Item>& list, const Item& item) {
    return std::ranges::find_if(list, [&](const Item& other) { return same(item, other); });
  };
  for (const Item& old : before) {
    const auto found = findIn(after, old);
    if (found == after.end())
      gone(old);
    else
      both(old, *found);
  }
  for (const Item& item : after)
    if (findIn(before, item) == before.end()) fresh(item);
}

void compareLines(const DietVersion& before, const DietVersion& after, Comparison& comparison) {
  pairUp(
      before.lines, after.lines,
      [](const DietLine& a, const DietLine& b) { return a.food == b.food && a.meal == b.meal; },
      [&](const DietLine& a, const DietLine& b) {
        comparison.about(a.food, a.meal);
        comparison.number(Kind::Amount, a.amount.value(), b.amount.value());
        comparison.number(Kind::Min, a.min.value(), b.min.value());
        comparison.number(Kind::Max, numberOf(a.max), numberOf(b.max));
        comparison.flag(Kind::Locked, a.locked, b.locked);
        comparison.text(Kind::PurposeOf, std::string(symbolOf(a.purpose)), std::string(symbolOf(b.purpose)));
        comparison.text(Kind::Preparation, a.preparation, b.preparation);
      },
      [&](const DietLine& gone) {
        comparison.about(gone.food, gone.meal);
        comparison.number(Kind::LineRemoved, gone.amount.value(), std::nullopt);
      },
      [&](const DietLine& fresh) {
        comparison.about(fresh.food, fresh.meal);
        comparison.number(Kind::LineAdded, std::nullopt, fresh.amount.value());
      });
}

void compareAllowances(const DietVersion& before, const DietVersion& after, Comparison& comparison) {
  pairUp(
      before.allowances, after.allowances,
      [](const Allowance& a, const Allowance& b) { return a.food == b.food && a.purpose == b.purpose; },
      [&](const Allowance& a, const Allowance& b) {
        comparison.about(a.food);
        comparison.number(Kind::AllowanceLow, a.low.value(), b.low.value());
        comparison.number(Kind::AllowanceHigh, a.high.value(), b.high.value());
      },
      [&](const Allowance& gone) {
        comparison.about(gone.food);
        comparison.number(Kind::AllowanceRemoved, gone.high.value(), std::nullopt);
      },
      [&](const Allowance& fresh) {
        comparison.about(fresh.food);
        comparison.number(Kind::AllowanceAdded, std::nullopt, fresh.high.value());
      });
}

void compareBounds(const DietVersion& before, const DietVersion& after, Comparison& comparison) {
  const auto compare = [&](const ChangedBound& a, const ChangedBound& b) {
    comparison.about(a.rule.empty() ? b.rule : a.rule);
    comparison.number(Kind::BoundMin, a.min, b.min);
    comparison.number(Kind::BoundMax, a.max, b.max);
  };
  pairUp(
      before.changedBounds, after.changedBounds,
      [](const ChangedBound& a, const ChangedBound& b) { return a.rule == b.rule; }, compare,
      [&](const ChangedBound& gone) { compare(gone, {}); },
      [&](const ChangedBound& fresh) { compare({}, fresh); });
}

std::string textOf(const animal::ProfileReference& profile) {
  return profile.code.empty() ? std::string() : profile.code + " " + std::to_string(profile.version);
}

std::string textOf(const Objective& objective) {
  constexpr std::array<std::string_view, 4> kWords{"closest", "lowest-cost", "lowest", "highest"};
  std::string text(kWords.at(static_cast<std::size_t>(objective.kind)));
  if (objective.nutrient) (text += ' ') += food::describe(*objective.nutrient).tagname;
  return text;
}

void compareTheRest(const DietVersion& before, const DietVersion& after, Comparison& comparison) {
  comparison.about({});
  comparison.text(Kind::ProfileOf, textOf(before.profile), textOf(after.profile));
  comparison.text(Kind::ObjectiveOf, textOf(before.objective), textOf(after.objective));
  comparison.number(Kind::Confidence, before.confidence, after.confidence);
  if (before.energyMethod != after.energyMethod) comparison.fact(Kind::EnergyMethodOf);
  comparison.flag(Kind::WholeSteps, before.wholeSteps, after.wholeSteps);
  if (before.shares != after.shares) comparison.fact(Kind::Shares);
  if (before.choices != after.choices) comparison.fact(Kind::Choices);
}

}  // namespace

std::vector<VersionDifference> differences(const DietVersion& before, const DietVersion& after) {
  Comparison comparison;
  compareLines(before, after, comparison);
  compareAllowances(before, after, comparison);
  compareBounds(before, after, comparison);
  compareTheRest(before, after, comparison);
  return comparison.take();
}

}  // namespace tarebowl::diet
