// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/quantity/basis.h"
#include "core/quantity/unit.h"

#include <optional>
#include <string>

namespace tarebowl::animal {

/// Whether the source's own text was read when the target was written down, or recalled: a recalled value is
/// no citation. Derived: computed from values whose source was read.
enum class Provenance { Unstated, Seen, FromMemory, HouseRule, Invented, Derived };

/// Where a target comes from, and which species stands in where the animal itself was never measured.
struct TargetOrigin {
  std::string source;
  Provenance provenance = Provenance::Unstated;
  std::string modelSpecies;
  bool operator==(const TargetOrigin&) const = default;
};

/// "Between min and max of this nutrient per basis." min and max are in unit; at least one is present, min <=
/// max, both >= 0. A hard target must hold; a soft one may be missed at a price of weight per relative
/// shortfall.
struct Target {
  std::string id;
  food::NutrientId nutrient;
  std::optional<double> min;
  std::optional<double> max;
  quantity::Unit unit;
  quantity::Basis basis;
  bool hard = false;
  double weight = 1.0;
  TargetOrigin origin;
  bool operator==(const Target&) const = default;
};

/// "So much of one nutrient for one of another", e.g. Ca:P between 1.2 and 2. Amounts in the nutrients' own
/// units.
struct RatioTarget {
  std::string id;
  food::NutrientId of;
  food::NutrientId to;
  std::optional<double> min;
  std::optional<double> max;
  bool hard = false;
  double weight = 1.0;
  TargetOrigin origin;
  bool operator==(const RatioTarget&) const = default;
};

}  // namespace tarebowl::animal
