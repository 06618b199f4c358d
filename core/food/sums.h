// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/derivation.h"

#include <optional>
#include <span>
#include <vector>

namespace tarebowl::food {

/// What a sum is worked out from: factor · amount, both in their own units.
struct SumPart {
  NutrientId nutrient{0};
  double factor = 1.0;
  bool needed = true;  ///< false: a minor part, counted where it is known
};

/// A component that others add up to, and that targets speak of while tables state the parts.
struct NutrientSum {
  NutrientId sum{0};
  std::vector<SumPart> parts{};
};

/// Methionine and cystine, phenylalanine and tyrosine, EPA and DHA: as their names say. n-3: 18:3 (alpha),
/// 20:5, 22:5 and 22:6, with 20:3 where it is known; n-6: 18:2 and 20:4, with 18:3, 20:2 and 20:3 where they
/// are known; further acids of both series are traces in foods (house rule, no source). Non-phytate
/// phosphorus: phosphorus less the share of phosphorus in phytic acid, C6H18O24P6.
[[nodiscard]] std::span<const NutrientSum> nutrientSums();

/// Worked out from a composition. Where a needed part is unknown, what the known ones bring is the least that
/// it can be (Qualifier::AtLeast), and nothing where none is known or one is taken off. The scatter is the
/// sum of the parts' scatters, as if they rose and fell together, and unknown where one of them is.
[[nodiscard]] std::optional<NutrientValue> workOut(const NutrientSum& sum, const Composition& parts);

/// Adds the sums that nobody measured (DerivedBy::SumOfParts); what was measured or set by hand stays.
void addSums(Derivation& derivation);

}  // namespace tarebowl::food
