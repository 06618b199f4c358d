// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/body_mass.h"

#include "core/food/robust.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <utility>

namespace tarebowl::animal {

namespace {

using quantity::Date;
using quantity::Kilograms;

// A slip between g and kg is a factor of 1000; an animal and its kind differ by less than a factor of 5.
constexpr double kSlip = 1000.0;
constexpr double kKindDiffersBy = 5.0;
// Nearest readings that say what was to be expected; with fewer than three the kind says it, where known.
constexpr std::size_t kNearest = 5;
constexpr std::size_t kEnoughReadings = 3;
// Gut fill alone moves a mass by some per cent (common practice, no source): a change up to this is ordinary.
constexpr double kOrdinaryChange = 0.05;
constexpr std::size_t kEnoughRates = 4;

bool isMass(Kilograms mass) {
  return mass.value() > 0.0 && std::isfinite(mass.value());
}

int daysBetween(Date a, Date b) {
  return static_cast<int>((std::chrono::sys_days(b) - std::chrono::sys_days(a)).count());
}

using Indices = std::vector<std::size_t>;

/// What the readings nearest in time lead one to expect; of a short series what is expected of the kind.
std::optional<double> expectedAt(std::size_t reading, const Indices& believed,
                                 std::span<const MassReading> series, std::optional<Kilograms> ofKind) {
  Indices others;
  for (const std::size_t other : believed)
    if (other != reading) others.push_back(other);
  if (others.size() < kEnoughReadings && ofKind && isMass(*ofKind)) return ofKind->value();
  if (others.empty()) return std::nullopt;
  const auto distance = [&](std::size_t other) {
    return std::abs(daysBetween(series[reading].on, series[other].on));
  };
  std::ranges::sort(others, {}, distance);
  const int far = distance(others[std::min(kNearest, others.size()) - 1]);
  std::vector<double> masses;
  for (const std::size_t other : others)
    if (distance(other) <= far) masses.push_back(series[other].mass.value());
  return food::medianOf(std::move(masses));
}

std::optional<MassDoubt> slipOf(double mass, double expected) {
  const double ratio = mass / expected;
  if (ratio >= kSlip / kKindDiffersBy) return MassDoubt::GramsAsKilograms;
  if (ratio <= kKindDiffersBy / kSlip) return MassDoubt::KilogramsAsGrams;
  return std::nullopt;
}

/// Relative change per day between readings that follow each other.
class Rates {
 public:
  Rates(const Indices& believed, std::span<const MassReading> series) {
    for (std::size_t i = 1; i < believed.size(); ++i) {
      const MassReading& before = series[believed[i - 1]];
      const MassReading& after = series[believed[i]];
      const double change = std::log(after.mass.value() / before.mass.value());
      changes_.push_back(change);
      rates_.push_back(change / std::max(1, daysBetween(before.on, after.on)));
    }
  }

  [[nodiscard]] std::size_t count() const { return rates_.size(); }

  /// How far a rate lies from those that do not touch the reading in question; 0 where the change is ordinary
  /// or too few are left to judge by. Above 0 where the mass grew.
  [[nodiscard]] double oddness(std::size_t rate, std::size_t reading) const {
    if (std::abs(changes_[rate]) <= std::log1p(kOrdinaryChange)) return 0.0;
    std::vector<double> others;
    for (std::size_t i = 0; i < rates_.size(); ++i)
      if (i != reading && i + 1 != reading && i != rate) others.push_back(rates_[i]);
    if (others.size() < kEnoughRates) return 0.0;
    if (const auto scatter = food::robustScatter(others)) return food::robustZ(rates_[rate], *scatter);
    if (rates_[rate] == others.front()) return 0.0;
    return std::copysign(std::numeric_limits<double>::infinity(), rates_[rate] - others.front());
  }

 private:
  std::vector<double> changes_;
  std::vector<double> rates_;
};

/// How odd a reading is that its neighbours do not confirm: of one within the series, away and back again; of
/// the first or last, a leap that no neighbouring step shares. 0 where nothing is odd.
double oddnessOf(std::size_t reading, const Rates& rates) {
  const auto beyond = [](double z) { return std::abs(z) > food::kRobustZLimit; };
  const bool isFirst = reading == 0;
  const bool isLast = reading == rates.count();
  if (!isFirst && !isLast) {
    const double in = rates.oddness(reading - 1, reading);
    const double out = rates.oddness(reading, reading);
    return beyond(in) && beyond(out) && in * out < 0.0 ? std::abs(in) + std::abs(out) : 0.0;
  }
  const std::size_t leap = isFirst ? 0 : reading - 1;
  const std::size_t next = isFirst ? 1 : reading - 2;
  const double z = rates.oddness(leap, reading);
  return beyond(z) && !beyond(rates.oddness(next, reading)) ? std::abs(z) : 0.0;
}

/// Takes the oddest reading out until none is odd: a wild one makes its neighbours look odd too.
void doubtByHistory(std::vector<DoubtedReading>& doubts, Indices believed,
                    std::span<const MassReading> series) {
  std::ranges::stable_sort(believed, {}, [&](std::size_t i) { return series[i].on; });
  while (believed.size() > kEnoughRates) {
    const Rates rates(believed, series);
    std::size_t oddest = 0;
    double most = 0.0;
    for (std::size_t i = 0; i < believed.size(); ++i)
      if (const double oddness = oddnessOf(i, rates); oddness > most) {
        most = oddness;
        oddest = i;
      }
    if (!(most > 0.0)) return;
    const std::size_t reading = believed[oddest];
    doubts.push_back({reading, MassDoubt::FarFromOwnHistory,
                      expectedAt(reading, believed, series, std::nullopt).value_or(0.0)});
    believed.erase(believed.begin() + static_cast<std::ptrdiff_t>(oddest));
  }
}

}  // namespace

std::vector<DoubtedReading> doubtsAbout(std::span<const MassReading> series, Date today,
                                        std::optional<Kilograms> expected) {
  std::vector<DoubtedReading> doubts;
  Indices counted;
  for (std::size_t i = 0; i < series.size(); ++i) {
    if (series[i].excluded) continue;
    if (isMass(series[i].mass) && series[i].on <= today) counted.push_back(i);
  }
  Indices believed;
  for (std::size_t i = 0; i < series.size(); ++i) {
    const MassReading& reading = series[i];
    if (reading.excluded) continue;
    const auto others = expectedAt(i, counted, series, expected);
    std::optional<MassDoubt> doubt;
    if (!isMass(reading.mass)) {
      doubt = MassDoubt::NotAboveZero;
    } else if (reading.on > today) {
      doubt = MassDoubt::InTheFuture;
    } else if (others) {
      doubt = slipOf(reading.mass.value(), *others);
    }
    if (doubt) {
      doubts.push_back({i, *doubt, others.value_or(0.0)});
    } else {
      believed.push_back(i);
    }
  }
  doubtByHistory(doubts, std::move(believed), series);
  std::ranges::sort(doubts, {}, &DoubtedReading::reading);
  return doubts;
}

std::optional<MassDoubt> doubtAbout(const MassReading& reading, std::span<const MassReading> series,
                                    Date today, std::optional<Kilograms> expected) {
  std::vector<MassReading> all(series.begin(), series.end());
  all.push_back(reading);
  for (const DoubtedReading& doubted : doubtsAbout(all, today, expected))
    if (doubted.reading == series.size()) return doubted.doubt;
  return std::nullopt;
}

std::optional<CurrentMass> massOn(std::span<const MassReading> series, Date day, int days) {
  std::optional<Date> newest;
  const auto counts = [&](const MassReading& r) { return !r.excluded && isMass(r.mass) && r.on <= day; };
  for (const MassReading& reading : series)
    if (counts(reading) && (!newest || reading.on > *newest)) newest = reading.on;
  if (!newest) return std::nullopt;
  const bool isRecent = daysBetween(*newest, day) < days;
  std::vector<double> masses;
  for (const MassReading& reading : series)
    if (counts(reading) && (isRecent ? daysBetween(reading.on, day) < days : reading.on == *newest))
      masses.push_back(reading.mass.value());
  const std::size_t readings = masses.size();
  return CurrentMass{Kilograms(food::medianOf(std::move(masses))), *newest, readings};
}

std::optional<GroupMass> groupMass(std::span<const std::optional<CurrentMass>> members,
                                   const std::optional<CurrentMass>& whole) {
  Kilograms sum;
  std::size_t weighed = 0;
  for (const std::optional<CurrentMass>& member : members) {
    if (!member) continue;
    sum += member->mass;
    ++weighed;
  }
  if (weighed > 0) return GroupMass{sum / static_cast<double>(weighed), weighed};
  return whole ? std::optional(GroupMass{whole->mass, 0}) : std::nullopt;
}

}  // namespace tarebowl::animal
