// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_program_writer.h"

#include <algorithm>

namespace tarebowl::diet {

using Eigen::Index;

RotationProgramWriter::Free RotationProgramWriter::freeOf(Index block, Index food) const {
  Free free;
  free.least = solver::kInfinity;
  for (const Index d : written_.blocks[at(block)]) {
    const RotationCell& cell = model_.cell(d, food);
    if (cell.isFixed || cell.most <= 0.0) continue;
    ++free.days;
    free.least = std::min(free.least, cell.least);
    free.most = std::max(free.most, cell.most);
    free.upper += cell.most;
    if (!cell.must) continue;
    ++free.must;
    free.lower += cell.least;
  }
  return free;
}

bool RotationProgramWriter::countsDays(Index food, const Free& free) const {
  const bool isSettled = free.must == free.days;
  return (!isSettled || isSpokenOf(model_, food)) && daysMatter(model_, food);
}

void RotationProgramWriter::writeColumns() {
  written_.gramsColumn = solver::RowMatrix::Constant(blockCount(), model_.foods, -1.0);
  written_.daysColumn = written_.gramsColumn;
  for (Index t = 0; t < blockCount(); ++t) {
    for (Index j = 0; j < model_.foods; ++j) {
      const Free free = freeOf(t, j);
      if (free.days == 0) continue;
      written_.gramsColumn(t, j) =
          static_cast<double>(sheet_.addColumn(free.lower, free.upper, model_.step[j]));
      if (countsDays(j, free))
        written_.daysColumn(t, j) = static_cast<double>(sheet_.addColumn(free.must, free.days, 1.0));
    }
  }
}

/// A food is fed on no more days than its grams suffice for, and on enough for them.
void RotationProgramWriter::writeLinks() {
  for (Index t = 0; t < blockCount(); ++t) {
    for (Index j = 0; j < model_.foods; ++j) {
      if (daysOf(t, j) < 0) continue;
      const Free free = freeOf(t, j);
      if (free.must == free.days) continue;
      const double unit = std::max(free.most, kNothing);
      if (free.least > 0.0)
        sheet_.addRow({{grams(t, j), 1.0 / unit}, {daysOf(t, j), -free.least / unit}}, 0.0,
                      solver::kInfinity);
      sheet_.addRow({{grams(t, j), 1.0 / unit}, {daysOf(t, j), -free.most / unit}}, -solver::kInfinity, 0.0);
    }
  }
}

void RotationProgramWriter::writeTotals() {
  for (Index j = 0; j < model_.foods; ++j) {
    std::vector<RowSheet::Entry> sum;
    std::vector<RowSheet::Entry> days;
    for (Index t = 0; t < blockCount(); ++t) {
      if (grams(t, j) >= 0) sum.push_back({grams(t, j), 1.0});
      if (daysOf(t, j) >= 0) days.push_back({daysOf(t, j), 1.0});
    }
    const double fixed = fixed_.col(j).sum();
    if (model_.mostGrams[j] < solver::kInfinity)
      sheet_.addRow(std::move(sum), -solver::kInfinity, std::max(0.0, model_.mostGrams[j] - fixed));
    const int most = std::min(model_.mostDays[at(j)], mostDaysOf(model_, j));
    if (days.empty() && model_.leastDays[at(j)] <= fixedDays(j)) continue;
    if (model_.leastDays[at(j)] > 0 || most < model_.days)
      sheet_.addRow(std::move(days), model_.leastDays[at(j)] - fixedDays(j),
                    std::max(0, most - fixedDays(j)));  // days that are over may have been too many
  }
}

/// Of r + 1 days running one is without the food, as far as they stand alone.
void RotationProgramWriter::writeRuns() {
  std::map<Index, Index> blockOf;
  for (Index t = 0; t < blockCount(); ++t)
    if (written_.blocks[at(t)].size() == 1) blockOf[written_.blocks[at(t)].front()] = t;
  if (blockOf.empty()) return;
  for (Index j = 0; j < model_.foods; ++j) {
    const Index run = model_.longestRun[at(j)];
    for (Index first = 0; first + run < model_.days; ++first) {
      std::vector<RowSheet::Entry> entries;
      int fixed = 0;
      for (Index d = first; d <= first + run; ++d) {
        fixed += fixed_(d, j) > 0.0 ? 1 : 0;
        const auto block = blockOf.find(d);
        if (block != blockOf.end() && daysOf(block->second, j) >= 0)
          entries.push_back({daysOf(block->second, j), 1.0});
      }
      if (!entries.empty())
        sheet_.addRow(std::move(entries), -solver::kInfinity, std::max(0.0, double(run) - fixed));
    }
  }
}

/// A rule of the days, summed over those of a block: what counts on every one of them at most, on any of
/// them at least.
void RotationProgramWriter::writeCounts() {
  for (Index t = 0; t < blockCount(); ++t) {
    std::vector<std::string> ids;
    for (const Index d : written_.blocks[at(t)])
      for (const DayCount& count : model_.dayCounts[at(d)])
        if (std::ranges::find(ids, count.id) == ids.end()) ids.push_back(count.id);
    for (const std::string& id : ids) writeCount(t, id);
  }
}

void RotationProgramWriter::writeCount(Index block, const std::string& id) {
  std::vector<int> days(at(model_.foods), 0);
  int least = 0;
  int most = 0;
  int ruled = 0;
  int fixedAnywhere = 0;
  const auto& blockDays = written_.blocks[at(block)];
  for (const Index d : blockDays) {
    for (const DayCount& count : model_.dayCounts[at(d)]) {
      if (count.id != id) continue;
      ++ruled;
      least += count.atLeast;
      most += count.atMost;
      for (const Index j : count.members) {
        ++days[at(j)];
        fixedAnywhere += fixed_(d, j) > 0.0 ? 1 : 0;
      }
    }
  }
  std::vector<RowSheet::Entry> anywhere;
  std::vector<RowSheet::Entry> everywhere;
  for (Index j = 0; j < model_.foods; ++j) {
    if (days[at(j)] == 0 || daysOf(block, j) < 0) continue;
    anywhere.push_back({daysOf(block, j), 1.0});
    if (days[at(j)] == static_cast<int>(blockDays.size())) everywhere.push_back({daysOf(block, j), 1.0});
  }
  const bool isRuled = ruled == static_cast<int>(blockDays.size());
  if (isRuled && anywhere.size() == everywhere.size()) {
    sheet_.addRow(std::move(anywhere), least - fixedAnywhere, most - fixedAnywhere);
    return;
  }
  if (least > 0) sheet_.addRow(std::move(anywhere), least - fixedAnywhere, solver::kInfinity);
  if (isRuled && !everywhere.empty()) sheet_.addRow(std::move(everywhere), -solver::kInfinity, most);
}

}  // namespace tarebowl::diet
