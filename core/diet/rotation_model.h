// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "core/solver/program.h"

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// One food on one day.
struct RotationCell {
  double least = 0.0;    ///< grams where it is fed
  double most = 0.0;     ///< 0: it is not fed
  bool must = false;     ///< it is fed
  bool isFixed = false;  ///< locked or over: least grams, whatever the step
  [[nodiscard]] bool mayBeFed() const { return most > 0.0 || (isFixed && least > 0.0); }
};

/// "Of these foods so many a day": a structure rule, or the kitchen's limit.
struct DayCount {
  std::string id;
  std::vector<Eigen::Index> members;
  int atLeast = 0;
  int atMost = 0;
};

/// Rows over grams of a day, as solver::Program has them.
struct ZoneRows {
  solver::RowMatrix rows;
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
  Eigen::VectorXd price;
  /// Sum of price times violation of soft rows, and the sum of what hard rows are violated by.
  struct Missed {
    double soft = 0.0;
    double hard = 0.0;
  };
  [[nodiscard]] Missed missed(const Eigen::VectorXd& activity) const;
};

/// A rotation in numbers: grams x of food j on day d stand in a matrix days x foods.
struct RotationModel {
  Eigen::Index days = 0;
  Eigen::Index foods = 0;
  std::vector<RotationCell> cells;               ///< day by day
  std::vector<std::vector<DayCount>> dayCounts;  ///< of each day, the kitchen's limit among them
  std::vector<char> isOpen;                      ///< of each day: not over, and something may be fed
  std::vector<char> isOver;                      ///< of each day
  solver::RowMatrix extra;      ///< days x foods: grams that count beyond those fed (eaten otherwise)
  Eigen::VectorXd step;         ///< 0 where any amount can be weighed
  Eigen::VectorXd mostGrams;    ///< over the period; infinite where nothing limits it
  std::vector<int> longestRun;  ///< of each food; days of the period where there is no limit
  std::vector<int> leastDays;
  std::vector<int> mostDays;
  ZoneRows period;  ///< over the mean day
  ZoneRows daily;
  std::vector<VarietyWish> variety;  ///< with members below
  std::vector<std::vector<Eigen::Index>> varietyMembers;
  struct UseUp {
    Eigen::Index food = 0;
    double grams = 0.0;
    Eigen::Index by = 0;
  };
  std::vector<UseUp> useUp;
  bool isDistance = true;  ///< the objective is sum_j |mean_j - centre_j| / distance_j
  Eigen::VectorXd centre;
  Eigen::VectorXd distance;
  Eigen::VectorXd cost;  ///< else per gram of the mean day; negative for "highest"
  bool isNegated = false;
  /// Where there is such a plan, the objective is instead how far each cell is from it, over distance_j. Only
  /// where each day stands alone.
  std::optional<solver::RowMatrix> nearTo;

  [[nodiscard]] RotationCell& cell(Eigen::Index day, Eigen::Index food) {
    return cells[static_cast<std::size_t>(day * foods + food)];
  }
  [[nodiscard]] const RotationCell& cell(Eigen::Index day, Eigen::Index food) const {
    return cells[static_cast<std::size_t>(day * foods + food)];
  }
};

/// What a plan comes to, in the order of the questions. Smaller is better.
struct PlanValue {
  double broken = 0.0;  ///< hard zones, period and daily
  double period = 0.0;
  double daily = 0.0;
  double wishes = 0.0;
  double objective = 0.0;
  [[nodiscard]] bool isBetterThan(const PlanValue& other) const;
};

/// Grams by which a plan may differ from a rule: rounding.
inline constexpr double kGramsRounding = 1e-6;

struct BuiltModel {
  RotationModel model;
  std::string impossible;  ///< a rule that no plan can keep, by counting alone; empty where none is found
};

/// problem.base without foods that may not be given. Throws std::invalid_argument where rules speak of foods
/// or days that are not there.
[[nodiscard]] BuiltModel buildModel(const RotationProblem& problem);

[[nodiscard]] PlanValue valueOf(const RotationModel& model, const solver::RowMatrix& grams);
[[nodiscard]] double wishesMissed(const RotationModel& model, const solver::RowMatrix& grams);
[[nodiscard]] double objectiveOf(const RotationModel& model, const solver::RowMatrix& grams);
/// Grams of the mean day that count toward the period's zones.
[[nodiscard]] Eigen::VectorXd meanDay(const RotationModel& model, const solver::RowMatrix& grams);

}  // namespace tarebowl::diet
