// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <string>

/// Who and when, for the history of a collection.
namespace tarebowl::app {

/// "2026-11-25T07:30:00Z".
[[nodiscard]] std::string nowInUtc();
[[nodiscard]] quantity::Date today();
/// Who is at the keyboard, as the system names them.
[[nodiscard]] std::string whoIsThere();

}  // namespace tarebowl::app
