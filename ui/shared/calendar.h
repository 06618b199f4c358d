// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

namespace tarebowl::ui {

/// The day by the person's own clock.
[[nodiscard]] quantity::Date today();

}  // namespace tarebowl::ui
