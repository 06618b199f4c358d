// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"
#include "core/quantity/date.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace tarebowl::animal {

/// A scale on which body condition or faeces are scored. Published scales differ in length and direction, so
/// a score is never stored without its scale.
struct ScoreScale {
  std::string_view id;
  std::string_view name;
  double lowest;
  double highest;
  double step;
  double ideal;
  std::string_view lowestWords;   ///< "emaciated"
  std::string_view highestWords;  ///< "obese"
  std::string_view source;
  Provenance provenance;
};

[[nodiscard]] std::span<const ScoreScale> conditionScales();
[[nodiscard]] const ScoreScale* findConditionScale(std::string_view id);

struct ConditionReading {
  quantity::Date on{};
  std::string scale{};
  double score = 0.0;  ///< on the scale, a whole number of its steps
  std::string note{};
  bool operator==(const ConditionReading&) const = default;
};

enum class ConditionProblem { UnknownScale, OffTheScale, BetweenSteps };
[[nodiscard]] std::optional<ConditionProblem> problemWith(const ConditionReading& reading);

}  // namespace tarebowl::animal
