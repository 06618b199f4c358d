// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>

namespace tarebowl::faults {

/// Every row of every table, as text.
using TableDump = std::map<std::string, std::set<std::string>>;
[[nodiscard]] TableDump dumpOf(const std::filesystem::path& file);

}  // namespace tarebowl::faults
