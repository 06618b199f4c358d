// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/wording.h"

#include "core/exchange/numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::exchange {

std::string shortNumber(double number) {
  constexpr int kSignificant = 4;
  constexpr int kMostDecimals = 9;
  if (!std::isfinite(number)) return "?";
  if (number == 0.0) return "0";
  const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(number))));
  const int decimals = std::clamp(kSignificant - 1 - magnitude, 0, kMostDecimals);
  std::string text = fmt::format("{:.{}f}", number, decimals);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

std::string shortNumber(std::optional<double> number) {
  return number ? shortNumber(*number) : "?";
}

double givenWay(double bound, diet::BoundSide side) {
  if (bound == 0.0 || !std::isfinite(bound)) return bound;
  constexpr double kFigures = 4.0;
  const double digit = std::pow(10.0, std::floor(std::log10(std::abs(bound))) + 1.0 - kFigures);
  const double steps = bound / digit;
  const double least = 1e-6;  // what is a round number but for rounding stays one
  return (side == diet::BoundSide::Min ? std::floor(steps + least) : std::ceil(steps - least)) * digit;
}

std::string gramsText(quantity::Grams grams, quantity::Grams scaleStep) {
  const auto digits = digitsOf(scaleStep);
  const quantity::Grams shown = onScale(grams, scaleStep);
  const double steps = shown / scaleStep;
  const bool onStep = std::abs(steps - std::round(steps)) < 1e-6;
  return digits && onStep ? fmt::format("{:.{}f}", shown.value(), *digits) : shortNumber(grams.value());
}

std::string zoneText(std::optional<double> min, std::optional<double> max) {
  if (min && max) return fmt::format("{} … {}", shortNumber(*min), shortNumber(*max));
  if (min) return fmt::format("≥ {}", shortNumber(*min));
  return fmt::format("≤ {}", shortNumber(max));
}

std::string percentText(double share) {
  const double percent = 100.0 * share;
  const double rounded = std::round(percent);
  if (rounded >= 100.0 && percent < 100.0) return "> 99 %";
  if (rounded <= 0.0 && percent > 0.0) return "< 1 %";
  return fmt::format("{:.0f} %", rounded);
}

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string_view stateText(diet::TargetState state) {
  switch (state) {
    case diet::TargetState::Met:
      return "● met";
    case diet::TargetState::AtMin:
    case diet::TargetState::AtMax:
      return "◐ at limit";
    case diet::TargetState::Short:
      return "▼ short";
    case diet::TargetState::Over:
      return "▲ over";
    case diet::TargetState::Unknown:
      break;
  }
  return "? unknown";
}

std::string_view basisText(quantity::Basis basis) {
  switch (basis) {
    case quantity::Basis::AsFed:
      return "per kg as fed";
    case quantity::Basis::DryMatter:
      return "per kg DM";
    case quantity::Basis::Energy:
      return "per 1000 kcal ME";
    case quantity::Basis::Day:
      return "per animal and day";
    case quantity::Basis::BodyMass:
      return "per kg body mass";
    case quantity::Basis::MetabolicMass:
      break;
  }
  return "per kg^0.75 body mass";
}

std::string_view reasonText(diet::NotCounted why) {
  switch (why) {
    case diet::NotCounted::NoFoodKnowsNutrient:
      return "of no food is it known";
    case diet::NotCounted::NoFoodOfGroup:
      return "no food is of its group";
    case diet::NotCounted::BodyMassUnknown:
      return "the body mass is not known";
    case diet::NotCounted::EnergyIsNoFeedingRate:
      return "the need of an animal without body heat of its own is no feeding rate; state a target in its "
             "profile";
    case diet::NotCounted::DryMatterUnknown:
      return "it does not say of how dry a feed it speaks";
  }
  return "it cannot be judged";
}

}  // namespace tarebowl::exchange
