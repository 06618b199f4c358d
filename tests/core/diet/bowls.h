// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

/// Short ways to say a balance problem in a test. All foods made here are invented, with round numbers.
namespace tarebowl::diet::testing {

struct Value {
  std::string_view tagname;
  double per100g;
  std::optional<double> sd{};
};

struct Zone {
  std::optional<double> min{};
  std::optional<double> max{};
};

[[nodiscard]] food::NutrientId nutrient(std::string_view tagname);
[[nodiscard]] DietFood makeFood(std::string id, std::string group, std::initializer_list<Value> values);
/// The target's id is its tagname.
[[nodiscard]] animal::Target target(std::string_view tagname, Zone zone, quantity::Unit unit,
                                    quantity::Basis basis);
[[nodiscard]] animal::RatioTarget ratio(std::string_view of, std::string_view to, Zone zone);
[[nodiscard]] ShareRule share(std::string group, Zone zone, quantity::Basis basis);
[[nodiscard]] Diet grams(std::initializer_list<double> values);

/// 100 g of greens: 10 g dry matter, 200 mg Ca, 50 mg P, 40 kcal. 100 g of insects: 40 g dry matter, 40 mg
/// Ca, 300 mg P, 200 kcal. Energy as given; the reference is 200 g greens: 0.02 kg dry matter, 400 mg Ca, 100
/// mg P, 80 kcal.
[[nodiscard]] BalanceProblem greensAndInsects();

/// 100 g greens and 50 g insects: 150 g as fed, 30 g dry matter, 220 mg Ca, 200 mg P, 140 kcal.
[[nodiscard]] Diet usualBowl();

}  // namespace tarebowl::diet::testing
