// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/attachment_path.h"

#include "core/health/observation.h"

#include <system_error>

namespace tarebowl::health {

namespace fs = std::filesystem;

std::optional<std::string> attachmentPath(const fs::path& folder, const fs::path& file) {
  std::error_code ignored;
  const fs::path root = fs::canonical(folder, ignored);
  const fs::path there = fs::canonical(file, ignored);
  if (root.empty() || there.empty()) return std::nullopt;
  const auto relative = there.lexically_relative(root).generic_u8string();
  const std::string path(relative.begin(), relative.end());
  if (!staysInside(path)) return std::nullopt;
  return path;
}

}  // namespace tarebowl::health
