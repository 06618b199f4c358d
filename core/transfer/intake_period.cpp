// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_period.h"

#include "core/store/reading.h"
#include "core/transfer/judged_problem.h"

#include <utility>

namespace tarebowl::transfer {

using quantity::Date;

void askForPeriod(const store::Collection& collection, const std::string& group, Date from, Date to) {
  if (!store::gathers(collection)) return;
  store::askAhead(collection, [&] { return store::knowGroup(collection, group, to); });
  IntakeReader early(collection, group, {});
  store::askAhead(collection, [&] { askForIntake(collection, early, from, to); });
}

std::optional<IntakePeriod> readIntake(const store::Collection& collection, const std::string& group,
                                       Date from, Date to) {
  askForPeriod(collection, group, from, to);
  auto known = store::knowGroup(collection, group, to);
  if (!known) return std::nullopt;
  IntakePeriod period{.group = std::move(*known), .from = from, .to = to};
  period.invented = period.group.group.record.invented;
  IntakeReader reader(collection, group, period.group.group.record.section);
  IntakeReader::Stretch read = reader.read(from, to);
  for (const auto& [code, food] : reader.foods())
    if (!food) period.unknownFoods.push_back(code);
  period.problem = judgedProblem(period.group, foodsKnown(reader), energyMethodOf(collection, read));
  period.fed = std::move(read.fed);
  period.eaten = std::move(read.eaten);
  period.pans = read.pans;
  return period;
}

intake::Contents contentsOf(const IntakePeriod& period, food::NutrientId nutrient) {
  return intake::Contents::ofNutrient(period.problem.foods, period.problem.energyMethod, nutrient);
}

}  // namespace tarebowl::transfer
