// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/diet/literal_reading.h"

#include "core/food/vitamin_units.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <cmath>

namespace tarebowl::diet::testing {
namespace {

using quantity::Basis;

std::optional<double> per100g(const BalanceProblem& p, const DietFood& food, food::NutrientId nutrient) {
  if (nutrient != food::nutrients::energy()) return food.composition.amountPer100g(nutrient);
  const auto energy = food::estimateEnergy(p.energyMethod, food.composition).per100g;
  return energy ? std::optional(energy->value()) : std::nullopt;
}

double eaten(const DietFood& food, quantity::Grams offered) {
  return food.eatenFraction * offered.value();
}

/// N_k(e)
double amount(const BalanceProblem& p, const Diet& x, food::NutrientId nutrient) {
  double sum = 0;
  for (std::size_t j = 0; j < x.size(); ++j) {
    sum += eaten(p.foods[j], x[j]) / 100 * per100g(p, p.foods[j], nutrient).value_or(0);
  }
  return sum;
}

/// sd of N_k(e)
double scatter(const BalanceProblem& p, const Diet& x, food::NutrientId nutrient) {
  double squares = 0;
  for (std::size_t j = 0; j < x.size(); ++j) {
    const double sd = p.foods[j].composition.sdPer100g(nutrient).value_or(0);
    if (per100g(p, p.foods[j], nutrient)) squares += std::pow(sd / 100 * eaten(p.foods[j], x[j]), 2);
  }
  return std::sqrt(squares);
}

double dryMatter(const BalanceProblem& p, const Diet& x, std::size_t j) {
  const auto water = p.foods[j].composition.amountPer100g(food::nutrients::water());
  return water ? eaten(p.foods[j], x[j]) * (100 - *water) / 100 : 0;
}

/// B(e) of one food, in kg, kg dry matter or 1000 kcal.
double basisOfFood(const BalanceProblem& p, const Diet& x, std::size_t j, Basis basis) {
  if (basis == Basis::AsFed) return eaten(p.foods[j], x[j]) / 1000;
  if (basis == Basis::DryMatter) return dryMatter(p, x, j) / 1000;
  return eaten(p.foods[j], x[j]) / 100 * per100g(p, p.foods[j], food::nutrients::energy()).value_or(0) / 1000;
}

double basisAmount(const BalanceProblem& p, const Diet& x, Basis basis) {
  if (basis == Basis::Day) return 1;
  if (basis == Basis::BodyMass) return p.eater.bodyMass->value();
  if (basis == Basis::MetabolicMass) return std::pow(p.eater.bodyMass->value(), 0.75);
  double sum = 0;
  for (std::size_t j = 0; j < x.size(); ++j) sum += basisOfFood(p, x, j, basis);
  return sum;
}

template <class Known>
double coverage(const BalanceProblem& p, const Diet& x, Known known) {
  double all = 0;
  double covered = 0;
  for (std::size_t j = 0; j < x.size(); ++j) {
    all += dryMatter(p, x, j);
    if (known(j)) covered += dryMatter(p, x, j);
  }
  return all > 0 ? covered / all : 1;
}

double oneIfNone(double atReference) {
  return atReference > 0 ? atReference : 1;
}

TargetBalance read(const BalanceProblem& p, const Diet& x, const animal::Target& t) {
  const double unit = *food::toOwnUnitFactor(t.nutrient, t.unit);
  const double n = amount(p, x, t.nutrient) / unit;
  const double sd = scatter(p, x, t.nutrient) / unit;
  const double b = basisAmount(p, x, t.basis);
  const double b0 = oneIfNone(basisAmount(p, literalReference(p), t.basis));
  const double z = p.confidence ? quantile(boost::math::normal(), *p.confidence) : 0;
  TargetBalance line;
  if (b > 0) {
    line.value = n / b;
    line.sd = sd / b;
  }
  if (t.min) line.shortfall += std::max(0.0, *t.min * b - (n - z * sd)) / ((*t.min == 0 ? 1 : *t.min) * b0);
  if (t.max) line.shortfall += std::max(0.0, n + z * sd - *t.max * b) / ((*t.max == 0 ? 1 : *t.max) * b0);
  line.coverage =
      coverage(p, x, [&](std::size_t j) { return per100g(p, p.foods[j], t.nutrient).has_value(); });
  return line;
}

TargetBalance read(const BalanceProblem& p, const Diet& x, const animal::RatioTarget& r) {
  const double of = amount(p, x, r.of);
  const double to = amount(p, x, r.to);
  const double to0 = oneIfNone(amount(p, literalReference(p), r.to));
  TargetBalance line;
  if (to > 0) {
    line.value = of / to;
    line.sd =
        std::sqrt(std::pow(scatter(p, x, r.of) / to, 2) + std::pow(of * scatter(p, x, r.to) / (to * to), 2));
  }
  if (r.min) line.shortfall += std::max(0.0, *r.min * to - of) / ((*r.min == 0 ? 1 : *r.min) * to0);
  if (r.max) line.shortfall += std::max(0.0, of - *r.max * to) / ((*r.max == 0 ? 1 : *r.max) * to0);
  const auto knows = [&](food::NutrientId nutrient) {
    return coverage(p, x, [&](std::size_t j) { return per100g(p, p.foods[j], nutrient).has_value(); });
  };
  line.coverage = std::min(knows(r.of), knows(r.to));
  return line;
}

TargetBalance read(const BalanceProblem& p, const Diet& x, const ShareRule& s) {
  const double b = basisAmount(p, x, s.basis);
  const double b0 = oneIfNone(basisAmount(p, literalReference(p), s.basis));
  double group = 0;
  for (std::size_t j = 0; j < x.size(); ++j) {
    if (p.foods[j].group == s.group) group += basisOfFood(p, x, j, s.basis);
  }
  TargetBalance line;
  if (b > 0) {
    line.value = group / b;
    if (s.min) line.shortfall += std::max(0.0, *s.min - group / b) * b / b0;
    if (s.max) line.shortfall += std::max(0.0, group / b - *s.max) * b / b0;
  }
  line.coverage = coverage(p, x, [&](std::size_t j) {
    return s.basis != Basis::Energy || per100g(p, p.foods[j], food::nutrients::energy()).has_value();
  });
  return line;
}

}  // namespace

Diet literalReference(const BalanceProblem& p) {
  if (p.reference) {
    double total = 0;
    for (const quantity::Grams& amountOfFood : *p.reference) total += amountOfFood.value();
    if (total > 0) return *p.reference;
  }
  const auto count = static_cast<double>(p.foods.size());
  const Diet hundred(p.foods.size(), quantity::Grams(100 / count));
  for (const animal::Target& t : p.targets) {
    if (t.nutrient != food::nutrients::energy() || t.basis != Basis::Day) continue;
    const double low = t.min.value_or(t.max.value_or(0));
    const double high = t.max.value_or(low);
    const double need = *food::toOwnUnitFactor(t.nutrient, t.unit) * (low + high) / 2;
    const double energy = amount(p, hundred, t.nutrient);
    if (!(need > 0) || !(energy > 0)) return hundred;
    return Diet(p.foods.size(), quantity::Grams(100 / count * need / energy));
  }
  return hundred;
}

Balance literalBalance(const BalanceProblem& p, const Diet& x) {
  Balance result;
  const auto add = [&](const auto& rules) {
    for (const auto& rule : rules) {
      result.targets.push_back(read(p, x, rule));
      if (!rule.hard) result.shortfall += rule.weight * result.targets.back().shortfall;
    }
  };
  add(p.targets);
  add(p.ratios);
  add(p.shares);
  return result;
}

}  // namespace tarebowl::diet::testing
