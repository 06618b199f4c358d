// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/look_back_window.h"

#include "core/food/robust.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace tarebowl::health {

namespace {

constexpr long long kMinutesADay = 24LL * 60;

long long minutesAt(quantity::Date day, int minute) {
  return std::chrono::sys_days(day).time_since_epoch().count() * kMinutesADay + minute;
}

long long givenAt(const BowlEaten& bowl) {
  return minutesAt(bowl.day, bowl.minute);
}

long long windowBegin(const LookedOn& look, int hours) {
  return minutesAt(look.day, look.minute) - hours * 60LL;
}

std::vector<double> gramsIn(std::span<const Window> windows, const std::string& food) {
  std::vector<double> grams;
  for (const Window& window : windows) {
    const auto found = window.foods.find(food);
    if (found != window.foods.end()) grams.push_back(found->second.grams);
  }
  return grams;
}

/// Whether any bowl before the window had the food; a period that begins with the window says nothing.
bool isNew(const std::string& food, long long begin, std::span<const BowlEaten> bowls) {
  bool anyBefore = false;
  for (const BowlEaten& bowl : bowls) {
    if (givenAt(bowl) >= begin) continue;
    anyBefore = true;
    if (std::ranges::find(bowl.foods, food, &FoodEaten::food) != bowl.foods.end()) return false;
  }
  return anyBefore;
}

/// Whether the food was in bowls before the window, and never from this lot.
bool isNewLot(const std::string& food, const std::string& lot, long long begin,
              std::span<const BowlEaten> bowls) {
  bool wasFed = false;
  for (const BowlEaten& bowl : bowls) {
    if (givenAt(bowl) >= begin) continue;
    for (const FoodEaten& eaten : bowl.foods) {
      if (eaten.food != food) continue;
      if (eaten.lot == lot) return false;
      wasFed = true;
    }
  }
  return wasFed;
}

std::optional<Difference> changed(const std::string& food, const WindowFood& now,
                                  const std::vector<double>& usual, const LookBackRule& rule) {
  constexpr std::size_t kFewest = 5;
  if (usual.size() < kFewest) return std::nullopt;
  const double median = food::medianOf(usual);
  const auto scatter = food::robustScatter(usual);
  const double spread = scatter ? scatter->spread : 0.0;
  const double apart = std::abs(now.grams - median);
  if (apart <= rule.changedSpreads * spread || apart <= rule.changedShare * median) return std::nullopt;
  return Difference{now.grams > median ? DifferenceKind::MoreThanUsual : DifferenceKind::LessThanUsual, food,
                    now.grams, median};
}

}  // namespace

Window windowBefore(const LookedOn& look, std::span<const BowlEaten> bowls, int hours) {
  Window window{.look = look};
  const long long end = minutesAt(look.day, look.minute);
  const long long begin = windowBegin(look, hours);
  const auto first = std::ranges::lower_bound(bowls, begin - kMinutesADay, {},
                                              [](const BowlEaten& b) { return givenAt(b) - b.minute; });
  for (auto bowl = first; bowl != bowls.end() && minutesAt(bowl->day, 0) < end; ++bowl) {
    if (givenAt(*bowl) < begin || givenAt(*bowl) >= end) continue;
    ++window.bowls;
    for (const FoodEaten& food : bowl->foods) {
      WindowFood& sum = window.foods[food.food];
      sum.grams += std::max(0.0, food.eaten.value_or(food.offered));
      sum.leftoverMissing = sum.leftoverMissing || !food.eaten;
      sum.swappedIn = sum.swappedIn || food.swappedIn;
      if (!food.lot.empty()) sum.lots.insert(food.lot);
    }
  }
  return window;
}

std::vector<Difference> differencesOf(const Window& window, std::span<const Window> comparable,
                                      std::span<const BowlEaten> bowls, const LookBackRule& rule) {
  std::vector<Difference> found;
  const long long begin = windowBegin(window.look, rule.hours);
  for (const auto& [food, now] : window.foods) {
    if (isNew(food, begin, bowls)) found.push_back({DifferenceKind::NewFood, food, now.grams, {}});
    if (now.swappedIn) found.push_back({DifferenceKind::SwappedIn, food, now.grams, {}});
    for (const std::string& lot : now.lots)
      if (isNewLot(food, lot, begin, bowls))
        found.push_back({.kind = DifferenceKind::NewLot, .food = food, .now = now.grams, .lot = lot});
    if (now.leftoverMissing)
      found.push_back({DifferenceKind::LeftoverMissing, food, {}, {}});
    else if (const auto change = changed(food, now, gramsIn(comparable, food), rule))
      found.push_back(*change);
  }
  std::map<std::string, std::size_t> windows;
  for (const Window& other : comparable)
    for (const auto& [food, now] : other.foods) ++windows[food];
  for (const auto& [food, times] : windows)
    if (2 * times > comparable.size() && !window.foods.contains(food))
      found.push_back({DifferenceKind::NotOffered, food, 0.0, food::medianOf(gramsIn(comparable, food))});
  std::ranges::stable_sort(found, {}, &Difference::kind);
  return found;
}

}  // namespace tarebowl::health
