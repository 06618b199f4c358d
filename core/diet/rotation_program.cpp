// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_program.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

constexpr double kNothing = 1e-9;  // a budget up to this is none

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

/// Whether a rule says on which or how many days a food is fed.
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

/// Rows and columns as they come, before it is known how many.
class Sheet {
 public:
  struct Entry {
    Index column;
    double value;
  };
  Index addColumn(double lower, double upper, double step) {
    lower_.push_back(lower);
    upper_.push_back(upper);
    step_.push_back(step);
    cost_.push_back(0.0);
    return static_cast<Index>(lower_.size()) - 1;
  }
  void addCost(Index column, double cost) { cost_[at(column)] += cost; }
  void addRow(std::vector<Entry> entries, double lower, double upper, double price = solver::kInfinity) {
    rows_.push_back({std::move(entries), lower, upper, price});
  }
  [[nodiscard]] solver::Program program() const {
    solver::Program program;
    const auto n = static_cast<Index>(lower_.size());
    const auto m = static_cast<Index>(rows_.size());
    program.rows = solver::RowMatrix::Zero(m, n);
    program.rowLower = program.rowUpper = program.price = Eigen::VectorXd::Zero(m);
    for (Index i = 0; i < m; ++i) {
      const Row& row = rows_[at(i)];
      for (const Entry& entry : row.entries) program.rows(i, entry.column) += entry.value;
      program.rowLower[i] = row.lower;
      program.rowUpper[i] = row.upper;
      program.price[i] = row.price;
    }
    program.lower = Eigen::Map<const Eigen::VectorXd>(lower_.data(), n);
    program.upper = Eigen::Map<const Eigen::VectorXd>(upper_.data(), n);
    program.step = Eigen::Map<const Eigen::VectorXd>(step_.data(), n);
    program.cost = Eigen::Map<const Eigen::VectorXd>(cost_.data(), n);
    program.centre = program.curvature = Eigen::VectorXd::Zero(n);
    return program;
  }

 private:
  struct Row {
    std::vector<Entry> entries;
    double lower;
    double upper;
    double price;
  };
  std::vector<double> lower_, upper_, step_, cost_;
  std::vector<Row> rows_;
};

class ProgramWriter {
 public:
  ProgramWriter(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                const RotationBudgets& budgets, WithDailyZones daily)
      : model_(model), stage_(stage), budgets_(budgets), daily_(daily) {
    written_.blocks = std::move(blocks);
    fixed_ = solver::RowMatrix::Zero(model.days, model.foods);
    for (Index d = 0; d < model.days; ++d)
      for (Index j = 0; j < model.foods; ++j)
        if (model.cell(d, j).isFixed) fixed_(d, j) = model.cell(d, j).least;
  }

  RotationProgram write() {
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

 private:
  /// Free cells of a food in a block.
  struct Free {
    int days = 0;
    int must = 0;
    double least = 0.0;  // the smallest of a day on which it is fed
    double most = 0.0;   // the largest
    double lower = 0.0;  // of the sum
    double upper = 0.0;
  };
  [[nodiscard]] Free freeOf(Index block, Index food) const {
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

  [[nodiscard]] bool countsDays(Index food, const Free& free) const {
    const bool isSettled = free.must == free.days;
    return (!isSettled || isSpokenOf(model_, food)) && daysMatter(model_, food);
  }

  void writeColumns() {
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
  void writeLinks() {
    for (Index t = 0; t < blockCount(); ++t) {
      for (Index j = 0; j < model_.foods; ++j) {
        if (daysOf(t, j) < 0) continue;
        const Free free = freeOf(t, j);
        if (free.must == free.days) continue;
        const double unit = std::max(free.most, kNothing);
        if (free.least > 0.0)
          sheet_.addRow({{grams(t, j), 1.0 / unit}, {daysOf(t, j), -free.least / unit}}, 0.0,
                        solver::kInfinity);
        sheet_.addRow({{grams(t, j), 1.0 / unit}, {daysOf(t, j), -free.most / unit}}, -solver::kInfinity,
                      0.0);
      }
    }
  }

  void writeTotals() {
    for (Index j = 0; j < model_.foods; ++j) {
      std::vector<Sheet::Entry> sum;
      std::vector<Sheet::Entry> days;
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

  /// Where each day stands alone: of r + 1 days running one is without the food.
  void writeRuns() {
    const bool alone =
        std::ranges::all_of(written_.blocks, [](const auto& days) { return days.size() == 1; });
    if (!alone) return;
    std::map<Index, Index> blockOf;
    for (Index t = 0; t < blockCount(); ++t) blockOf[written_.blocks[at(t)].front()] = t;
    for (Index j = 0; j < model_.foods; ++j) {
      const Index run = model_.longestRun[at(j)];
      for (Index first = 0; first + run < model_.days; ++first) {
        std::vector<Sheet::Entry> entries;
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
  void writeCounts() {
    for (Index t = 0; t < blockCount(); ++t) {
      std::vector<std::string> ids;
      for (const Index d : written_.blocks[at(t)])
        for (const DayCount& count : model_.dayCounts[at(d)])
          if (std::ranges::find(ids, count.id) == ids.end()) ids.push_back(count.id);
      for (const std::string& id : ids) writeCount(t, id);
    }
  }

  void writeCount(Index block, const std::string& id) {
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
    std::vector<Sheet::Entry> anywhere;
    std::vector<Sheet::Entry> everywhere;
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

  /// A row of a question: asked, kept within its budget, or not yet of interest.
  void addOf(RotationStage stage, std::vector<Sheet::Entry> entries, double lower, double upper,
             double price) {
    if (price == solver::kInfinity) {
      sheet_.addRow(std::move(entries), lower, upper);
    } else if (stage == stage_) {
      sheet_.addRow(std::move(entries), lower, upper, price);
    } else if (stage < stage_) {
      if (budgets_[static_cast<std::size_t>(stage)] > kNothing) {
        const Index slack = sheet_.addColumn(0.0, budgets_[static_cast<std::size_t>(stage)] / price, 0.0);
        spent_[static_cast<std::size_t>(stage)].push_back({slack, price});
        if (lower > -solver::kInfinity && upper < solver::kInfinity) {
          auto other = entries;
          other.push_back({slack, -1.0});
          sheet_.addRow(std::move(other), -solver::kInfinity, upper);
          upper = solver::kInfinity;
        }
        entries.push_back({slack, lower > -solver::kInfinity ? 1.0 : -1.0});
      }
      sheet_.addRow(std::move(entries), lower, upper);
    }
  }
  void closeBudget(RotationStage stage) {
    auto& spent = spent_[static_cast<std::size_t>(stage)];
    if (!spent.empty())
      sheet_.addRow(std::move(spent), -solver::kInfinity, budgets_[static_cast<std::size_t>(stage)]);
  }

  void writePeriod() {
    written_.isViolation = stage_ != RotationStage::Objective || model_.isDistance;
    const double all = static_cast<double>(model_.days);
    const Eigen::VectorXd fixed = (fixed_ + model_.extra).colwise().sum().transpose() / all;
    for (Index i = 0; i < model_.period.rows.rows(); ++i) {
      std::vector<Sheet::Entry> entries;
      for (Index t = 0; t < blockCount(); ++t)
        for (Index j = 0; j < model_.foods; ++j)
          if (grams(t, j) >= 0) entries.push_back({grams(t, j), model_.period.rows(i, j) / all});
      const double constant = model_.period.rows.row(i).dot(fixed);
      addOf(RotationStage::Period, std::move(entries), model_.period.lower[i] - constant,
            model_.period.upper[i] - constant, model_.period.price[i]);
    }
    closeBudget(RotationStage::Period);
  }

  void writeDaily() {
    if (daily_ == WithDailyZones::No) return;
    const double all = static_cast<double>(model_.days);
    for (Index t = 0; t < blockCount(); ++t) {
      const auto& days = written_.blocks[at(t)];
      const double share = static_cast<double>(days.size()) / all;
      Eigen::VectorXd fixed = Eigen::VectorXd::Zero(model_.foods);
      for (const Index d : days) fixed += fixed_.row(d).transpose() / all;
      for (Index i = 0; i < model_.daily.rows.rows(); ++i) {
        std::vector<Sheet::Entry> entries;
        for (Index j = 0; j < model_.foods; ++j)
          if (grams(t, j) >= 0) entries.push_back({grams(t, j), model_.daily.rows(i, j) / all});
        const double constant = model_.daily.rows.row(i).dot(fixed);
        addOf(RotationStage::Daily, std::move(entries), share * model_.daily.lower[i] - constant,
              share * model_.daily.upper[i] - constant, model_.daily.price[i]);
      }
    }
    closeBudget(RotationStage::Daily);
  }

  /// 1 where a food is fed on any day.
  Index isFedColumn(Index food) {
    const auto known = isFed_.find(food);
    if (known != isFed_.end()) return known->second;
    const Index column = sheet_.addColumn(0.0, 1.0, 0.0);
    std::vector<Sheet::Entry> entries{{column, -1.0}};
    for (Index t = 0; t < blockCount(); ++t)
      if (daysOf(t, food) >= 0) entries.push_back({daysOf(t, food), 1.0});
    sheet_.addRow(std::move(entries), 0.0, solver::kInfinity);
    isFed_[food] = column;
    return column;
  }

  void writeWishes() {
    if (stage_ < RotationStage::Wishes) return;
    for (std::size_t v = 0; v < model_.variety.size(); ++v) {
      std::vector<Sheet::Entry> entries;
      int fixed = 0;
      for (const Index j : model_.varietyMembers[v]) {
        if (fixedDays(j) > 0)
          ++fixed;
        else
          entries.push_back({isFedColumn(j), 1.0});
      }
      addOf(RotationStage::Wishes, std::move(entries), model_.variety[v].wanted - fixed, solver::kInfinity,
            model_.variety[v].weight);
    }
    for (const RotationModel::UseUp& stock : model_.useUp) {
      std::vector<Sheet::Entry> entries;
      for (Index t = 0; t < blockCount(); ++t)
        if (grams(t, stock.food) >= 0 && written_.blocks[at(t)].front() <= stock.by)
          entries.push_back({grams(t, stock.food), 1.0 / stock.grams});
      const double used = fixed_.col(stock.food).head(stock.by + 1).sum();
      addOf(RotationStage::Wishes, std::move(entries), 1.0 - used / stock.grams, solver::kInfinity, 1.0);
    }
    closeBudget(RotationStage::Wishes);
  }

  void writeObjective() {
    if (stage_ != RotationStage::Objective) return;
    const double all = static_cast<double>(model_.days);
    for (Index j = 0; j < model_.foods; ++j) {
      const double fixed = fixed_.col(j).sum() / all;
      std::vector<Sheet::Entry> entries;
      for (Index t = 0; t < blockCount(); ++t) {
        if (grams(t, j) < 0) continue;
        entries.push_back({grams(t, j), 1.0 / all / model_.distance[j]});
        if (!model_.isDistance) sheet_.addCost(grams(t, j), model_.cost[j] / all);
      }
      if (!model_.isDistance) {
        written_.constant += model_.cost[j] * fixed;
        continue;
      }
      const double centre = (model_.centre[j] - fixed) / model_.distance[j];
      sheet_.addRow(std::move(entries), centre, centre, 1.0);
    }
  }

  const RotationModel& model_;
  RotationStage stage_;
  RotationBudgets budgets_;
  WithDailyZones daily_;
  RotationProgram written_;
  solver::RowMatrix fixed_;
  Sheet sheet_;
  std::array<std::vector<Sheet::Entry>, 3> spent_;
  std::map<Index, Index> isFed_;
};

}  // namespace

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

RotationProgram rotationProgram(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                                const RotationBudgets& budgets, WithDailyZones daily) {
  return ProgramWriter(model, std::move(blocks), stage, budgets, daily).write();
}

}  // namespace tarebowl::diet
