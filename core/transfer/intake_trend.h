// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/choice.h"
#include "core/intake/drops.h"
#include "core/intake/eaten_fraction.h"
#include "core/intake/intake_stretch.h"
#include "core/store/group_reading.h"
#include "core/transfer/intake_reader.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// What a group was fed and ate over a week or ten years, in as many points as a chart shows.
namespace tarebowl::transfer {

/// A target or ratio of the group by its id, or a nutrient a day and animal. A rule that the group is not fed
/// by (an empty id) stands for its target of calcium, or where it has none for calcium a day.
using TrendSubject = std::variant<std::string, food::NutrientId>;

struct TrendAsked {
  std::string group{};
  quantity::Date from{};
  quantity::Date to{};
  int mostPoints = 180;  ///< 1 or more; a point is a day where there is room for it
  TrendSubject subject{};
  bool operator==(const TrendAsked&) const = default;
};

/// Which foods were picked first, over some days.
struct ChoiceStretch {
  quantity::Date from{};
  quantity::Date until{};
  std::vector<intake::BowlChoice> bowls{};
};

/// A leftover that cannot be, told with its day.
struct TrendSlip {
  quantity::Date day{};
  std::string food{};
  double grams = 0.0;  ///< above what was offered
};

struct IntakeTrend {
  store::KnownGroup group{};                                 ///< on the last day
  std::vector<std::optional<quantity::Kilograms>> masses{};  ///< of its members, index for index
  quantity::Date from{};
  quantity::Date to{};
  int daysAPoint = 1;
  /// Everything that the group is fed by on the last day, over the foods of the bowls, whose values name no
  /// source here. What the collection does not hold stands in it with nothing known.
  diet::BalanceProblem problem{};
  std::vector<std::string> unknownFoods{};
  /// Two lines: the subject as asked and calcium to phosphorus, each with the zone that the group is fed by.
  diet::BalanceProblem followed{};
  std::vector<intake::IntakeStretch> points{};  ///< in order; values are those of `followed`
  std::vector<intake::Drop> foodDrops{};        ///< of all grams that an animal ate on a day
  std::vector<intake::Drop> subjectDrops{};
  intake::DropRule dropRule{};
  std::vector<ChoiceStretch> choices{};
  std::vector<intake::EatenFraction> fractions{};  ///< of the last stretch of choices
  std::size_t pans = 0;
  std::map<intake::FindingKind, std::size_t> findings{};
  std::vector<TrendSlip> slips{};  ///< that are no scatter of a scale; the last few
  bool invented = false;
};

/// Stretch after stretch: what is kept does not grow with the years but for the number a day that drops are
/// sought in. Drops look back before the first day too. Energy is estimated as the diet of the last week
/// does. Nothing where there is no such group. Throws StoreError.
[[nodiscard]] std::optional<IntakeTrend> readTrend(const store::Collection& collection,
                                                   const TrendAsked& asked);

/// The line of `followed` that is the subject, and that of Ca:P.
inline constexpr std::size_t kSubjectLine = 0;
inline constexpr std::size_t kCalciumLine = 1;

}  // namespace tarebowl::transfer
