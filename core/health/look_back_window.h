// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/look_back.h"

#include <map>
#include <set>
#include <string>

namespace tarebowl::health {

/// What was eaten of a food in one window.
struct WindowFood {
  double grams = 0.0;  ///< eaten, or offered where that is not known
  bool leftoverMissing = false;
  bool swappedIn = false;
  std::set<std::string> lots{};  ///< that it came from, as far as they are named
};

/// The bowls given in the hours before a look, food by food.
struct Window {
  LookedOn look{};
  std::size_t bowls = 0;
  std::map<std::string, WindowFood> foods{};
  [[nodiscard]] bool holds(const std::string& food) const {
    const auto found = foods.find(food);
    return found != foods.end() && found->second.grams > 0.0;
  }
};

[[nodiscard]] Window windowBefore(const LookedOn& look, std::span<const BowlEaten> bowls, int hours);

/// What was otherwise in a window than in those it is compared with.
[[nodiscard]] std::vector<Difference> differencesOf(const Window& window, std::span<const Window> comparable,
                                                    std::span<const BowlEaten> bowls,
                                                    const LookBackRule& rule);

}  // namespace tarebowl::health
