// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/quantity.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::animal {

enum class MassMethod { Scale, TrainedOnScale, Carried, UnderAnaesthesia, Estimated };

/// One weighing of an animal, or the mean of a group whose animals are not told apart.
struct MassReading {
  quantity::Date on{};
  quantity::Kilograms mass{};  ///< above 0
  MassMethod method = MassMethod::Scale;
  std::string note{};
  std::optional<std::string> excluded{};  ///< why it does not count; missing: it does
  bool operator==(const MassReading&) const = default;
};

/// Why a reading is asked about before it is believed.
enum class MassDoubt {
  NotAboveZero,
  GramsAsKilograms,  ///< a thousand times what was expected: 180 kg for a tenrec of 180 g
  KilogramsAsGrams,
  FarFromOwnHistory,  ///< robust z of the daily rate of change beyond food::kRobustZLimit
  InTheFuture
};

struct DoubtedReading {
  std::size_t reading = 0;  ///< index into the series
  MassDoubt doubt = MassDoubt::FarFromOwnHistory;
  double expected = 0.0;  ///< kg; what the others say
};

/// What is doubtful in a series (any order of days). `expected`: mass to be expected where the series is too
/// short to say.
[[nodiscard]] std::vector<DoubtedReading> doubtsAbout(
    std::span<const MassReading> series, quantity::Date today,
    std::optional<quantity::Kilograms> expected = std::nullopt);

/// A new reading against the series so far, before it is written down.
[[nodiscard]] std::optional<MassDoubt> doubtAbout(const MassReading& reading,
                                                  std::span<const MassReading> series, quantity::Date today,
                                                  std::optional<quantity::Kilograms> expected = std::nullopt);

/// So long a reading counts beside those after it.
inline constexpr int kDaysOfMass = 14;

/// The mass that counts on a day: the median of the believed readings of the last `days` days up to it, or
/// else the newest before; nothing where there is none.
struct CurrentMass {
  quantity::Kilograms mass{};
  quantity::Date on{};  ///< of the newest reading behind it
  std::size_t readings = 0;
};
[[nodiscard]] std::optional<CurrentMass> massOn(std::span<const MassReading> series, quantity::Date day,
                                                int days = kDaysOfMass);

/// The mass by which an animal of a group is fed.
struct GroupMass {
  quantity::Kilograms mass{};
  std::size_t weighed = 0;  ///< members behind it; 0 where it is the group's own
};
/// The mean of the members that were weighed (massOn), or else what the group as a whole was weighed to be;
/// nothing where neither is known. Common practice, no source.
[[nodiscard]] std::optional<GroupMass> groupMass(std::span<const std::optional<CurrentMass>> members,
                                                 const std::optional<CurrentMass>& whole);

}  // namespace tarebowl::animal
