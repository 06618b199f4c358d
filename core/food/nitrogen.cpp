// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/nitrogen.h"

#include <array>
#include <cmath>
#include <stdexcept>

namespace tarebowl::food {

namespace {

constexpr std::string_view kSr28 = "USDA SR28 (2015), nitrogen factor of the food's description";
constexpr std::string_view kJanssen =
    "Janssen 2017, abstract: Tenebrio molitor, Alphitobius diaperinus, Hermetia illucens";
constexpr std::string_view kBoulos = "Boulos 2020, doi 10.3389/fnut.2020.00089, abstract";

constexpr std::array<NitrogenFactor, 13> kFactors{{
    {"crude protein of any food", kCrudeProteinFactor, std::nullopt,
     "protein with 16 % nitrogen, by definition"},
    {"insect larvae, whole", 4.76, 0.09, kJanssen},
    {"insect larvae, purified protein", 5.60, 0.39, kJanssen},
    {"mealworm", 5.41, std::nullopt, kBoulos},
    {"cricket", 5.25, std::nullopt, kBoulos},
    {"locust", 5.33, std::nullopt, kBoulos},
    {"almond", 5.18, std::nullopt, kSr28},
    {"sunflower seed and walnut", 5.30, std::nullopt, kSr28},
    {"peanut", 5.46, std::nullopt, kSr28},
    {"oats", 5.83, std::nullopt, kSr28},
    {"rice", 5.95, std::nullopt, kSr28},
    {"milk", 6.38, std::nullopt, kSr28},
    {"most foods", 6.25, std::nullopt, kSr28},
}};

double checkedFactor(double factor) {
  if (!(factor > 0.0) || !std::isfinite(factor)) throw std::domain_error("a nitrogen factor must be above 0");
  return factor;
}

}  // namespace

std::span<const NitrogenFactor> publishedNitrogenFactors() {
  return kFactors;
}

double proteinOf(double nitrogen, double factor) {
  return nitrogen * checkedFactor(factor);
}

double nitrogenOf(double protein, double factor) {
  return protein / checkedFactor(factor);
}

double restateProtein(double protein, double statedFactor, double wantedFactor) {
  return proteinOf(nitrogenOf(protein, statedFactor), wantedFactor);
}

}  // namespace tarebowl::food
