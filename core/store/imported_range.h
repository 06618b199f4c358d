// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace tarebowl::store {

/// What an import added, by the numbers it gave: they follow each other, for it holds the write lock. first >
/// last where it added none.
struct ImportedRange {
  std::int64_t firstFood = 1;
  std::int64_t lastFood = 0;
  std::int64_t firstSample = 1;
  std::int64_t lastSample = 0;
  /// Samples of an earlier import that it changed have entries of their own in the log, from this one up to
  /// the import's; nothing where it changed none.
  std::optional<std::int64_t> firstEdit{};
};

/// Reads it from an import's entry in the change log.
[[nodiscard]] ImportedRange importedRange(const std::string& json);

}  // namespace tarebowl::store
