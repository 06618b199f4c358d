// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/food/stated_value.h"
#include "core/quantity/content.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tarebowl::food {

/// Where a set of values comes from, the most trusted first.
enum class SampleOrigin { OwnLab, Publication, Label, Estimate };

/// "own-lab", "publication", "label", "estimate": as files and the collection write it.
[[nodiscard]] std::string_view symbolOf(SampleOrigin origin);
[[nodiscard]] std::optional<SampleOrigin> parseSampleOrigin(std::string_view text);

/// An amount in the nutrient's own unit on the basis on which it was reported: per 100 g as fed, per 100 g DM
/// or per 1000 kcal ME. The type says which, so that the bases cannot be mixed.
using SampleContent =
    std::variant<quantity::AsFedContent, quantity::DryMatterContent, quantity::EnergyContent>;

[[nodiscard]] quantity::Basis basisOf(const SampleContent& content);
[[nodiscard]] double amountOf(const SampleContent& content);
/// Nothing for a basis that is no property of a food.
[[nodiscard]] std::optional<SampleContent> contentOn(quantity::Basis basis, double amount);

/// The number as it stood in the report: so much (unit) per so much of the basis.
struct Reported {
  double amount = 0.0;
  quantity::Unit unit = quantity::Unit::Gram;
  double per = 100.0;
  bool operator==(const Reported&) const = default;
};

/// One nutrient of one sample.
struct SampleValue {
  NutrientId nutrient{0};
  SampleContent amount{};      ///< finite, not negative; the bound where the qualifier is one
  std::optional<double> sd{};  ///< sample standard deviation, on the amount's basis and in its unit
  std::optional<int> count{};  ///< how many determinations the amount is the mean of; 1 or more
  Qualifier qualifier = Qualifier::Equal;
  std::optional<Reported> reported{};  ///< missing where it was reported as it is stored
  bool operator==(const SampleValue&) const = default;
};

/// What one laboratory report, publication, label or estimate says of one food.
struct Sample {
  SampleOrigin origin = SampleOrigin::OwnLab;
  std::string source{};                  ///< "Field laboratory report 2026-114", "SR28"
  std::string sourceCode{};              ///< the food's code in that source, where it has one
  std::optional<quantity::Date> date{};  ///< of sampling or publication
  std::string lab{};
  std::string method{};
  std::string batch{};
  std::string note{};
  std::optional<std::string> excluded{};  ///< why it is left out of the composition; missing: it is not
  std::vector<SampleValue> values{};
  bool operator==(const Sample&) const = default;
};

/// Reads a report's statement into the nutrient's own unit, keeping its basis. Errors as in stated_value.h;
/// what it takes to change the basis is not needed yet.
[[nodiscard]] std::variant<SampleValue, StatementError> toSampleValue(NutrientId nutrient,
                                                                      const StatedValue& stated);

}  // namespace tarebowl::food
