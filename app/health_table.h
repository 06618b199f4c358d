// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/health_page.h"

#include <string>

namespace tarebowl::app {

/// Reviews and look-backs for a terminal.
[[nodiscard]] std::string calciumTable(const exchange::CalciumPage& page);
[[nodiscard]] std::string lookBackTable(const exchange::LookBackPage& page);

}  // namespace tarebowl::app
