// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_program.h"
#include "core/diet/row_sheet.h"

#include <array>
#include <map>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// Writes one question of a rotation as a program: what days and rules allow (rotation_day_rows.cpp), then
/// the zones, wishes and the objective that are asked for (rotation_question_rows.cpp).
class RotationProgramWriter {
 public:
  RotationProgramWriter(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                        const RotationBudgets& budgets, WithDailyZones daily);
  [[nodiscard]] RotationProgram write();

 private:
  using Index = Eigen::Index;
  /// Free cells of a food in a block.
  struct Free {
    int days = 0;
    int must = 0;
    double least = 0.0;  // the smallest of a day on which it is fed
    double most = 0.0;   // the largest
    double lower = 0.0;  // of the sum
    double upper = 0.0;
  };
  static std::size_t at(Index i) { return static_cast<std::size_t>(i); }
  [[nodiscard]] Free freeOf(Index block, Index food) const;
  [[nodiscard]] bool countsDays(Index food, const Free& free) const;
  [[nodiscard]] Index blockCount() const { return static_cast<Index>(written_.blocks.size()); }
  [[nodiscard]] Index grams(Index block, Index food) const {
    return static_cast<Index>(written_.gramsColumn(block, food));
  }
  [[nodiscard]] Index daysOf(Index block, Index food) const {
    return static_cast<Index>(written_.daysColumn(block, food));
  }
  [[nodiscard]] int fixedDays(Index food) const {
    return static_cast<int>((fixed_.col(food).array() > 0.0).count());
  }
  void writeColumns();
  void writeLinks();
  void writeTotals();
  void writeRuns();
  void writeCounts();
  void writeCount(Index block, const std::string& id);

  void addOf(RotationStage stage, std::vector<RowSheet::Entry> entries, double lower, double upper,
             double price);
  void closeBudget(RotationStage stage);
  void writePeriod();
  void writeDaily();
  Index isFedColumn(Index food);
  void writeWishes();
  void writeNearness(const solver::RowMatrix& plan);
  void writeObjective();

  static constexpr double kNothing = 1e-9;  // a budget up to this is none

  const RotationModel& model_;
  RotationStage stage_;
  RotationBudgets budgets_;
  WithDailyZones daily_;
  RotationProgram written_;
  solver::RowMatrix fixed_;
  RowSheet sheet_;
  std::array<std::vector<RowSheet::Entry>, 3> spent_;
  std::map<Index, Index> isFed_;
};

}  // namespace tarebowl::diet
