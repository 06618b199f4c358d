// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/linear_solver.h"

#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

namespace tarebowl::diet {

/// The days together and days that are known, each a whole day that can be fed by itself, mixed in any parts:
/// what prices ask of the days apart as far as the known days tell (the master of Dantzig and Wolfe 1960,
/// "Decomposition principle for linear programs", Operations Research 8:101-111). Prices stay in a box around
/// those that were best so far (Marsten, Hogan and Blankenship 1975, "The boxstep method for large-scale
/// optimization", Operations Research 23:389-405; both cited from memory): else they leap about while few
/// days are known.
class DayMix {
 public:
  /// A column of the days together, and the unit in which prices of it are asked.
  struct Link {
    Eigen::Index together = 0;
    double unit = 1.0;
  };
  /// together: hard rows only. daysOfKind: how many days of the period are of each kind. Room for so many
  /// days.
  DayMix(const solver::Program& together, std::vector<Link> links, const std::vector<double>& daysOfKind,
         Eigen::Index room);

  [[nodiscard]] bool isFull() const { return known() >= room_; }
  [[nodiscard]] Eigen::Index known() const { return static_cast<Eigen::Index>(days_.size()); }
  /// A day of a kind: what it holds of each link, in the links' units. One that is known already, or for
  /// which there is no room, is left out.
  void add(std::size_t kind, const Eigen::VectorXd& amounts);

  struct Answer {
    Eigen::VectorXd prices;  ///< of each link
    double value = 0.0;  ///< what the known days make of them: an upper limit of what prices in the box reach
    bool isAtBox = false;  ///< a price lies at an end of the box
  };
  /// The best prices within width of the centre; nothing where the solver found none, as where a kind has no
  /// known day yet.
  [[nodiscard]] std::optional<Answer> best(const Eigen::VectorXd& centre, double width);

 private:
  struct Day {
    std::size_t kind = 0;
    Eigen::VectorXd amounts;
  };
  [[nodiscard]] bool knows(std::size_t kind, const Eigen::VectorXd& amounts) const;
  [[nodiscard]] Eigen::Index columnOf(Eigen::Index known) const { return own_.size() + known; }

  std::vector<Link> links_;
  Eigen::VectorXd own_;  ///< cost of the columns of the days together
  Eigen::Index firstLink_ = 0;
  Eigen::Index firstKind_ = 0;
  Eigen::Index room_ = 0;
  std::vector<Day> days_;  ///< that are known
  solver::LinearSolver solver_;
};

}  // namespace tarebowl::diet
