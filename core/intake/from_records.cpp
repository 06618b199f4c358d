// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/from_records.h"

namespace tarebowl::intake {

namespace {

/// What was found, as the kinds of entries say it. sumOfParts: grams of all estimates of the bowl.
Remains remainsOf(const std::optional<CountedLeftover>& entry, bool hasRemainder, double sumOfParts,
                  quantity::Grams step) {
  if (!entry) return hasRemainder ? Remains(InRemainder{}) : Remains(NotWeighed{});
  switch (entry->kind) {
    case LeftoverKind::AllEaten:
      return AllEaten{};
    case LeftoverKind::NotWeighed:
      return NotWeighed{};
    case LeftoverKind::Estimated:
      if (!entry->left) return InRemainder{};
      return InRemainder{sumOfParts > 0.0 ? entry->left->value() / sumOfParts : 0.0};
    case LeftoverKind::Weighed:
    case LeftoverKind::Spilled:
    case LeftoverKind::Stolen:
      break;
  }
  if (!entry->left) return NotWeighed{};
  return ScaleReading{*entry->left, step};
}

std::optional<Loss> lossOf(const std::optional<CountedLeftover>& entry) {
  if (!entry) return std::nullopt;
  if (entry->kind == LeftoverKind::Spilled) return Loss{LossKind::Spilled, entry->lost};
  if (entry->kind == LeftoverKind::Stolen) return Loss{LossKind::Stolen, entry->lost};
  return std::nullopt;
}

/// Grams of all estimates of a bowl; nothing where there are none.
std::optional<double> estimatesOf(const CountedBowl& bowl) {
  std::optional<double> sum;
  for (const CountedItem& item : bowl.items)
    if (item.leftover && item.leftover->kind == LeftoverKind::Estimated && item.leftover->left)
      sum = sum.value_or(0.0) + item.leftover->left->value();
  return sum;
}

}  // namespace

FedBowl fedBowl(const CountedBowl& bowl, const std::string& place, const FoodKindLookup& kindOf) {
  FedBowl fed{
      .group = bowl.group, .day = bowl.day, .label = bowl.label, .place = place, .animals = bowl.animals};
  const std::optional<double> estimates = estimatesOf(bowl);
  fed.items.reserve(bowl.items.size());
  for (const CountedItem& item : bowl.items) {
    const FoodKind kind = kindOf(item.food);
    FedItem& made = fed.items.emplace_back();
    made.food = item.food;
    made.foodClass = kind.foodClass;
    made.offered = {item.weighed.value_or(item.planned), kind.step};
    made.remains = remainsOf(item.leftover, bowl.remainder.has_value(), estimates.value_or(0.0), kind.step);
    made.loss = lossOf(item.leftover);
    made.swappedIn = item.swappedIn;
    if (bowl.remainder) fed.remainder = ScaleReading{*bowl.remainder, kind.step};
  }
  if (!bowl.remainder && estimates) fed.remainder = ScaleReading{quantity::Grams(*estimates), {}};
  return fed;
}

FedBowl fedBowl(const Bowl& bowl, const std::string& place, const FoodKindLookup& kindOf) {
  return fedBowl(counted(bowl), place, kindOf);
}

std::optional<WaterPan> waterPan(const ControlPan& pan, const FoodKindLookup& kindOf) {
  if (!pan.end) return std::nullopt;
  WaterPan made{.place = pan.place, .day = pan.day, .food = pan.food, .foodClass = pan.foodClass};
  quantity::Grams step{};
  if (!pan.food.empty()) {
    const FoodKind kind = kindOf(pan.food);
    made.foodClass = kind.foodClass;
    step = kind.step;
  }
  made.start = {pan.start, step};
  made.end = {*pan.end, step};
  return made;
}

}  // namespace tarebowl::intake
