// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/eaten_before.h"

#include "core/intake/eaten_fraction.h"
#include "core/store/animal_reading.h"
#include "core/transfer/intake_reader.h"

#include <algorithm>
#include <chrono>

namespace tarebowl::transfer {

namespace {

/// Far enough back for most foods of a rotation to have come round, near enough for tastes (house rule, no
/// source).
constexpr std::chrono::days kHistory{90};

}  // namespace

std::map<std::string, diet::EatenBefore> eatenBefore(const store::Collection& collection,
                                                     const std::string& group, quantity::Date day) {
  std::map<std::string, diet::EatenBefore> eaten;
  const auto known = store::findGroup(collection, group);
  if (!known) return eaten;
  IntakeReader reader(collection, {});
  reader.turnTo(group, known->record.section);
  const auto read =
      reader.read(std::chrono::sys_days(day) - kHistory, std::chrono::sys_days(day) - std::chrono::days(1));
  for (const intake::EatenFraction& food : intake::learnFractions(read.eaten))
    if (food.own)
      eaten[food.food] = {.fraction = std::clamp(*food.own, 0.0, 1.0), .bowls = static_cast<int>(food.bowls)};
  return eaten;
}

}  // namespace tarebowl::transfer
