// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/suggestions.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/larder.h"

#include <chrono>
#include <memory>
#include <utility>

namespace tarebowl::ui {
namespace {

/// Reasons may take longer than the diet, but not so long that the hand has gone on.
constexpr std::chrono::milliseconds kPatience{2'000};

bool isInTrouble(const std::optional<diet::DietSolution>& solution) {
  return solution && (solution->status == diet::DietStatus::Compromise ||
                      solution->status == diet::DietStatus::Impossible);
}

SuggestedFacts factsFor(const diet::BalanceProblem& problem, const diet::DietSolution& solution,
                        const std::vector<diet::DietFood>& larder, const std::stop_token& stop) {
  SuggestedFacts facts{{}, {}, solution.shortfall, solution.status == diet::DietStatus::Impossible};
  for (const diet::Remedy& remedy :
       diet::findRemedies(problem, solution, larder, {.deadline = kPatience, .stop = stop})) {
    const auto& of = remedy.kind == diet::Remedy::Kind::Raise ? problem.foods : larder;
    facts.remedies.push_back({remedy, of.at(remedy.food)});
  }
  facts.changes =
      diet::explain(problem, solution, {.ranges = false, .deadline = kPatience, .stop = stop}).leastChanges;
  return facts;
}

}  // namespace

Suggestions::Suggestions(DietDesk& desk, Larder& larder, QObject* parent)
    : QObject(parent), desk_(desk), larder_(larder) {
  connect(&desk, &DietDesk::opened, this, &Suggestions::drop);
  connect(&desk, &DietDesk::settled, this, &Suggestions::look);
  connect(&larder, &Larder::complete, this, [this] {
    if (std::exchange(waiting_, false)) start();
  });
}

/// Those of a moment ago stay until there are others, or none are needed.
void Suggestions::look() {
  if (!isInTrouble(desk_.solution())) return drop();
  waiting_ = true;
  larder_.want();
}

void Suggestions::drop() {
  waiting_ = false;
  errand_.cancel();
  if (!std::exchange(found_, {}).empty()) emit changed();
}

void Suggestions::start() {
  if (!isInTrouble(desk_.solution())) return drop();
  errand_.run(
      [problem = std::make_shared<const diet::BalanceProblem>(problemToSolve(desk_.draft())),
       solution = std::make_shared<const diet::DietSolution>(*desk_.solution()), larder = larder_.foods()](
          const Errand::Terms& terms) { return factsFor(*problem, *solution, *larder, terms.stop); },
      [this](const SuggestedFacts& facts) { take(facts); });
}

void Suggestions::take(const SuggestedFacts& facts) {
  found_ = suggestionsFrom(desk_.draft(), facts);
  emit changed();
}

void Suggestions::tryOut(std::size_t suggestion) {
  if (suggestion < found_.size()) desk_.tryOut(Suggestion(found_[suggestion]));
}

}  // namespace tarebowl::ui
