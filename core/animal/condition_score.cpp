// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/condition_score.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tarebowl::animal {

namespace {

constexpr std::array<ScoreScale, 2> kScales{{
    {.id = "condition-9",
     .name = "Body condition, 9 points",
     .lowest = 1.0,
     .highest = 9.0,
     .step = 1.0,
     .ideal = 5.0,
     .lowestWords = "emaciated",
     .highestWords = "obese",
     .source = "9-point scale for dogs and cats as printed by a veterinary journal (dvm360.com)",
     .provenance = Provenance::Seen},
    {.id = "condition-5",
     .name = "Body condition, 5 points",
     .lowest = 1.0,
     .highest = 5.0,
     .step = 0.5,
     .ideal = 3.0,
     .lowestWords = "emaciated",
     .highestWords = "obese",
     .source = "5-point scale with half points for macaques (PMC3276963)",
     .provenance = Provenance::Seen},
}};

}  // namespace

std::span<const ScoreScale> conditionScales() {
  return kScales;
}

const ScoreScale* findConditionScale(std::string_view id) {
  const auto* const found = std::ranges::find(kScales, id, &ScoreScale::id);
  return found == kScales.end() ? nullptr : found;
}

std::optional<ConditionProblem> problemWith(const ConditionReading& reading) {
  const ScoreScale* scale = findConditionScale(reading.scale);
  if (scale == nullptr) return ConditionProblem::UnknownScale;
  if (!(reading.score >= scale->lowest && reading.score <= scale->highest))
    return ConditionProblem::OffTheScale;
  const double steps = (reading.score - scale->lowest) / scale->step;
  return steps == std::round(steps) ? std::nullopt : std::optional(ConditionProblem::BetweenSteps);
}

}  // namespace tarebowl::animal
