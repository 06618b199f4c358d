// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_desk.h"

#include "ui/diets/target_names.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

DietDesk::DietDesk(LiveSolver::Function solve, QObject* parent) : QObject(parent), solver_(std::move(solve)) {
  connect(&solver_, &LiveSolver::solved, this, &DietDesk::take);
}

DietDesk::~DietDesk() {
  // A dying stack announces that it is empty, to a window that may already be half gone.
  undoStack_.disconnect();
}

void DietDesk::open(diet::BalanceProblem problem) {
  solver_.cancel();
  gesture_ = 0;
  draft_ = draftOf(std::move(problem));
  balance_ = diet::balance(draft_.problem, draft_.grams);
  undoStack_.clear();
  emit opened();
  solveOrHold();
}

void DietDesk::setHolding(bool holding) {
  if (holding_ == holding) return;
  holding_ = holding;
  solveOrHold();
}

void DietDesk::setGrams(std::size_t food, quantity::Grams mass) {
  const quantity::Grams least(0.0);
  push(changeGrams(draft_, food, onScale(draft_.problem, food, std::max(mass, least)), !holding_));
}

void DietDesk::setLocked(std::size_t food, bool locked) {
  push(changeLock(draft_, food, locked));
}

bool DietDesk::setLimits(std::size_t food, quantity::Grams min, std::optional<quantity::Grams> max) {
  if (min.value() < 0.0 || (max && *max < min)) {
    emit refused(tr("Not taken: the maximum of %1 would lie below its minimum.")
                     .arg(QString::fromStdString(draft_.problem.foods.at(food).name)));
    return false;
  }
  push(changeLimits(draft_, food, min, max));
  return true;
}

bool DietDesk::setBounds(RungRef rung, const Bounds& bounds) {
  const QString name = rungName(draft_.problem, rung);
  const bool crossed = bounds.min && bounds.max && *bounds.max < *bounds.min;
  if (crossed || (!bounds.min && !bounds.max)) {
    emit refused(crossed ? tr("Not taken: the maximum of %1 would lie below its minimum.").arg(name)
                         : tr("Not taken: a target for %1 needs a minimum or a maximum.").arg(name));
    return false;
  }
  push(changeBounds(draft_, rung, bounds, name));
  return true;
}

void DietDesk::setObjective(const diet::Objective& objective) {
  push(changeObjective(draft_, objective));
}

void DietDesk::setConfidence(std::optional<double> confidence) {
  push(changeConfidence(draft_, confidence));
}

void DietDesk::cancelGesture() {
  // The step on top belongs to this gesture only if the gesture pushed one.
  if (gesture_ != 0 && gesturePushed_ == gesture_) undoStack_.undo();
  endGesture();
}

void DietDesk::push(std::optional<DraftChange> change) {
  if (!change) return;
  gesturePushed_ = gesture_;
  undoStack_.push(new DraftCommand(*this, std::move(*change), gesture_));
}

void DietDesk::draftEdited() {
  recompute();
  solveOrHold();
}

void DietDesk::recompute() {
  balance_ = diet::balance(draft_.problem, draft_.grams);
  emit foodsChanged();
  emit balanceChanged();
}

void DietDesk::solveOrHold() {
  solution_.reset();
  if (holding_ || isEmpty())
    solver_.cancel();
  else
    solver_.request(problemToSolve(draft_));
  emit solvingChanged();
}

void DietDesk::take(const diet::DietSolution& solution) {
  solution_ = solution;
  if (solution.grams.size() == draft_.grams.size()) {
    draft_.grams = solution.grams;
    recompute();
  }
  emit solvingChanged();
}

}  // namespace tarebowl::ui
