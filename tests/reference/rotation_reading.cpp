// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/rotation_reading.h"

#include "core/diet/measure.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::reference {
namespace {

using diet::BoundSide;
using solver::kInfinity;

class Reading {
 public:
  Reading(const diet::RotationProblem& problem, Asked asked)
      : problem_(problem), asked_(asked), foods_(static_cast<int>(problem.base.foods.size())) {}

  LinearProgram program() {
    addColumns();
    addPortions();
    addStructure();
    addRuns();
    addZones(problem_.rules.period, true);
    if (asked_ == Asked::Cheapest) addZones(problem_.rules.daily, false);
    return std::move(out_);
  }

 private:
  [[nodiscard]] const diet::DietFood& food(int j) const { return problem_.base.foods[std::size_t(j)]; }
  [[nodiscard]] int days() const { return problem_.rules.days; }
  [[nodiscard]] int steps(int day, int j) const { return 2 * (day * foods_ + j); }
  [[nodiscard]] int isFed(int day, int j) const { return steps(day, j) + 1; }

  int addColumn(double cost, double upper, bool whole) {
    out_.cost.push_back(cost);
    out_.lower.push_back(0.0);
    out_.upper.push_back(upper);
    out_.whole.push_back(whole ? 1 : 0);
    return out_.columnCount() - 1;
  }
  int addRow(double lower, double upper) {
    out_.rowLower.push_back(lower);
    out_.rowUpper.push_back(upper);
    return out_.rowCount() - 1;
  }

  void addColumns() {
    for (int day = 0; day < days(); ++day) {
      for (int j = 0; j < foods_; ++j) {
        const double step = food(j).scaleStep.value();
        const double costOfStep = food(j).costPerKg.value_or(0.0) * step / 1000.0 / days();
        addColumn(asked_ == Asked::Cheapest ? costOfStep : 0.0,
                  std::floor(food(j).max->value() / step + 1e-9), true);
        addColumn(0.0, 1.0, true);
        out_.xUnits.push_back(step);
        out_.xUnits.push_back(1.0);
      }
    }
  }

  /// The largest least amount that a rule asks of a food that is fed.
  [[nodiscard]] double leastSteps(int j) const {
    double least = food(j).scaleStep.value();
    for (const diet::DayStructure& rule : problem_.rules.structure)
      if (rule.of.has(food(j))) least = std::max(least, rule.minEach.value());
    return std::ceil(least / food(j).scaleStep.value() - 1e-9);
  }

  void addPortions() {
    for (int day = 0; day < days(); ++day) {
      for (int j = 0; j < foods_; ++j) {
        const int least = addRow(0.0, kInfinity);
        out_.entries.push_back({least, steps(day, j), 1.0});
        out_.entries.push_back({least, isFed(day, j), -leastSteps(j)});
        const int most = addRow(-kInfinity, 0.0);
        out_.entries.push_back({most, steps(day, j), 1.0});
        out_.entries.push_back({most, isFed(day, j), -out_.upper[std::size_t(steps(day, j))]});
      }
    }
  }

  void addStructure() {
    for (const diet::DayStructure& rule : problem_.rules.structure) {
      for (int day = 0; day < days(); ++day) {
        const int row = addRow(rule.atLeast, rule.atMost ? double(*rule.atMost) : kInfinity);
        for (int j = 0; j < foods_; ++j)
          if (rule.of.has(food(j))) out_.entries.push_back({row, isFed(day, j), 1.0});
      }
    }
  }

  void addRuns() {
    for (const diet::FoodFrequency& rule : problem_.rules.frequency) {
      for (int j = 0; j < foods_; ++j) {
        if (!rule.of.has(food(j)) || !rule.longestRun) continue;
        for (int first = 0; first + *rule.longestRun < days(); ++first) {
          const int row = addRow(-kInfinity, *rule.longestRun);
          for (int day = first; day <= first + *rule.longestRun; ++day)
            out_.entries.push_back({row, isFed(day, j), 1.0});
        }
      }
    }
  }

  /// N - bound B, over what the shortfall is counted in, of the sum of all days or of each.
  void addZones(const diet::Zones& zones, bool ofPeriod) {
    for (const diet::Measure& measure : diet::measuresOf(diet::zonedProblem(problem_.base, zones))) {
      for (const BoundSide side : {BoundSide::Min, BoundSide::Max}) {
        if (!measure.bound(side)) continue;
        if (ofPeriod)
          addZone(measure, side, 0, days());
        else
          for (int day = 0; day < days(); ++day) addZone(measure, side, day, day + 1);
      }
    }
  }

  void addZone(const diet::Measure& measure, BoundSide side, int first, int end) {
    const double bound = *measure.bound(side);
    const double share = 1.0 / measure.shortfallUnit(bound) / (end - first);
    const double limit =
        (bound * measure.whole.constant - measure.part.constant) / measure.shortfallUnit(bound);
    const bool isMin = side == BoundSide::Min;
    const int row = addRow(isMin ? limit : -kInfinity, isMin ? kInfinity : limit);
    for (int day = first; day < end; ++day) {
      for (int j = 0; j < foods_; ++j) {
        const double excess = measure.part.perGram[j] - bound * measure.whole.perGram[j];
        if (excess != 0.0)
          out_.entries.push_back({row, steps(day, j), excess * share * food(j).scaleStep.value()});
      }
    }
    if (asked_ == Asked::LeastPeriodShortfall)
      out_.entries.push_back({row, addColumn(measure.weight, kInfinity, false), isMin ? 1.0 : -1.0});
  }

  const diet::RotationProblem& problem_;
  Asked asked_;
  int foods_;
  LinearProgram out_;
};

}  // namespace

LinearProgram readRotation(const diet::RotationProblem& problem, Asked asked) {
  return Reading(problem, asked).program();
}

}  // namespace tarebowl::reference
