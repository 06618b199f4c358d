// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_program_writer.h"

#include <algorithm>

namespace tarebowl::diet {

using Eigen::Index;

/// A row of a question: asked, kept within its budget, or not yet of interest.
void RotationProgramWriter::addOf(RotationStage stage, std::vector<RowSheet::Entry> entries, double lower,
                                  double upper, double price) {
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

void RotationProgramWriter::closeBudget(RotationStage stage) {
  auto& spent = spent_[static_cast<std::size_t>(stage)];
  if (!spent.empty())
    sheet_.addRow(std::move(spent), -solver::kInfinity, budgets_[static_cast<std::size_t>(stage)]);
}

void RotationProgramWriter::writePeriod() {
  written_.isViolation = stage_ != RotationStage::Objective || model_.isDistance || model_.nearTo;
  const double all = static_cast<double>(model_.days);
  const Eigen::VectorXd fixed = (fixed_ + model_.extra).colwise().sum().transpose() / all;
  for (Index i = 0; i < model_.period.rows.rows(); ++i) {
    std::vector<RowSheet::Entry> entries;
    for (Index t = 0; t < blockCount(); ++t)
      for (Index j = 0; j < model_.foods; ++j)
        if (grams(t, j) >= 0) entries.push_back({grams(t, j), model_.period.rows(i, j) / all});
    const double constant = model_.period.rows.row(i).dot(fixed);
    addOf(RotationStage::Period, std::move(entries), model_.period.lower[i] - constant,
          model_.period.upper[i] - constant, model_.period.price[i]);
  }
  closeBudget(RotationStage::Period);
}

void RotationProgramWriter::writeDaily() {
  if (daily_ == WithDailyZones::No) return;
  const double all = static_cast<double>(model_.days);
  for (Index t = 0; t < blockCount(); ++t) {
    const auto& days = written_.blocks[at(t)];
    const double share = static_cast<double>(days.size()) / all;
    Eigen::VectorXd fixed = Eigen::VectorXd::Zero(model_.foods);
    for (const Index d : days) fixed += fixed_.row(d).transpose() / all;
    for (Index i = 0; i < model_.daily.rows.rows(); ++i) {
      std::vector<RowSheet::Entry> entries;
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
Index RotationProgramWriter::isFedColumn(Index food) {
  const auto known = isFed_.find(food);
  if (known != isFed_.end()) return known->second;
  const Index column = sheet_.addColumn(0.0, 1.0, 0.0);
  std::vector<RowSheet::Entry> entries{{column, -1.0}};
  for (Index t = 0; t < blockCount(); ++t)
    if (daysOf(t, food) >= 0) entries.push_back({daysOf(t, food), 1.0});
  sheet_.addRow(std::move(entries), 0.0, solver::kInfinity);
  isFed_[food] = column;
  return column;
}

void RotationProgramWriter::writeWishes() {
  if (stage_ < RotationStage::Wishes) return;
  for (std::size_t v = 0; v < model_.variety.size(); ++v) {
    std::vector<RowSheet::Entry> entries;
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
    std::vector<RowSheet::Entry> entries;
    for (Index t = 0; t < blockCount(); ++t)
      if (grams(t, stock.food) >= 0 && written_.blocks[at(t)].front() <= stock.by)
        entries.push_back({grams(t, stock.food), 1.0 / stock.grams});
    const double used = fixed_.col(stock.food).head(stock.by + 1).sum();
    addOf(RotationStage::Wishes, std::move(entries), 1.0 - used / stock.grams, solver::kInfinity, 1.0);
  }
  closeBudget(RotationStage::Wishes);
}

/// Cells that are settled are as far from it as they are.
void RotationProgramWriter::writeNearness(const solver::RowMatrix& plan) {
  const double all = static_cast<double>(model_.days);
  for (Index t = 0; t < blockCount(); ++t) {
    const Index day = written_.blocks[at(t)].front();
    for (Index j = 0; j < model_.foods; ++j) {
      if (grams(t, j) < 0) continue;
      const double unit = all * model_.distance[j];
      sheet_.addRow({{grams(t, j), 1.0 / unit}}, plan(day, j) / unit, plan(day, j) / unit, 1.0);
    }
  }
}

void RotationProgramWriter::writeObjective() {
  if (stage_ != RotationStage::Objective) return;
  if (model_.nearTo) return writeNearness(*model_.nearTo);
  const double all = static_cast<double>(model_.days);
  for (Index j = 0; j < model_.foods; ++j) {
    const double fixed = fixed_.col(j).sum() / all;
    std::vector<RowSheet::Entry> entries;
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

}  // namespace tarebowl::diet
