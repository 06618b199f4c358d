// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/group_facts.h"

#include <algorithm>

namespace tarebowl::transfer {

diet::EaterFacts groupFacts(const store::KnownGroup& group) {
  diet::EaterFacts facts;
  facts.eater.name = group.group.record.name;
  facts.eater.count = std::max(1, group.headcount.value_or(1));
  facts.eater.bodyMass = group.bodyMass;
  facts.eater.taxa = group.species.taxa;
  if (group.energy) {
    facts.energyLow = group.energy->low;
    facts.energyHigh = group.energy->high;
    facts.energyOrigin = animal::originOf(group.energyPlan->record.plan);
    facts.energyFollowsTemperature = group.energyPlan->record.plan.followsTemperature;
  }
  return facts;
}

std::vector<animal::FoodCaution> houseCautions(const store::Collection& collection) {
  std::vector<animal::FoodCaution> cautions;
  for (store::StoredHouseCaution& caution : store::listHouseCautions(collection))
    cautions.push_back(std::move(caution.record));
  return cautions;
}

}  // namespace tarebowl::transfer
