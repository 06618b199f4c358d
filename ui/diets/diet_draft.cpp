// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_draft.h"

#include "core/diet/locked.h"
#include "core/diet/solve.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::ui {
namespace {

/// Calls use with the min and max of whatever the rung speaks of.
template <class Problem, class Use>
void withBounds(Problem& problem, RungRef rung, const Use& use) {
  switch (rung.kind) {
    case diet::TargetKind::Nutrient:
      return use(problem.targets.at(rung.index));
    case diet::TargetKind::Ratio:
      return use(problem.ratios.at(rung.index));
    case diet::TargetKind::Share:
      return use(problem.shares.at(rung.index));
  }
}

}  // namespace

DietDraft draftOf(diet::BalanceProblem problem) {
  DietDraft draft;
  draft.grams = problem.reference ? *problem.reference : diet::referenceDiet(problem);
  // Where no diet is given the reference is a calculation, not something a scale has shown.
  if (!problem.reference)
    for (std::size_t j = 0; j < draft.grams.size(); ++j) draft.grams[j] = onScale(problem, j, draft.grams[j]);
  draft.locked.assign(problem.foods.size(), false);
  for (const diet::DietFood& food : problem.foods) draft.places.push_back({.food = food.id});
  draft.problem = std::move(problem);
  return draft;
}

DietDraft draftOf(const diet::DietVersion& version, diet::VersionContext context) {
  diet::ProblemOfVersion opened = diet::versionProblem(version, context);
  return draftOf({version, std::move(context), std::move(opened)});
}

DietDraft draftOf(VersionFrame frame) {
  DietDraft draft;
  draft.problem = frame.opened.problem;
  draft.grams = frame.opened.amounts;
  draft.locked = frame.opened.locked;
  draft.places = frame.opened.places;
  draft.frame = std::make_shared<const VersionFrame>(std::move(frame));
  return draft;
}

diet::DietVersion versionOf(const DietDraft& draft) {
  return diet::versionOf(draft.problem, draft.grams, draft.locked, draft.places, draft.frame->opened,
                         draft.frame->version);
}

void restructure(DietDraft& draft, const std::function<void(DietDraft&)>& edit,
                 const std::optional<diet::DietFood>& known) {
  edit(draft);
  if (draft.frame)
    rewrite(
        draft, [](diet::DietVersion&) {}, known);
}

void rewrite(DietDraft& draft, const std::function<void(diet::DietVersion&)>& edit,
             const std::optional<diet::DietFood>& known) {
  diet::VersionContext context = draft.frame->context;
  if (known) context.foods.insert_or_assign(known->id, *known);
  diet::DietVersion version = versionOf(draft);
  edit(version);
  const std::optional<diet::Diet> reference = draft.problem.reference;
  draft = draftOf(version, std::move(context));
  // What the answer stays close to is the diet as it was, not what the solver made of it since.
  if (!reference || reference->size() == draft.grams.size()) draft.problem.reference = reference;
}

std::vector<animal::ChoiceRule> ownChoices(const DietDraft& draft) {
  return draft.frame ? versionOf(draft).choices : draft.problem.choices;
}

std::vector<animal::ShareRule> ownShares(const DietDraft& draft) {
  return draft.frame ? versionOf(draft).shares : draft.problem.shares;
}

diet::BalanceProblem problemToSolve(const DietDraft& draft) {
  return diet::withLocked(draft.problem, draft.grams, draft.locked);
}

diet::BalanceProblem problemToSave(const DietDraft& draft) {
  diet::BalanceProblem problem = draft.problem;
  problem.reference = draft.grams;
  return problem;
}

quantity::Grams onScale(const diet::BalanceProblem& problem, std::size_t food, quantity::Grams mass) {
  const double step = problem.foods.at(food).scaleStep.value();
  if (!problem.wholeSteps || step <= 0.0) return mass;
  const double steps = std::round(mass.value() / step);
  const double snapped = steps * step;
  // 3 * 0.1 is not 0.3: a mass that differs by rounding alone is left as it was typed.
  return std::abs(snapped - mass.value()) <= 1e-9 * std::max(1.0, snapped) ? mass : quantity::Grams(snapped);
}

Bounds boundsOf(const diet::BalanceProblem& problem, RungRef rung) {
  Bounds bounds;
  withBounds(problem, rung, [&](const auto& target) { bounds = {target.min, target.max}; });
  return bounds;
}

std::string idOf(const diet::BalanceProblem& problem, RungRef rung) {
  std::string id;
  withBounds(problem, rung, [&](const auto& target) { id = target.id; });
  return id;
}

void setBounds(diet::BalanceProblem& problem, RungRef rung, const Bounds& bounds) {
  withBounds(problem, rung, [&](auto& target) {
    target.min = bounds.min;
    target.max = bounds.max;
    target.origin = diet::ownBoundOrigin({});
  });
}

}  // namespace tarebowl::ui
