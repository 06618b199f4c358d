// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/look_back.h"

#include "core/health/look_back_window.h"

#include <algorithm>
#include <chrono>
#include <set>

namespace tarebowl::health {

namespace {

/// Windows of the days that are compared, and the days that are not.
struct Compared {
  std::vector<Window> windows{};
  std::size_t withoutIntake = 0;
  std::size_t sameEpisode = 0;
};

bool hadSignTheDayBefore(std::span<const LookedOn> looks, std::size_t i) {
  return i > 0 && looks[i - 1].sign &&
         std::chrono::sys_days(looks[i].day) - std::chrono::sys_days(looks[i - 1].day) ==
             std::chrono::days(1);
}

Compared compare(std::span<const LookedOn> looks, std::span<const BowlEaten> bowls, int hours) {
  Compared compared;
  for (std::size_t i = 0; i < looks.size(); ++i) {
    if (looks[i].sign && hadSignTheDayBefore(looks, i)) {
      ++compared.sameEpisode;
      continue;
    }
    Window window = windowBefore(looks[i], bowls, hours);
    if (window.bowls == 0)
      ++compared.withoutIntake;
    else
      compared.windows.push_back(std::move(window));
  }
  return compared;
}

/// In which windows each food was eaten, and the counts that follow.
FoodLink linkOf(const std::string& food, std::span<const Window> windows, const LookBackRule& rule) {
  FoodLink link{.food = food};
  for (const Window& window : windows) {
    const bool eaten = window.holds(food);
    if (window.look.sign)
      ++(eaten ? link.days.eatenSign : link.days.withoutSign);
    else
      ++(eaten ? link.days.eatenWell : link.days.withoutWell);
  }
  link.test = fisherTest(link.days);
  link.risk = riskRatio(link.days, rule.confidence);
  return link;
}

void correctForMany(std::vector<FoodLink>& links, LookBack& found, const LookBackRule& rule) {
  std::vector<double> p;
  for (const FoodLink& link : links)
    if (link.days.comparable()) p.push_back(link.test.twoSided);
  found.compared = p.size();
  const std::vector<double> corrected = benjaminiHochberg(p);
  std::size_t next = 0;
  for (FoodLink& link : links) {
    if (!link.days.comparable()) continue;
    link.corrected = corrected[next++];
    link.pointedOut = link.corrected <= rule.falseRate && link.risk && link.risk->ratio > 1.0;
  }
}

void nameInseparable(std::vector<FoodLink>& links, std::span<const Window> windows) {
  std::vector<std::vector<bool>> eaten;
  for (const FoodLink& link : links) {
    std::vector<bool>& in = eaten.emplace_back();
    for (const Window& window : windows) in.push_back(window.holds(link.food));
  }
  for (std::size_t i = 0; i < links.size(); ++i)
    for (std::size_t j = 0; j < links.size(); ++j)
      if (i != j && links[i].days.comparable() && eaten[i] == eaten[j])
        links[i].alwaysWith.push_back(links[j].food);
}

}  // namespace

LookBack lookBack(const LookedOn& sign, std::span<const LookedOn> looks, std::span<const BowlEaten> bowls,
                  const LookBackRule& asked) {
  LookBackRule rule = asked;
  rule.hours = std::clamp(asked.hours, kShortestWindow, kLongestWindow);
  LookBack found{.sign = sign, .hours = rule.hours};
  const Compared compared = compare(looks, bowls, rule.hours);
  found.withoutIntake = compared.withoutIntake;
  found.sameEpisode = compared.sameEpisode;
  std::vector<Window> well;
  std::set<std::string> foods;
  for (const Window& window : compared.windows) {
    ++(window.look.sign ? found.signDays : found.wellDays);
    if (!window.look.sign) well.push_back(window);
    for (const auto& [food, now] : window.foods) {
      foods.insert(food);
      found.leftoversMissing += now.leftoverMissing ? 1 : 0;
    }
  }
  const Window asks = windowBefore(sign, bowls, rule.hours);
  found.signHasIntake = asks.bowls > 0;
  if (found.signHasIntake) found.differences = differencesOf(asks, well, bowls, rule);
  for (const std::string& food : foods) found.foods.push_back(linkOf(food, compared.windows, rule));
  for (FoodLink& link : found.foods)
    link.newFood = std::ranges::any_of(found.differences, [&](const Difference& difference) {
      return difference.kind == DifferenceKind::NewFood && difference.food == link.food;
    });
  correctForMany(found.foods, found, rule);
  nameInseparable(found.foods, compared.windows);
  std::ranges::stable_sort(found.foods, {}, [](const FoodLink& link) {
    return std::pair(!link.days.comparable(), link.test.twoSided);
  });
  return found;
}

}  // namespace tarebowl::health
