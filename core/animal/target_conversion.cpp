// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/target_conversion.h"

#include <array>
#include <cmath>

namespace tarebowl::animal {

namespace {

using quantity::Basis;

constexpr double kKilocaloriesOfBasis = 1000.0;

std::optional<double> positive(double value) {
  return value > 0.0 && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

template <class Value>
std::optional<double> positive(const std::optional<Value>& value) {
  if (!value) return std::nullopt;
  if constexpr (std::is_same_v<Value, double>)
    return positive(*value);
  else
    return positive(value->value());
}

/// The bases in a row, each with what an amount on the one before it is multiplied by. Body mass and
/// metabolic mass both follow on the day.
enum class Place { AsFed, DryMatter, Energy, Day, Mass };

Place placeOf(Basis basis) {
  switch (basis) {
    case Basis::AsFed:
      return Place::AsFed;
    case Basis::DryMatter:
      return Place::DryMatter;
    case Basis::Energy:
      return Place::Energy;
    case Basis::Day:
      return Place::Day;
    case Basis::BodyMass:
    case Basis::MetabolicMass:
      return Place::Mass;
  }
  return Place::Day;
}

std::optional<double> divided(double by, std::optional<double> divisor) {
  return divisor ? std::optional(by / *divisor) : std::nullopt;
}

/// From the place before to this one. `basis` tells the two masses apart.
std::optional<double> stepTo(Place place, Basis basis, const TargetScale& scale) {
  switch (place) {
    case Place::AsFed:
      return 1.0;
    case Place::DryMatter: {
      const auto fraction = positive(scale.dryMatterFraction);
      return fraction && *fraction <= 1.0 ? divided(1.0, fraction) : std::nullopt;
    }
    case Place::Energy:
      return divided(kKilocaloriesOfBasis, positive(scale.kcalPerKgDryMatter));
    case Place::Day: {
      const auto energy = positive(scale.energyPerDay);
      return energy ? std::optional(*energy / kKilocaloriesOfBasis) : std::nullopt;
    }
    case Place::Mass: {
      const auto mass = positive(scale.bodyMass);
      if (!mass) return std::nullopt;
      return divided(1.0, basis == Basis::BodyMass ? *mass : std::pow(*mass, 0.75));
    }
  }
  return std::nullopt;
}

/// The product of the steps after `from` up to the place of `to`.
std::optional<double> forward(Place from, Basis to, const TargetScale& scale) {
  double factor = 1.0;
  for (int place = static_cast<int>(from) + 1; place <= static_cast<int>(placeOf(to)); ++place) {
    const auto step = stepTo(static_cast<Place>(place), to, scale);
    if (!step) return std::nullopt;
    factor *= *step;
  }
  return factor;
}

}  // namespace

std::optional<double> basisFactor(Basis from, Basis to, const TargetScale& scale) {
  if (from == to) return 1.0;
  const Place start = placeOf(from);
  const Place end = placeOf(to);
  if (start == Place::Mass && end == Place::Mass) {
    const auto fromDay = forward(Place::Day, from, scale);
    const auto toDay = forward(Place::Day, to, scale);
    return fromDay && toDay ? std::optional(*toDay / *fromDay) : std::nullopt;
  }
  if (start < end) return forward(start, to, scale);
  return divided(1.0, forward(end, from, scale));
}

std::optional<Target> onBasis(const Target& target, Basis basis, const TargetScale& scale) {
  const auto factor = basisFactor(target.basis, basis, scale);
  if (!factor) return std::nullopt;
  Target converted = target;
  converted.basis = basis;
  if (converted.min) converted.min = *converted.min * *factor;
  if (converted.max) converted.max = *converted.max * *factor;
  return converted;
}

}  // namespace tarebowl::animal
