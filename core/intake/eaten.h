// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/fed_bowl.h"
#include "core/intake/uncertain.h"
#include "core/intake/water_pans.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// What a person should know of a number, or look into.
enum class FindingKind {
  LeftoverAboveOffered,  ///< r / (1 - L) + lost > offered: an error of measurement; kept as it is, below 0
  NoPan,                 ///< nothing says how much water went: the uncorrected intake is an upper bound
  BorrowedPan,           ///< corrected by pans of other days
  NotWeighed,
  LossUnknown,   ///< spilled or stolen, nobody can say how much
  NoEstimate,    ///< a mixed remainder whose parts nobody estimated
  NoRemainder,   ///< said to be in a mixed remainder that was not weighed
  PartsMissing,  ///< the estimated parts do not add up to the remainder (to 1); they are taken in proportion
};

struct Finding {
  FindingKind kind = FindingKind::NotWeighed;
  std::size_t item = 0;  ///< in the bowl
  double amount = 0.0;   ///< grams above what was offered; sum of the parts
  double sds = 0.0;      ///< the same in standard deviations of what was eaten: above 2 it is no scatter
  bool operator==(const Finding&) const = default;
};

/// One food of one bowl, in grams as offered (as fed).
struct EatenItem {
  std::string food{};
  std::string foodClass{};
  double offered = 0.0;
  std::optional<double> left{};           ///< as weighed or estimated, uncorrected
  std::optional<WaterChange> water{};     ///< where it was needed
  std::optional<double> leftAsOffered{};  ///< left / (1 - L)
  double spilled = 0.0;
  double stolen = 0.0;
  bool estimated = false;            ///< a part of a mixed remainder by eye
  bool allEaten = false;             ///< said so, or weighed with nothing left
  std::optional<Uncertain> eaten{};  ///< nothing where it is not known; below 0 only with its finding
  double atLeast = 0.0;              ///< what is known where eaten is not
  double atMost = 0.0;
};

struct EatenBowl {
  std::string group{};
  quantity::Date day{};
  std::string label{};
  int animals = 1;
  std::vector<EatenItem> items{};
  std::vector<Finding> findings{};
};

/// How sure an estimate by eye is: as if so many pieces of the remainder had been sorted, so that a part p
/// scatters by sqrt(p (1 - p) / (pieces + 1)) (the variance of a Dirichlet share). House rule, no source.
struct EatenRule {
  double piecesSorted = 15.0;
};

/// eaten = offered - leftover / (1 - L) - lost. Errors to first order, each its own source where it is shared
/// by foods of the bowl:
///   offered   sd_o                       leftover  sd_r / (1 - L)
///   water     r sd_L / (1 - L)²          parts     M sd_p / (1 - L), correlated so that parts sum to M
/// serial numbers the sources of this bowl: bowls that are added up must have different ones.
/// Sources: offered minus orts with a control pan is standard feeding-trial practice (from memory).
[[nodiscard]] EatenBowl eatenFrom(const FedBowl& bowl, const PanBook& pans, std::uint32_t serial,
                                  const EatenRule& rule = {});

}  // namespace tarebowl::intake
