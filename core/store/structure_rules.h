// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/house_rule.h"
#include "core/store/write.h"

#include <cmath>
#include <string>

/// Shares and choices, which a target profile states and a diet too.
namespace tarebowl::store {

inline void refuseUnsoundWeight(const Collection::Inner& inner, const std::string& id, double weight) {
  if (!std::isfinite(weight) || weight < 0.0) refuse(inner, id + " needs a weight of 0 or more");
}

inline void refuseUnsoundShare(const Collection::Inner& inner, const animal::ShareRule& rule) {
  refuseUnsoundWeight(inner, rule.id, rule.weight);
  if (rule.min.value_or(0.0) > 1.0 || rule.max.value_or(0.0) > 1.0)
    refuse(inner, rule.id + " is a share from 0 to 1");
}

inline void refuseUnsoundChoice(const Collection::Inner& inner, const animal::ChoiceRule& rule) {
  if (rule.atLeast < 0 || rule.atMost.value_or(rule.atLeast) < rule.atLeast ||
      !(rule.minEach >= quantity::Grams(0)))
    refuse(inner, "the choice among " + rule.group + " must run from 0 or more foods upwards");
}

}  // namespace tarebowl::store
