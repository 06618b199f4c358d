// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_moves.h"

#include "core/diet/rotation_broken_rules.h"
#include "core/diet/rotation_program.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

constexpr double kSlack = 1e-9;
constexpr std::array kSteps{1.0, 2.0, 5.0, 12.0};

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

}  // namespace

PlanMoves::PlanMoves(const RotationModel& model, solver::RowMatrix grams)
    : model_(model),
      grams_(std::move(grams)),
      periodColumns_(model.period.rows / static_cast<double>(model.days)),
      dailyColumns_(model.daily.rows) {
  for (Index j = 0; j < model.foods; ++j) isAnyDay_.push_back(daysMatter(model, j) ? 0 : 1);
  measure();
}

void PlanMoves::measure() {
  pattern_ = grams_.array() > 0.0;
  period_ = model_.period.rows * meanDay(model_, grams_);
  daily_.assign(at(model_.days), {});
  missed_.assign(at(model_.days), {});
  for (Index d = 0; d < model_.days; ++d) {
    if (!model_.isOpen[at(d)]) continue;
    daily_[at(d)] = model_.daily.rows * grams_.row(d).transpose();
    missed_[at(d)] = model_.daily.missed(daily_[at(d)]);
  }
  value_ = valueOf(model_, grams_);
}

double PlanMoves::stepOf(Index food) const {
  constexpr double kOfDistance = 0.01;  // where any amount can be weighed
  return model_.step[food] > 0.0 ? model_.step[food] : kOfDistance * model_.distance[food];
}

bool PlanMoves::isFree(Index day, Index food) const {
  const RotationCell& cell = model_.cell(day, food);
  return !cell.isFixed && cell.most > 0.0;
}

/// Fed, or of the foods of which only the sum matters.
bool PlanMoves::isMovable(Index day, Index food) const {
  return isFree(day, food) && (pattern_(day, food) || isAnyDay_[at(food)]);
}

bool PlanMoves::fits(const Change& change) const {
  const RotationCell& cell = model_.cell(change.day, change.food);
  const double grams = grams_(change.day, change.food) + change.grams;
  if (isAnyDay_[at(change.food)] && !cell.must && std::abs(grams) <= kSlack) return true;
  return grams >= cell.least - kSlack && grams <= cell.most + kSlack;
}

/// What there is of a food is not more than it was.
bool PlanMoves::hasStock(std::span<const Change> changes) const {
  return std::ranges::all_of(changes, [&](const Change& change) {
    if (change.grams <= 0.0 || model_.mostGrams[change.food] == solver::kInfinity) return true;
    double more = 0.0;
    for (const Change& each : changes) more += each.food == change.food ? each.grams : 0.0;
    return more <= kSlack || grams_.col(change.food).sum() + more <= model_.mostGrams[change.food] + kSlack;
  });
}

/// Changes of one day must stand together.
PlanValue PlanMoves::valueAfter(std::span<const Change> changes) {
  const double all = static_cast<double>(model_.days);
  PlanValue value = value_;
  const ZoneRows::Missed before = model_.period.missed(period_);
  scratch_ = period_;
  for (const Change& change : changes) scratch_ += change.grams * periodColumns_.col(change.food);
  const ZoneRows::Missed period = model_.period.missed(scratch_);
  value.broken += period.hard - before.hard;
  value.period = period.soft;
  for (std::size_t i = 0; i < changes.size();) {
    const Index day = changes[i].day;
    scratch_ = daily_[at(day)];
    for (; i < changes.size() && changes[i].day == day; ++i)
      scratch_ += changes[i].grams * dailyColumns_.col(changes[i].food);
    const ZoneRows::Missed missed = model_.daily.missed(scratch_);
    value.broken += missed.hard - missed_[at(day)].hard;
    value.daily += (missed.soft - missed_[at(day)].soft) / all;
  }
  return value;
}

bool PlanMoves::takeIfBetter(std::span<const Change> changes) {
  PlanValue value = valueAfter(changes);
  PlanValue zones = value;
  zones.wishes = -1.0;  // at best
  zones.objective = -1e300;
  if (!zones.isBetterThan(value_) || !hasStock(changes)) return false;
  for (const Change& change : changes) grams_(change.day, change.food) += change.grams;
  value.wishes = wishesMissed(model_, grams_);
  value.objective = objectiveOf(model_, grams_);
  for (const Change& change : changes) grams_(change.day, change.food) -= change.grams;
  if (!value.isBetterThan(value_)) return false;
  apply(changes);
  return true;
}

void PlanMoves::apply(std::span<const Change> changes) {
  for (const Change& change : changes) {
    double& grams = grams_(change.day, change.food);
    grams += change.grams;
    const double step = model_.step[change.food];
    if (step > 0.0) grams = std::round(grams / step) * step;
    if (grams < kSlack) grams = 0.0;
  }
  measure();
}

bool PlanMoves::shiftOnce() {
  bool helped = false;
  for (Index j = 0; j < model_.foods; ++j) {
    for (Index from = 0; from < model_.days; ++from) {
      if (!isMovable(from, j)) continue;
      for (Index to = 0; to < model_.days; ++to) {
        if (to == from || !isMovable(to, j)) continue;
        for (const double steps : kSteps) {
          const std::array changes{Change{from, j, -steps * stepOf(j)}, Change{to, j, steps * stepOf(j)}};
          if (!fits(changes[0]) || !fits(changes[1])) break;
          helped |= takeIfBetter(changes);
        }
      }
    }
  }
  return helped;
}

bool PlanMoves::changeOnce() {
  bool helped = false;
  for (Index d = 0; d < model_.days; ++d) {
    for (Index j = 0; j < model_.foods; ++j) {
      if (!isMovable(d, j)) continue;
      for (const double sign : {-1.0, 1.0}) {
        for (const double steps : kSteps) {
          const std::array changes{Change{d, j, sign * steps * stepOf(j)}};
          if (!fits(changes[0])) break;
          helped |= takeIfBetter(changes);
        }
      }
    }
  }
  return helped;
}

bool PlanMoves::pairOnce() {
  bool helped = false;
  for (Index d = 0; d < model_.days; ++d) {
    for (Index j = 0; j < model_.foods; ++j) {
      if (!isMovable(d, j)) continue;
      for (Index other = 0; other < model_.foods; ++other) {
        if (other == j || !isMovable(d, other)) continue;
        for (const double up : {1.0, 3.0}) {
          for (const double down : {1.0, 3.0}) {
            const std::array changes{Change{d, j, up * stepOf(j)}, Change{d, other, -down * stepOf(other)}};
            if (fits(changes[0]) && fits(changes[1])) helped |= takeIfBetter(changes);
          }
        }
      }
    }
  }
  return helped;
}

bool PlanMoves::mayReplace(Index day, Index food, Index by) {
  if (pattern_(day, by) || !isFree(day, by) || model_.cell(day, food).must) return false;
  pattern_(day, food) = false;
  bool may = canAdd(model_, pattern_, day, by);
  if (may) {
    pattern_(day, by) = true;
    may = keepsRules(model_, pattern_);
    pattern_(day, by) = false;
  }
  pattern_(day, food) = true;
  return may;
}

bool PlanMoves::replaceOnce() {
  bool helped = false;
  for (Index d = 0; d < model_.days; ++d) {
    for (Index j = 0; j < model_.foods; ++j) {
      for (Index by = 0; by < model_.foods; ++by) {
        if (!pattern_(d, j) || !isFree(d, j) || !mayReplace(d, j, by)) continue;
        const RotationCell& cell = model_.cell(d, by);
        const double step = stepOf(by);
        const double same = std::round(grams_(d, j) / step) * step;
        for (const double grams : {std::clamp(same, cell.least, cell.most), cell.least}) {
          const std::array changes{Change{d, j, -grams_(d, j)}, Change{d, by, grams}};
          if (!takeIfBetter(changes)) continue;
          helped = true;
          break;
        }
      }
    }
  }
  return helped;
}

/// The rules hold where these foods trade days.
bool PlanMoves::mayTrade(const Place& one, const Place& other) {
  const auto turnRound = [&] {
    for (const Index day : {one.day, other.day})
      for (const Index food : {one.food, other.food}) pattern_(day, food) = !pattern_(day, food);
  };
  turnRound();
  const bool may = keepsRules(model_, pattern_);
  turnRound();
  return may;
}

bool PlanMoves::tradeWith(const Place& one) {
  for (Index day = 0; day < model_.days; ++day) {
    if (day == one.day || pattern_(day, one.food) || !isFree(day, one.food)) continue;
    for (Index food = 0; food < model_.foods; ++food) {
      if (!pattern_(day, food) || pattern_(one.day, food)) continue;
      if (!isFree(day, food) || !isFree(one.day, food) || model_.cell(day, food).must) continue;
      const double mine = grams_(one.day, one.food);
      const double theirs = grams_(day, food);
      const std::array changes{Change{one.day, one.food, -mine}, Change{one.day, food, theirs},
                               Change{day, food, -theirs}, Change{day, one.food, mine}};
      if (!fits(changes[1]) || !fits(changes[3]) || !valueAfter(changes).isBetterThan(value_)) continue;
      if (mayTrade(one, {day, food}) && takeIfBetter(changes)) return true;
    }
  }
  return false;
}

bool PlanMoves::tradeOnce() {
  bool helped = false;
  for (Index d = 0; d < model_.days; ++d)
    for (Index j = 0; j < model_.foods; ++j)
      if (pattern_(d, j) && isFree(d, j) && !model_.cell(d, j).must) helped |= tradeWith({d, j});
  return helped;
}

void PlanMoves::shiftBetweenDays() {
  while ((value_.broken > 0.0 || value_.daily > 0.0) && (shiftOnce() || tradeOnce())) {
  }
}

void PlanMoves::improve(const std::stop_token& stop) {
  constexpr int kMostSweeps = 40;
  for (int sweep = 0; sweep < kMostSweeps && !stop.stop_requested(); ++sweep) {
    bool helped = changeOnce();
    if (value_.broken > 0.0 || value_.daily > 0.0) helped |= shiftOnce();
    if (!helped) helped = pairOnce();
    if (!helped) helped = replaceOnce();
    if (!helped) return;
  }
}

}  // namespace tarebowl::diet
