// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/from_records.h"

namespace tarebowl::intake {

namespace {

/// What was found, as the kinds of entries say it. sumOfParts: grams of all estimates of the bowl.
Remains remainsOf(const std::optional<Leftover>& entry, bool hasRemainder, double sumOfParts,
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

std::optional<Loss> lossOf(const std::optional<Leftover>& entry) {
  if (!entry) return std::nullopt;
  if (entry->kind == LeftoverKind::Spilled) return Loss{LossKind::Spilled, entry->lost};
  if (entry->kind == LeftoverKind::Stolen) return Loss{LossKind::Stolen, entry->lost};
  return std::nullopt;
}

/// Grams of all estimates of a bowl; nothing where there are none.
std::optional<double> estimatesOf(const Bowl& bowl) {
  std::optional<double> sum;
  for (const BowlItem& item : bowl.items) {
    const auto entry = entryThatCounts(item.leftovers);
    if (entry && entry->kind == LeftoverKind::Estimated && entry->left)
      sum = sum.value_or(0.0) + entry->left->value();
  }
  return sum;
}

}  // namespace

FedBowl fedBowl(const Bowl& bowl, const std::string& place, const FoodKindLookup& kindOf) {
  FedBowl fed{.group = bowl.key.group,
              .day = bowl.key.day,
              .label = bowl.label,
              .place = place,
              .animals = bowl.animals};
  const auto remainder = entryThatCounts(bowl.remainders);
  const std::optional<double> estimates = estimatesOf(bowl);
  for (const BowlItem& item : bowl.items) {
    if (item.swappedOut) continue;
    const FoodKind kind = kindOf(item.food);
    const auto entry = entryThatCounts(item.leftovers);
    const auto weighed = entryThatCounts(item.weighings);
    FedItem& made = fed.items.emplace_back();
    made.food = item.food;
    made.foodClass = kind.foodClass;
    made.offered = {weighed ? weighed->actual : item.planned, kind.step};
    made.remains = remainsOf(entry, remainder.has_value(), estimates.value_or(0.0), kind.step);
    made.loss = lossOf(entry);
    if (remainder) fed.remainder = ScaleReading{remainder->left, kind.step};
  }
  if (!remainder && estimates) fed.remainder = ScaleReading{quantity::Grams(*estimates), {}};
  return fed;
}

WaterPan waterPan(const ControlPan& pan, const FoodKindLookup& kindOf) {
  WaterPan made{.place = pan.place, .day = pan.day, .food = pan.food, .foodClass = pan.foodClass};
  quantity::Grams step{};
  if (!pan.food.empty()) {
    const FoodKind kind = kindOf(pan.food);
    made.foodClass = kind.foodClass;
    step = kind.step;
  }
  made.start = {pan.start, step};
  made.end = {pan.end, step};
  return made;
}

}  // namespace tarebowl::intake
