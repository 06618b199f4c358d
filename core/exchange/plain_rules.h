// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// The rules of a rotation that most houses ask for, as a person fills them in. All else that a file of rules
/// may say (rotation_json.h) is written by hand.
struct PlainRules {
  int days = 7;
  std::optional<int> longestRun = 2;   ///< no food more days running
  std::optional<int> wanted{};         ///< so many different foods over the period
  double widenDaily = 0.5;             ///< how much wider than the target a single day's zone is
  std::optional<int> mostFoods{};      ///< so many different foods a day
  std::vector<std::string> fasting{};  ///< "mon" … "sun": nothing is fed on these
  bool operator==(const PlainRules&) const = default;
};

/// "tarebowl-rotation-rules/1".
[[nodiscard]] std::string writeRotationRules(const PlainRules& rules);

}  // namespace tarebowl::exchange
