// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/formulation.h"
#include "core/diet/measure.h"
#include "core/diet/swap.h"

#include <Eigen/Core>
#include <optional>
#include <vector>

namespace tarebowl::diet {

/// A nutrient whose amount a swap is to keep.
struct KeptNutrient {
  food::NutrientId nutrient{0};
  double weight = 1.0;  ///< the largest of its targets'
  double unit = 1.0;    ///< u_k of Swap, in the nutrient's own unit per animal and day
};

/// Targets, ratios and energy name what is to be kept; each nutrient once.
[[nodiscard]] std::vector<KeptNutrient> keptNutrients(const BalanceProblem& problem,
                                                      const std::vector<Measure>& measures,
                                                      const Eigen::VectorXd& approved);

/// What every swap of a request is measured by, in the solver's words: rows are the bounds of the problem,
/// each loosened by what the approved diet misses of it already, and below them one row per kept nutrient.
class SwapFrame {
 public:
  /// The request must outlive it. Throws std::invalid_argument as rankSwaps() says.
  explicit SwapFrame(const SwapRequest& request);
  explicit SwapFrame(SwapRequest&& request) = delete;

  [[nodiscard]] const SwapRequest& request() const { return request_; }
  /// Its reference is what was approved, and the energy of that is its last target.
  [[nodiscard]] const BalanceProblem& problem() const { return problem_; }
  [[nodiscard]] const std::vector<Measure>& measures() const { return measures_; }
  [[nodiscard]] const Formulation& formulation() const { return formulation_; }  ///< with loosened bounds
  [[nodiscard]] const Eigen::VectorXd& approved() const { return approved_; }
  [[nodiscard]] const Eigen::VectorXd& rest() const { return rest_; }  ///< nothing of what is missing
  [[nodiscard]] const std::vector<KeptNutrient>& kept() const { return kept_; }
  /// Kept nutrients x foods of the problem: what a gram brings, in u_k.
  [[nodiscard]] const Eigen::MatrixXd& keptRows() const { return keptRows_; }
  [[nodiscard]] const Eigen::VectorXd& keptAmounts() const { return keptAmounts_; }  ///< approved, in u_k
  [[nodiscard]] bool isMissing(std::size_t food) const;
  [[nodiscard]] double weightOfKept() const { return weightOfKept_; }

  /// No swap is more than so many times the whole approved bowl: a choice of ours, nobody would eat it.
  static constexpr double kMostBowls = 2.0;
  [[nodiscard]] double mostGrams() const { return kMostBowls * approved_.sum(); }

 private:
  const SwapRequest& request_;
  BalanceProblem problem_;
  std::vector<Measure> measures_;
  Eigen::VectorXd approved_;
  Eigen::VectorXd rest_;
  Formulation formulation_;
  std::vector<KeptNutrient> kept_;
  Eigen::MatrixXd keptRows_;
  Eigen::VectorXd keptAmounts_;
  double weightOfKept_ = 0.0;
};

/// The candidates beside a frame: what one gram of each adds to every row, a column each.
class SwapColumns {
 public:
  explicit SwapColumns(const SwapFrame& frame);

  [[nodiscard]] std::size_t size() const { return ownLine_.size(); }
  [[nodiscard]] auto rows(std::size_t candidate) const {
    return rows_.col(static_cast<Eigen::Index>(candidate));
  }
  [[nodiscard]] auto scatter(std::size_t candidate) const {
    return scatter_->col(static_cast<Eigen::Index>(candidate));
  }
  [[nodiscard]] bool scatters() const { return scatter_.has_value(); }
  [[nodiscard]] auto kept(std::size_t candidate) const {
    return kept_.col(static_cast<Eigen::Index>(candidate));
  }
  /// The line of the diet that it is more of, or that it stands in for itself.
  [[nodiscard]] std::optional<std::size_t> ownLine(std::size_t candidate) const {
    return ownLine_[candidate];
  }
  /// The food, with the limits that the diet puts on it where it is a line of it.
  [[nodiscard]] const DietFood& food(std::size_t candidate) const;

 private:
  void takeOwnLines();

  const SwapFrame& frame_;
  std::vector<std::optional<std::size_t>> ownLine_;
  Eigen::MatrixXd rows_;
  std::optional<Eigen::MatrixXd> scatter_;
  Eigen::MatrixXd kept_;
};

/// The grams of a candidate that a swap may give, all of it counted with what the diet has of it.
struct SwapRange {
  double held = 0.0;   ///< what the diet has of it beside what is missing
  double step = 1.0;   ///< > 0
  double least = 0.0;  ///< on the scale, above held
  double most = 0.0;   ///< on the scale; below least where its limits leave nothing
  [[nodiscard]] bool isEmpty() const { return least > most; }
};
[[nodiscard]] SwapRange rangeOf(const SwapFrame& frame, const SwapColumns& columns, std::size_t candidate);

}  // namespace tarebowl::diet
