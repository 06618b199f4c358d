// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"
#include "core/diet/supply.h"

#include <Eigen/Core>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

enum class BoundSide { Min, Max };

/// Something added up over the bowl: a constant, and so much for each gram offered of each food.
struct Sum {
  Eigen::VectorXd perGram;
  double constant = 0.0;
  [[nodiscard]] double at(const Eigen::VectorXd& grams) const { return constant + perGram.dot(grams); }
};

/// What targets, ratios and shares have in common: a part, counted against a whole, with bounds on part /
/// whole.
///   target  nutrient (in the target's unit)  per amount of its basis (kg, kg dry matter, 1000 kcal, day, kg,
///   kg^0.75) ratio   nutrient (in its own unit)       per other nutrient (in its own unit) share   the
///   group's amount of the basis  per the whole bowl's amount of it
/// Both the balance of a diet and the rows that the solver sees are made from it, so that they cannot speak
/// of two things.
struct Measure {
  TargetKind kind = TargetKind::Nutrient;
  std::size_t index = 0;  ///< in the problem's list of that kind
  std::string id;
  std::optional<double> min;
  std::optional<double> max;
  bool hard = false;
  double weight = 1.0;

  Sum part;
  Sum whole;
  Eigen::VectorXd partSd;         ///< per gram offered, in the unit of part
  Eigen::VectorXd wholeSd;        ///< the same of the whole; only a ratio's is not 0
  double wholeAtReference = 1.0;  ///< B° (or N_to°): the whole in the reference diet, 1 where that gives none
  double guard = 0.0;  ///< z_p: standard deviations that a bound must hold with; 0 without a confidence
  std::vector<KnownMask> known;  ///< of what is counted: the coverage is the lowest over these

  /// Empty where the measure can be counted; else why not: "no-body-mass" or "unit". Such a measure binds
  /// nothing.
  std::string defect;

  [[nodiscard]] std::optional<double> bound(BoundSide side) const {
    return side == BoundSide::Min ? min : max;
  }
  /// What a lack or excess of the part is divided by to become a relative shortfall: bound · B°, one unit ·
  /// B° for a bound of 0, and B° for a share, whose shortfall counts in share points.
  [[nodiscard]] double shortfallUnit(double bound) const;
};

/// The targets, then the ratios, then the shares, each in the problem's order: the order of Balance::targets.
[[nodiscard]] std::vector<Measure> measuresOf(const BalanceProblem& problem);

/// The problem's measures over foods that are not in it, counted against the same reference bowl: what each
/// of them would bring. measures are those of the problem.
[[nodiscard]] std::vector<Measure> measuresOver(std::span<const DietFood> foods,
                                                const BalanceProblem& problem,
                                                std::span<const Measure> measures);

}  // namespace tarebowl::diet
