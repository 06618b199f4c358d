// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/food/sample.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::food {

/// A value that goes before every sample, per 100 g as fed; the reason must be given.
struct Override {
  NutrientId nutrient{0};
  quantity::AsFedContent amount{};
  std::optional<quantity::AsFedContent> sd{};
  std::string reason{};
  bool operator==(const Override&) const = default;
};

/// How a composition follows from samples (house rule, no source):
///  1. an override goes before everything;
///  2. own lab goes before publication, publication before label, label before estimate: the first of them
///  that
///     has a result gives the value. A label's guarantee (>=, <=) is no result, so it never stands in for a
///     mean; it is kept as a bound where there is no result at all;
///  3. of the own lab's results those up to `pooledYears` older than the newest are pooled (pooling.h); of
///  the
///     others the newest alone is taken. Results without a date count only where none has one, the last
///     listed as the newest;
///  4. only measured values (=) make a mean. A result below quantification, <, > or not detected counts as
///     unknown with a bound: it is left out of a mean, and where nothing was measured the newest stands as a
///     bound. A trace stands as the amount stated with it.
/// A value on dry matter (per 1000 kcal) is read with its own sample's water (energy), else with the food's.
struct DerivationRule {
  int pooledYears = 5;
};

enum class DerivedBy {
  Override,
  PooledOwnLab,
  NewestResult,
  BoundOnly,
  Cooking,
  Recipe,     ///< a bound where the qualifier says "at least"
  SumOfParts  ///< see sums.h; a bound where the qualifier says "at least"
};

enum class LeftOutBecause {
  Excluded,      ///< by hand, with a reason
  LessTrusted,   ///< another origin has a result
  Older,         ///< than the newest, or than the pooled years
  Undated,       ///< others have a date
  BasisUnknown,  ///< stated on dry matter or energy, and neither is known
  Guarantee,     ///< a label's minimum or maximum is no mean
  NotMeasured    ///< below quantification, <, >, trace, not detected, beside measured values
};

struct LeftOut {
  std::size_t sample;  ///< index among the samples
  LeftOutBecause because;
  bool operator==(const LeftOut&) const = default;
};

/// One nutrient of the composition and how it came about.
struct DerivedValue {
  NutrientId nutrient{0};
  NutrientValue value{};  ///< a bound where the qualifier says so
  DerivedBy by = DerivedBy::NewestResult;
  std::optional<SampleOrigin> origin{};
  std::vector<std::size_t> used{};  ///< indices of the samples that made it
  std::vector<LeftOut> leftOut{};
  std::string reason{};  ///< of an override
};

struct Derivation {
  std::vector<DerivedValue> values{};  ///< ordered by nutrient
  [[nodiscard]] const DerivedValue* find(NutrientId nutrient) const;
  /// What diets count with: means and traces. A nutrient with no more than a bound stays unknown.
  [[nodiscard]] Composition composition() const;
  /// The same without the sums that were worked out from their parts: what somebody stated of the food.
  [[nodiscard]] Composition stated() const;
};

[[nodiscard]] Derivation derive(std::span<const Sample> samples, std::span<const Override> overrides = {},
                                const DerivationRule& rule = {});

}  // namespace tarebowl::food
