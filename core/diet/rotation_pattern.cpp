// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_pattern.h"

#include "core/diet/rotation_broken_rules.h"

#include <algorithm>
#include <numeric>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

bool isMember(const DayCount& count, Index food) {
  return std::ranges::find(count.members, food) != count.members.end();
}
/// An even number in [0, 1): the same on every machine.
double drawn(std::mt19937_64& random) {
  return static_cast<double>(random() >> 11) * 0x1.0p-53;
}

class Spreader {
 public:
  Spreader(const RotationModel& model, const Eigen::VectorXd& wanted, double disorder,
           std::mt19937_64& random)
      : model_(model), wanted_(wanted), disorder_(disorder), random_(random), pattern_(givenPattern(model)) {}

  std::optional<FedPattern> spread() {
    for (Index d = 0; d < model_.days; ++d)
      if (model_.isOpen[at(d)]) fill(d);
    for (Index j = 0; j < model_.foods; ++j) makeOften(j);
    return keepsRules(model_, pattern_) ? std::optional(pattern_) : std::nullopt;
  }

 private:
  /// How much a food is behind what is wanted of it by this day; much where it must come now or never.
  [[nodiscard]] double overdue(Index day, Index food) {
    constexpr double kNowOrNever = 100.0;
    int available = 0;
    int by = 0;
    int used = 0;
    for (Index d = 0; d < model_.days; ++d) {
      const bool isAvailable = model_.cell(d, food).mayBeFed();
      available += isAvailable ? 1 : 0;
      if (d <= day) {
        by += isAvailable ? 1 : 0;
        used += pattern_(d, food) ? 1 : 0;
      }
    }
    double due = wanted_[food] * by / std::max(1, available) - used + disorder_ * (drawn(random_) - 0.5);
    const int lacking = model_.leastDays[at(food)] - daysFed(pattern_, food);
    if (lacking > 0 && lacking >= available - by + 1) due += kNowOrNever;
    return due;
  }

  void fill(Index day) {
    std::vector<double> due(at(model_.foods));
    for (Index j = 0; j < model_.foods; ++j) due[at(j)] = overdue(day, j);
    for (const DayCount& count : model_.dayCounts[at(day)])
      while (countOn(count, pattern_, day) < count.atLeast && addMostOverdue(day, count.members, due, -1e9)) {
      }
    constexpr double kDue = 0.5;
    std::vector<Index> all(at(model_.foods));
    std::iota(all.begin(), all.end(), Index{0});
    while (addMostOverdue(day, all, due, kDue)) {
    }
  }

  bool addMostOverdue(Index day, const std::vector<Index>& members, const std::vector<double>& due,
                      double least) {
    Index best = -1;
    for (const Index j : members)
      if (due[at(j)] > least && (best < 0 || due[at(j)] > due[at(best)]) && canAdd(model_, pattern_, day, j))
        best = j;
    if (best >= 0) pattern_(day, best) = true;
    return best >= 0;
  }

  void makeOften(Index food) {
    for (Index d = 0; d < model_.days && daysFed(pattern_, food) < model_.leastDays[at(food)]; ++d)
      if (canAdd(model_, pattern_, d, food)) pattern_(d, food) = true;
    for (Index d = 0; d < model_.days && daysFed(pattern_, food) < model_.leastDays[at(food)]; ++d)
      static_cast<void>(replaceWith(d, food));
  }

  /// Takes another food's place on the day.
  bool replaceWith(Index day, Index food) {
    if (pattern_(day, food) || !model_.isOpen[at(day)]) return false;
    for (Index other = 0; other < model_.foods; ++other) {
      if (!pattern_(day, other) || model_.cell(day, other).must) continue;
      if (daysFed(pattern_, other) <= model_.leastDays[at(other)]) continue;
      pattern_(day, other) = false;
      if (canAdd(model_, pattern_, day, food)) {
        pattern_(day, food) = true;
        if (std::ranges::all_of(model_.dayCounts[at(day)], [&](const DayCount& count) {
              return countOn(count, pattern_, day) >= count.atLeast;
            }))
          return true;
        pattern_(day, food) = false;
      }
      pattern_(day, other) = true;
    }
    return false;
  }

  const RotationModel& model_;
  const Eigen::VectorXd& wanted_;
  double disorder_;
  std::mt19937_64& random_;
  FedPattern pattern_;
};

}  // namespace

int countOn(const DayCount& count, const FedPattern& pattern, Index day) {
  return static_cast<int>(std::ranges::count_if(count.members, [&](Index j) { return pattern(day, j); }));
}

int daysFed(const FedPattern& pattern, Index food) {
  return static_cast<int>(pattern.col(food).count());
}

int runThrough(const FedPattern& pattern, Index day, Index food) {
  int run = 1;
  for (Index d = day - 1; d >= 0 && pattern(d, food); --d) ++run;
  for (Index d = day + 1; d < pattern.rows() && pattern(d, food); ++d) ++run;
  return run;
}

FedPattern givenPattern(const RotationModel& model) {
  FedPattern pattern = FedPattern::Constant(model.days, model.foods, false);
  for (Index d = 0; d < model.days; ++d)
    for (Index j = 0; j < model.foods; ++j) pattern(d, j) = model.cell(d, j).must;
  return pattern;
}

bool canAdd(const RotationModel& model, const FedPattern& pattern, Index day, Index food) {
  const RotationCell& cell = model.cell(day, food);
  if (pattern(day, food) || cell.isFixed || cell.most <= 0.0) return false;
  if (runThrough(pattern, day, food) > model.longestRun[at(food)]) return false;
  if (daysFed(pattern, food) >= model.mostDays[at(food)]) return false;
  return std::ranges::all_of(model.dayCounts[at(day)], [&](const DayCount& count) {
    return !isMember(count, food) || countOn(count, pattern, day) < count.atMost;
  });
}

bool canRemove(const RotationModel& model, const FedPattern& pattern, Index day, Index food) {
  if (!pattern(day, food) || model.cell(day, food).must) return false;
  if (daysFed(pattern, food) <= model.leastDays[at(food)]) return false;
  return std::ranges::all_of(model.dayCounts[at(day)], [&](const DayCount& count) {
    return !isMember(count, food) || countOn(count, pattern, day) > count.atLeast;
  });
}

std::optional<FedPattern> spreadOverDays(const RotationModel& model, const Eigen::VectorXd& wantedDays,
                                         double disorder, std::mt19937_64& random) {
  return Spreader(model, wantedDays, disorder, random).spread();
}

}  // namespace tarebowl::diet
