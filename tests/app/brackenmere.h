// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/sample_import.h"

#include <string>

namespace tarebowl::app {

/// The invented sample as a collection of this test's own, fresh.
[[nodiscard]] std::string brackenmere(transfer::FeedingDays days = transfer::FeedingDays::TakenIn);

}  // namespace tarebowl::app
