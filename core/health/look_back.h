// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/two_by_two.h"
#include "core/quantity/date.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// From a sign back to what was eaten before it, against days without the sign. It shows what goes together,
/// never what caused what.
namespace tarebowl::health {

/// One food of one bowl as it was eaten, in grams as offered (as fed) of the whole bowl.
struct FoodEaten {
  std::string food{};
  double offered = 0.0;
  std::optional<double> eaten{};  ///< nothing where its leftover is not known
  bool swappedIn = false;         ///< given in the place of another food
  std::string lot{};              ///< that it came from; empty where nobody named one
  bool operator==(const FoodEaten&) const = default;
};

/// A bowl with when it was given. A day is all its bowls.
struct BowlEaten {
  quantity::Date day{};
  int minute = 0;  ///< after midnight
  std::vector<FoodEaten> foods{};
};

/// A day on which somebody looked, and whether the sign was seen.
struct LookedOn {
  quantity::Date day{};
  int minute = 0;  ///< of the sign, or of the look; the window ends here
  bool sign = false;
  bool operator==(const LookedOn&) const = default;
};

struct LookBackRule {
  int hours = 24;           ///< 6 … 72: bowls given in so many hours before
  double falseRate = 0.10;  ///< q: the share of chance findings borne among what is pointed out
  double confidence = 0.95;
  /// From how far beside its usual amount a food's grams count as changed: robust deviations and a share.
  double changedSpreads = 3.5;
  double changedShare = 0.20;
};
inline constexpr int kShortestWindow = 6;
inline constexpr int kLongestWindow = 72;

/// One food over all days compared.
struct FoodLink {
  std::string food{};
  TwoByTwo days{};
  FisherTest test{};
  double corrected = 1.0;  ///< two-sided p, corrected for all foods that can be compared
  std::optional<RiskRatio> risk{};
  bool pointedOut = false;  ///< corrected is at or below the rule's false rate, and the risk is raised
  bool newFood = false;     ///< new in the window that was asked about
  std::vector<std::string> alwaysWith{};  ///< foods in the very same windows: they cannot be told apart
};

enum class DifferenceKind {
  NewFood,        ///< never in a bowl of the period before
  MoreThanUsual,  ///< eaten (offered, where that is not known)
  LessThanUsual,
  NotOffered,  ///< in most comparable windows, and not in this one
  SwappedIn,
  NewLot,          ///< from a lot that was in no bowl of the period before, while another lot or none was
  LeftoverMissing  ///< what was eaten of it is not known
};

/// What was otherwise in the window before the sign that was asked about.
struct Difference {
  DifferenceKind kind = DifferenceKind::NewFood;
  std::string food{};
  std::optional<double> now{};    ///< grams in the window
  std::optional<double> usual{};  ///< the median of comparable windows
  std::string lot{};              ///< of a new lot
  bool operator==(const Difference&) const = default;
};

struct LookBack {
  LookedOn sign{};
  int hours = 24;
  std::size_t signDays = 0;  ///< compared: with a bowl in their window
  std::size_t wellDays = 0;
  std::size_t withoutIntake = 0;     ///< days left out because no intake was recorded in their window
  std::size_t sameEpisode = 0;       ///< days left out because the sign had been there the day before
  bool signHasIntake = false;        ///< whether anything was recorded in the window of the sign itself
  std::size_t leftoversMissing = 0;  ///< foods in all windows that count as offered for want of a leftover
  std::vector<FoodLink> foods{};     ///< the least likely by chance first; foods in all windows or none last
  std::vector<Difference> differences{};
  std::size_t compared = 0;  ///< foods that p was corrected for
};

/// Bowls in order of days; looks a day each, in order. A food was eaten in a window where more than nothing
/// of it was (offered, where its leftover is not known). A run of days with the sign counts once, by its
/// first day, so that one illness is not counted as many. A window without a bowl says nothing and is left
/// out. hours outside 6 … 72 are taken to the nearer end.
[[nodiscard]] LookBack lookBack(const LookedOn& sign, std::span<const LookedOn> looks,
                                std::span<const BowlEaten> bowls, const LookBackRule& rule = {});

}  // namespace tarebowl::health
