// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace tarebowl::exchange {

/// The known nutrients as "tarebowl-nutrients/1", indented: tagname, name, unit, group, decimals, synonyms.
[[nodiscard]] std::string writeNutrients();

}  // namespace tarebowl::exchange
