// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"
#include "core/quantity/basis.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::animal {

/// "At most 10 % of the dry matter from fruit." Shares are 0 … 1 of the whole on the stated basis.
struct ShareRule {
  std::string id;
  std::string group;
  std::optional<double> min;
  std::optional<double> max;
  quantity::Basis basis = quantity::Basis::DryMatter;  ///< AsFed, DryMatter or Energy
  bool hard = false;
  double weight = 1.0;
  TargetOrigin origin;
  bool operator==(const ShareRule&) const = default;
};

/// "Two cooked vegetables, at least 5 g of each." Always hard. A food of the group is either 0 or at least
/// minEach.
struct ChoiceRule {
  std::string group;
  int atLeast = 0;
  std::optional<int> atMost;
  quantity::Grams minEach{0};
  bool operator==(const ChoiceRule&) const = default;
};

/// "No cultivated fruit", "no seed mix": a food group, or one food by its code, that is not given. Always
/// hard. Exactly one of group and food is named.
struct Exclusion {
  std::string id{};
  std::string group{};
  std::string food{};
  std::string reason{};
  TargetOrigin origin{};
  bool operator==(const Exclusion&) const = default;
};

}  // namespace tarebowl::animal
