// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_study.h"

#include "core/store/faeces_verbs.h"
#include "core/store/reading.h"
#include "core/transfer/intake_period.h"

#include <utility>

namespace tarebowl::transfer {

std::vector<food::NutrientId> nutrientsOfReport() {
  return {food::nutrients::energy(), food::nutrients::protein(), food::nutrients::calcium(),
          food::nutrients::phosphorus()};
}

std::optional<exchange::IntakeToWrite> intakeStudy(const store::Collection& collection,
                                                   const std::string& group, quantity::Date from,
                                                   quantity::Date to,
                                                   std::span<const food::NutrientId> nutrients) {
  // Asked last, it would have all of the report worked out once more.
  store::askFirst(collection, [&] { return store::faecesOfGroup(collection, group); });
  auto period = readIntake(collection, group, from, to);
  if (!period) return std::nullopt;
  exchange::IntakeToWrite made;
  made.group = group;
  made.groupName = period->group.group.record.name;
  made.from = from;
  made.to = to;
  made.invented = period->invented;
  made.pans = period->pans;
  made.unknownFoods = period->unknownFoods;
  made.problem = period->problem;
  made.report = intake::reportStudy(period->problem, period->eaten, nutrients);
  made.fractions = intake::learnFractions(period->eaten);
  made.choices = intake::choiceByLabel(period->eaten, {.leaveOutClasses = classesWithoutPans()});
  made.calciumToPhosphorus =
      intake::dailyRatio(period->eaten, contentsOf(*period, food::nutrients::calcium()),
                         contentsOf(*period, food::nutrients::phosphorus()));
  for (const store::StoredFaeces& faeces : store::faecesOfGroup(collection, group))
    if (from <= faeces.record.from && faeces.record.until <= to)
      made.digestion.push_back(intake::digestionOf(faeces.record, period->problem, period->eaten));
  made.bowls = std::move(period->eaten);
  return made;
}

}  // namespace tarebowl::transfer
