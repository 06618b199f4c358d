// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

/// A ZIP archive of these members, by name and content, not compressed, each with its right checksum.
[[nodiscard]] std::vector<std::uint8_t> archiveOf(
    const std::vector<std::pair<std::string, std::string>>& members);

}  // namespace tarebowl::exchange
