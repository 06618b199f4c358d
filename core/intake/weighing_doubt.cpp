// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/weighing_doubt.h"

#include "core/intake/scale_line.h"
#include "core/intake/time_of_sheet.h"

#include <cmath>

namespace tarebowl::intake {

namespace {

using quantity::Grams;

constexpr long long kMinute = 60;

/// A slip of the decimal point or of the unit leaves a weight that was near enough in its own unit.
bool isAbout(Grams weight, Grams planned, double factor, Grams tolerance) {
  constexpr double kSlack = 2.0;  // a slip and a little over are told as the slip
  return std::abs((weight / factor - planned).value()) <= kSlack * tolerance.value();
}

std::optional<WeighingDoubt> doubtOfSize(Grams actual, const WeighingFacts& facts) {
  const WeightState state = stateOf(facts.planned, actual, facts.tolerance);
  if (state == WeightState::In) return std::nullopt;
  if (facts.planned > Grams(0)) {
    if (isAbout(actual, facts.planned, 10.0, facts.tolerance)) return WeighingDoubt::TenTimes;
    if (actual > Grams(0) && isAbout(actual, facts.planned, 0.1, facts.tolerance))
      return WeighingDoubt::TenthOf;
    if (isAbout(actual, facts.planned, 1.0 / toGrams(1.0, ScaleUnit::Ounce).value(), facts.tolerance) &&
        actual > Grams(0))
      return WeighingDoubt::NotInGrams;
  }
  return state == WeightState::Over ? WeighingDoubt::Over : WeighingDoubt::Under;
}

bool isReadTwice(Grams actual, long long now, const WeighingFacts& facts) {
  if (!facts.before || !facts.before->otherBowl || facts.before->actual != actual) return false;
  const auto then = secondsFrom(facts.day, facts.before->at);
  return then && now >= *then && now - *then < kMinute;
}

}  // namespace

std::vector<WeighingDoubt> doubtsAbout(Grams actual, const std::string& at, const WeighingFacts& facts) {
  if (!(actual >= Grams(0))) return {WeighingDoubt::BelowNothing};
  std::vector<WeighingDoubt> doubts;
  if (const auto size = doubtOfSize(actual, facts)) doubts.push_back(*size);
  const auto now = secondsFrom(facts.day, at);
  if (!now) return doubts;
  if (isReadTwice(actual, *now, facts)) doubts.push_back(WeighingDoubt::AsBowlBefore);
  const auto then = facts.before ? secondsFrom(facts.day, facts.before->at) : std::nullopt;
  if (then && *now < *then) doubts.push_back(WeighingDoubt::ClockWentBack);
  constexpr long long kDay = 86'400;  // a sheet is prepared the evening before where clocks are ahead of UTC
  if (*now < -kDay) doubts.push_back(WeighingDoubt::DayToCome);
  return doubts;
}

}  // namespace tarebowl::intake
