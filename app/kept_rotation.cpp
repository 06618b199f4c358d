// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/kept_rotation.h"

#include "app/author.h"
#include "app/command_line.h"

#include <fmt/format.h>

#include <ostream>
#include <utility>

namespace tarebowl::app {

transfer::RotationOnDesk keptRotationOf(const store::Collection& collection, long long number,
                                        quantity::Date day) {
  auto found = transfer::readRotation(collection, store::RotationId{number}, day);
  if (!found)
    throw UsageError(fmt::format("--rotation: there is no rotation {} (see tarebowl rotations)", number));
  return std::move(*found);
}

void keepDays(store::Collection& collection, const transfer::RotationOnDesk& rotation,
              const diet::RotationPlan& plan, quantity::Date plannedFrom, const Streams& streams) {
  if (plan.days.empty()) {
    streams.err << fmt::format("nothing was kept: rotation {} stays as it was\n",
                               static_cast<long long>(rotation.kept.id));
    return;
  }
  const auto seed = static_cast<std::uint64_t>(rotation.kept.record.seed);
  store::editRotation(collection, rotation.kept.id, rotation.kept.revision,
                      transfer::keptRotation(rotation.desk, plan, seed, plannedFrom),
                      store::Author{whoIsThere(), nowInUtc()});
}

}  // namespace tarebowl::app
