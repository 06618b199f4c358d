// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace tarebowl::exchange {

/// "38.1 ± 2.4", "5230 ± 310": the uncertainty with two digits that count, and the value to the same place.
/// Without an uncertainty as shortNumber() says it; "?" where nothing is known.
[[nodiscard]] std::string uncertainText(std::optional<double> value, double sd);

}  // namespace tarebowl::exchange
