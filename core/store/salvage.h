// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

/// What can still be read of a damaged collection, copied into a new one. The damaged file is not touched.
namespace tarebowl::store {

/// What became of one table.
struct SalvagedTable {
  std::string name{};
  std::size_t saved = 0;       ///< rows that stand in the new collection
  std::size_t doubtful = 0;    ///< of these: rows that lay beside damaged ones, and should be looked at
  std::size_t unreadable = 0;  ///< rows or pages that are there and cannot be read
  std::size_t leftOut = 0;     ///< rows that could be read and belong to something that is lost
  bool whereUnknown = false;   ///< nothing tells where it stood: what was found of it may not be all
  [[nodiscard]] bool isWhole() const { return doubtful + unreadable + leftOut == 0 && !whereUnknown; }
};

struct SalvageReport {
  std::vector<SalvagedTable> tables{};  ///< in the order of the schema
  /// Pages that belong to some damaged table or index, and nothing tells to which.
  std::size_t pagesWithoutTable = 0;
  /// What was written last, and not yet moved into the file itself, could not be read.
  bool newestWritesLost = false;
  [[nodiscard]] bool isWhole() const;
};

/// Copies what can be read of `damaged` into `fresh`, which must not exist and then is a sound collection of
/// this program's schema, with an entry in its log that says where it comes from. A row is left out rather
/// than guessed at. Numbers within a row that was written over carry no sign of it: what lies beside damage
/// is counted as doubtful. Takes collections that Collection::open refuses as damaged or untrusted. Throws
/// StoreError: NotACollection where nothing of a collection is found, TooNew, AlreadyThere, or what keeps the
/// new file from being written.
SalvageReport salvage(const std::filesystem::path& damaged, const std::filesystem::path& fresh,
                      const Author& author);

}  // namespace tarebowl::store
