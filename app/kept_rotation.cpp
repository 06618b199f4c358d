// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/kept_rotation.h"

#include "app/command_line.h"

#include <fmt/format.h>

#include <utility>

namespace tarebowl::app {

transfer::RotationOnDesk keptRotationOf(const store::Collection& collection, long long number,
                                        quantity::Date day) {
  auto found = transfer::readRotation(collection, store::RotationId{number}, day);
  if (!found)
    throw UsageError(fmt::format("--rotation: there is no rotation {} (see tarebowl rotations)", number));
  return std::move(*found);
}

}  // namespace tarebowl::app
