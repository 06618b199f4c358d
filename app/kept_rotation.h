// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"
#include "core/transfer/rotation_desk.h"

namespace tarebowl::app {

/// The rotation of this number as it stands on the day. UsageError where there is none.
[[nodiscard]] transfer::RotationOnDesk keptRotationOf(const store::Collection& collection, long long number,
                                                      quantity::Date day);

/// Keeps days that were planned in place of those that a rotation has. Where hard rules leave no plan,
/// nothing is kept, and it is said.
void keepDays(store::Collection& collection, const transfer::RotationOnDesk& rotation,
              const diet::RotationPlan& plan, quantity::Date plannedFrom, const Streams& streams);

}  // namespace tarebowl::app
