// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_program.h"

#include "core/diet/rotation_program_writer.h"

#include <algorithm>
#include <utility>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

constexpr double kNothing = 1e-9;

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

}  // namespace

bool isSpokenOf(const RotationModel& model, Index food) {
  const auto has = [&](const std::vector<Index>& members) {
    return std::ranges::find(members, food) != members.end();
  };
  for (const auto& counts : model.dayCounts)
    for (const DayCount& count : counts)
      if (has(count.members)) return true;
  return std::ranges::any_of(model.varietyMembers, has) || model.longestRun[at(food)] < model.days ||
         model.leastDays[at(food)] > 0 || model.mostDays[at(food)] < model.days;
}

bool daysMatter(const RotationModel& model, Index food) {
  if (isSpokenOf(model, food)) return true;
  for (Index d = 0; d < model.days; ++d) {
    const RotationCell& cell = model.cell(d, food);
    if (!cell.isFixed && !cell.must && cell.least > std::max(model.step[food], kNothing)) return true;
  }
  return false;
}

int mostDaysOf(const RotationModel& model, Index food) {
  int days = 0;
  int run = 0;
  for (Index d = 0; d < model.days; ++d) {
    const RotationCell& cell = model.cell(d, food);
    const bool isFed = cell.isFixed ? cell.least > 0.0 : cell.most > 0.0 && run < model.longestRun[at(food)];
    run = isFed ? run + 1 : 0;
    days += isFed ? 1 : 0;
  }
  return days;
}

RotationProgramWriter::RotationProgramWriter(const RotationModel& model, DayBlocks blocks,
                                             RotationStage stage, const RotationBudgets& budgets,
                                             WithDailyZones daily)
    : model_(model), stage_(stage), budgets_(budgets), daily_(daily) {
  written_.blocks = std::move(blocks);
  fixed_ = solver::RowMatrix::Zero(model.days, model.foods);
  for (Index d = 0; d < model.days; ++d)
    for (Index j = 0; j < model.foods; ++j)
      if (model.cell(d, j).isFixed) fixed_(d, j) = model.cell(d, j).least;
}

RotationProgram RotationProgramWriter::write() {
  writeColumns();
  writeLinks();
  writeTotals();
  writeRuns();
  writeCounts();
  writePeriod();
  writeDaily();
  writeWishes();
  writeObjective();
  written_.program = sheet_.program();
  return std::move(written_);
}

RotationProgram rotationProgram(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                                const RotationBudgets& budgets, WithDailyZones daily) {
  return RotationProgramWriter(model, std::move(blocks), stage, budgets, daily).write();
}

}  // namespace tarebowl::diet
