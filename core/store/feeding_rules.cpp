// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_lines.h"
#include "core/store/record_rules.h"
#include "core/store/write.h"

#include <fmt/format.h>

namespace tarebowl::store {

using quantity::Grams;

void refuseUnsound(Collection::Inner& inner, long long, const intake::SwapMade& swap) {
  if (swap.given.empty()) refuse(inner, "nothing is given in place of " + swap.food);
  if (swap.why.empty()) refuse(inner, "a swap needs a reason");
  for (const intake::GivenInstead& given : swap.given)
    if (given.food.empty() || !(given.amount > Grams(0)))
      refuse(inner, "what is given instead is a food and grams above 0");
}

void refuseUnsound(Collection::Inner& inner, long long, const intake::ControlPan& pan) {
  if (!(pan.start > Grams(0)) || (pan.end && !(*pan.end >= Grams(0))))
    refuse(inner, "a control pan holds something at its start and nothing below 0 at its end");
  if (pan.food.empty() == pan.foodClass.empty())
    refuse(inner, "a control pan stands for one food or for one class of foods");
}

void refuseUnsound(Collection::Inner& inner, long long, const intake::ToleranceRule& rule) {
  if (!intake::isSound(rule)) refuse(inner, "a tolerance is of numbers of 0 and more");
}

std::string nameOf(const intake::SwapMade& swap) {
  return fmt::format("the swap of {} in {}", swap.food, nameOf(swap.instead.bowl));
}

std::string nameOf(const intake::ControlPan& pan) {
  return fmt::format("the control pan at {} on {}", pan.place, quantity::isoDate(pan.day));
}

std::string nameOf(const intake::ToleranceRule&) {
  return "the rule of weighing";
}

}  // namespace tarebowl::store
