// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/rotation_desk.h"

namespace tarebowl::app {

/// The rotation of this number as it stands on the day. UsageError where there is none.
[[nodiscard]] transfer::RotationOnDesk keptRotationOf(const store::Collection& collection, long long number,
                                                      quantity::Date day);

}  // namespace tarebowl::app
