// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace tarebowl::health {

/// How an attachment names this file: by its path from the collection's folder, UTF-8, with / between
/// folders. Nothing where the file does not lie in there once links are followed, or where its name cannot be
/// kept (observation.h, staysInside).
[[nodiscard]] std::optional<std::string> attachmentPath(const std::filesystem::path& folder,
                                                        const std::filesystem::path& file);

}  // namespace tarebowl::health
