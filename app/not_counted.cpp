// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/not_counted.h"

#include <fmt/format.h>

#include <ostream>
#include <string_view>

namespace tarebowl::app {

namespace {

std::string_view wordsFor(diet::NotCounted why) {
  switch (why) {
    case diet::NotCounted::NoFoodKnowsNutrient:
      return "of no food is it known";
    case diet::NotCounted::NoFoodOfGroup:
      return "no food is of its group";
    case diet::NotCounted::BodyMassUnknown:
      return "the body mass is not known";
    case diet::NotCounted::EnergyIsNoFeedingRate:
      return "the need of an animal without body heat of its own is no feeding rate; state a target in its "
             "profile";
    case diet::NotCounted::DryMatterUnknown:
      return "it does not say of how dry a feed it speaks";
  }
  return "it cannot be judged";
}

}  // namespace

void tellNotCounted(const std::vector<diet::RuleNotCounted>& rules, std::ostream& out) {
  for (const diet::RuleNotCounted& rule : rules)
    out << fmt::format("not counted: {} ({})\n", rule.id, wordsFor(rule.why));
}

}  // namespace tarebowl::app
