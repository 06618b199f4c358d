// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/food.h"

#include <array>
#include <cmath>

namespace tarebowl::food {

namespace {

constexpr std::array<std::string_view, 16> kForms{
    "raw",           "steamed",      "boiled", "baked",  "dried",    "live",   "fresh",    "frozen",
    "frozen-thawed", "freeze-dried", "ground", "powder", "pelleted", "soaked", "sprouted", "browse"};

bool isAboveZero(double value) {
  return std::isfinite(value) && value > 0.0;
}

}  // namespace

std::span<const std::string_view> commonForms() {
  return kForms;
}

std::optional<FoodProblem> problemWith(const Food& food) {
  if (food.code.empty()) return FoodProblem::NoCode;
  if (food.name.empty()) return FoodProblem::NoName;
  if (food.unitMass && !isAboveZero(food.unitMass->value())) return FoodProblem::UnitMassNotAboveZero;
  if (!isAboveZero(food.scaleStep.value())) return FoodProblem::ScaleStepNotAboveZero;
  if (!isAboveZero(food.edibleFraction) || food.edibleFraction > 1.0)
    return FoodProblem::EdibleFractionOutOfRange;
  if (food.pricePerKg && !(std::isfinite(*food.pricePerKg) && *food.pricePerKg >= 0.0))
    return FoodProblem::PriceNegative;
  return std::nullopt;
}

}  // namespace tarebowl::food
