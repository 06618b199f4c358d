// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_desk.h"

#include "ui/diets/suggestion_edits.h"
#include "ui/diets/target_names.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::ui {
namespace {

/// Whether a scale would show the same grams.
bool sameOnScale(const DietDraft& draft, const diet::Diet& grams) {
  for (std::size_t j = 0; j < grams.size(); ++j) {
    const double step = draft.problem.foods[j].scaleStep.value();
    if (std::abs(grams[j].value() - draft.grams[j].value()) > 0.5 * std::max(step, 1e-6)) return false;
  }
  return true;
}

}  // namespace

DietDesk::DietDesk(LiveSolver::Function solve, QObject* parent) : QObject(parent), solver_(std::move(solve)) {
  connect(&solver_, &LiveSolver::solved, this, &DietDesk::take);
}

DietDesk::~DietDesk() {
  // A dying stack announces that it is empty, to a window that may already be half gone.
  undoStack_.disconnect();
}

void DietDesk::open(diet::BalanceProblem problem) {
  open(draftOf(std::move(problem)), Opening::Solve);
}

void DietDesk::open(DietDraft draft, Opening how) {
  emit aboutToOpen();
  solver_.cancel();
  gesture_ = 0;
  opening_ = how;
  wouldMove_ = false;
  draft_ = std::move(draft);
  balance_ = diet::balance(draft_.problem, draft_.grams);
  shownRows_ = rows();
  undoStack_.clear();
  emit opened();
  solveOrHold();
}

void DietDesk::replace(DietDraft draft) {
  if (opening_ == Opening::Solve) opening_ = Opening::AsItStands;
  draft_ = std::move(draft);
  undoStack_.clear();
  recompute();
  solveOrHold();
}

void DietDesk::letFoodsMove() {
  if (!wouldMove_) return;
  const auto nothing = [](DietDraft&) {};
  push(DraftChange{tr("let the foods give way"), QStringLiteral("move"), nothing, nothing});
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

void DietDesk::setAllGrams(const diet::Diet& grams) {
  if (grams.size() != draft_.grams.size()) return;
  diet::Diet shown;
  for (std::size_t j = 0; j < grams.size(); ++j) shown.push_back(onScale(draft_.problem, j, grams[j]));
  if (!isReadOnly()) setHolding(true);
  push(changeAllGrams(draft_, shown));
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
  if (draft_.frame && !isReadOnly() && bounds != ui::boundsOf(draft_.problem, rung) &&
      diet::loosensHardRule(draft_.frame->opened, idOf(draft_.problem, rung), bounds.min, bounds.max)) {
    emit reasonWanted(rung, bounds);
    return false;
  }
  push(changeBounds(draft_, rung, bounds, name));
  return true;
}

void DietDesk::loosenBounds(RungRef rung, const Bounds& bounds, const QString& reason) {
  push(changeBounds(draft_, rung, bounds, rungName(draft_.problem, rung), reason));
}

void DietDesk::addFood(const diet::DietFood& food) {
  auto change = ui::addFood(draft_, food);
  if (!change) emit refused(tr("%1 is in this diet already.").arg(QString::fromStdString(food.name)));
  push(std::move(change));
}

void DietDesk::removeFood(std::size_t food) {
  push(ui::removeFood(draft_, food));
}

void DietDesk::setPreparation(std::size_t food, const QString& preparation) {
  push(changePreparation(draft_, food, preparation));
}

void DietDesk::setPurpose(std::size_t food, diet::Purpose purpose) {
  push(changePurpose(draft_, food, purpose));
}

void DietDesk::allow(const diet::DietFood& food, const diet::Allowance& allowance) {
  push(addAllowance(draft_, food, allowance));
}

void DietDesk::setChoices(const std::vector<animal::ChoiceRule>& own) {
  push(changeChoices(draft_, own));
}

void DietDesk::setShares(const std::vector<animal::ShareRule>& own) {
  push(changeShares(draft_, own));
}

void DietDesk::setObjective(const diet::Objective& objective) {
  push(changeObjective(draft_, objective));
}

void DietDesk::setConfidence(std::optional<double> confidence) {
  push(changeConfidence(draft_, confidence));
}

void DietDesk::tryOut(const Suggestion& suggestion) {
  if (const auto* added = std::get_if<AddedFood>(&suggestion.act))
    push(ui::tryOut(draft_, suggestion.words, *added));
  else if (const auto* raised = std::get_if<RaisedFood>(&suggestion.act))
    push(ui::tryOut(draft_, suggestion.words, *raised));
  else if (const auto* bound = std::get_if<MovedBound>(&suggestion.act))
    tryBound(*bound);
  else if (const auto* choice = std::get_if<MovedChoice>(&suggestion.act))
    setChoices(choicesWith(draft_, *choice));
}

void DietDesk::tryBound(const MovedBound& moved) {
  const auto rung = rungOfRule(draft_.problem, moved.rule);
  if (!rung) return;
  Bounds bounds = ui::boundsOf(draft_.problem, *rung);
  (moved.side == diet::BoundSide::Min ? bounds.min : bounds.max) = moved.to;
  setBounds(*rung, bounds);
}

void DietDesk::cancelGesture() {
  // The step on top belongs to this gesture only if the gesture pushed one.
  if (gesture_ != 0 && gesturePushed_ == gesture_) undoStack_.undo();
  endGesture();
}

void DietDesk::push(std::optional<DraftChange> change) {
  if (!change) return;
  if (isReadOnly())
    return emit refused(tr(
        "Not changed: only a draft can be, in a collection that can be written. A new version is a draft."));
  gesturePushed_ = gesture_;
  undoStack_.push(new DraftCommand(*this, std::move(*change), gesture_));
}

void DietDesk::draftEdited() {
  opening_ = Opening::Solve;
  recompute();
  solveOrHold();
}

std::vector<std::string> DietDesk::rows() const {
  std::vector<std::string> ids;
  const auto add = [&](const auto& things) {
    for (const auto& thing : things) ids.push_back(thing.id);
    ids.emplace_back();
  };
  add(draft_.problem.foods);
  add(draft_.problem.targets);
  add(draft_.problem.ratios);
  add(draft_.problem.shares);
  return ids;
}

void DietDesk::recompute() {
  balance_ = diet::balance(draft_.problem, draft_.grams);
  if (auto now = rows(); now != shownRows_) {
    shownRows_ = std::move(now);
    emit restructured();
  }
  emit foodsChanged();
  emit balanceChanged();
}

void DietDesk::solveOrHold() {
  solution_.reset();
  wouldMove_ = false;
  const bool rests = holding_ || isEmpty() || isReadOnly();
  if (rests)
    solver_.cancel();
  else
    solver_.request(problemToSolve(draft_));
  emit solvingChanged();
  if (rests) emit settled();
}

void DietDesk::take(const diet::DietSolution& solution) {
  const bool hasGrams = solution.grams.size() == draft_.grams.size();
  if (opening_ == Opening::AsItStands && hasGrams && !sameOnScale(draft_, solution.grams)) {
    wouldMove_ = !isSolving();
    return emit solvingChanged();
  }
  solution_ = solution;
  if (hasGrams) {
    draft_.grams = solution.grams;
    recompute();
  }
  emit solvingChanged();
  if (!isSolving()) emit settled();
}

}  // namespace tarebowl::ui
