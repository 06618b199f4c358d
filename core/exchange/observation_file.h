// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/observation.h"

#include <filesystem>
#include <vector>

namespace tarebowl::exchange {

/// What keepers saw, as a table (sample-data/README.md lists the columns): of groups, a line each. A score
/// stands with the id of a known scale, which says the rest of it. Throws FormatError (problem_json.h).
[[nodiscard]] std::vector<health::Observation> readObservations(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
