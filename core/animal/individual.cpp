// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/individual.h"

#include <algorithm>

namespace tarebowl::animal {

namespace {

using OptionalDate = std::optional<quantity::Date>;

bool isAfter(const OptionalDate& a, const OptionalDate& b) {
  return a && b && *a > *b;
}

bool inOrder(const std::vector<StageEntry>& stages) {
  const auto notLater = [](const StageEntry& a, const StageEntry& b) { return a.from >= b.from; };
  return std::adjacent_find(stages.begin(), stages.end(), notLater) == stages.end();
}

}  // namespace

std::vector<IndividualProblem> problemsWith(const Individual& individual) {
  using enum IndividualProblem;
  std::vector<IndividualProblem> problems;
  const auto note = [&](bool isWrong, IndividualProblem problem) {
    if (isWrong) problems.push_back(problem);
  };
  note(individual.code.empty(), NoCode);
  note(individual.species.empty(), NoSpecies);
  note(isAfter(individual.born, individual.left), BornAfterLeaving);
  note(isAfter(individual.arrived, individual.left), ArrivedAfterLeaving);
  note(isAfter(individual.born, individual.arrived), BornAfterArriving);
  note(!inOrder(individual.stages), StagesNotInOrder);
  note(std::ranges::any_of(individual.stages,
                           [&](const StageEntry& entry) { return isAfter(individual.born, entry.from); }),
       StageBeforeBirth);
  note(individual.died && !individual.left, DiedWithoutDay);
  return problems;
}

LifeStage stageOn(const Individual& individual, quantity::Date day) {
  const StageEntry* inForce = nullptr;
  for (const StageEntry& entry : individual.stages)
    if (entry.from <= day && (inForce == nullptr || entry.from >= inForce->from)) inForce = &entry;
  return inForce == nullptr ? LifeStage::Adult : inForce->stage;
}

}  // namespace tarebowl::animal
