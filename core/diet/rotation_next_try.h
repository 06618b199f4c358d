// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_tries.h"

#include <cstdint>
#include <optional>
#include <random>
#include <set>
#include <utility>

namespace tarebowl::diet {

/// What a search tries next, drawn from a seed.
class NextTry {
 public:
  NextTry(const RotationModel& model, std::uint64_t seed) : model_(model), random_(seed) {}
  /// On how many days the period wants each food.
  void setWanted(Eigen::VectorXd days) { wanted_ = std::move(days); }

  /// Foods spread over the days as the period wants them; disorder > 0 varies them. Nothing where that did
  /// not keep the rules.
  [[nodiscard]] std::optional<FedPattern> spread(double disorder);
  /// Turn by turn: the best plan's foods with some of them changed, foods spread anew, and days planned anew
  /// where those are wanted.
  [[nodiscard]] std::optional<RotationTry> after(const SearchedPlan& best, bool wantsDays);
  /// What came of a try. Days are not planned anew twice from the same plan; patterns that promise and do not
  /// keep it, one after another, give way to them.
  void learn(const RotationTry& what, const Tried& tried, bool isBetter);

 private:
  [[nodiscard]] FedPattern changed(const solver::RowMatrix& plan, int changes);
  [[nodiscard]] std::optional<DaysAnew> someDays(int turn);
  [[nodiscard]] Eigen::Index drawn(Eigen::Index count);

  const RotationModel& model_;
  std::mt19937_64 random_;
  Eigen::VectorXd wanted_;
  std::set<std::pair<Eigen::Index, Eigen::Index>> asked_;  ///< days, from the best plan
  int times_ = 1;  ///< nodes of days that are planned anew: more once all were asked
  int idlePatterns_ = 0;
  int turn_ = 0;
};

}  // namespace tarebowl::diet
