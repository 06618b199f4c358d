// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/faeces.h"

#include <algorithm>
#include <set>

namespace tarebowl::intake {

namespace {

bool isAmount(double value) {
  return value >= 0.0;  // not of a NaN
}

std::optional<FaecesProblem> problemWith(const std::vector<FaecesValue>& values) {
  std::set<food::NutrientId> seen;
  for (const FaecesValue& value : values) {
    if (value.nutrient == food::nutrients::energy()) return FaecesProblem::Energy;
    if (!isAmount(value.per100gDryMatter) || !isAmount(value.sd.value_or(0.0)))
      return FaecesProblem::BadValue;
    if (!seen.insert(value.nutrient).second) return FaecesProblem::TwiceTheSame;
  }
  return std::nullopt;
}

}  // namespace

std::optional<FaecesProblem> problemWith(const FaecesCollected& faeces) {
  if (faeces.until < faeces.from) return FaecesProblem::DaysBackwards;
  if (!(faeces.fresh > quantity::Grams(0))) return FaecesProblem::NothingWeighed;
  constexpr double kAll = 100.0;
  if (!(faeces.dryMatter > 0.0) || faeces.dryMatter > kAll || !isAmount(faeces.dryMatterSd.value_or(0.0)))
    return FaecesProblem::NoDryMatter;
  return problemWith(faeces.values);
}

}  // namespace tarebowl::intake
