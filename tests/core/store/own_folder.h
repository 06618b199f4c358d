// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "tests/core/store/own_database.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

inline const Author kKeeper{"Keeper A", "2026-11-25T07:30:00Z"};
inline const std::string kNow = "2026-11-25T07:30:00Z";

/// A folder for one test, empty at its start.
class OwnFolder {
 public:
  OwnFolder();
  [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return folder_ / name; }
  /// Where a new collection lies: a file in the folder, or, where the tests are on a server, a database of
  /// its own there.
  [[nodiscard]] std::filesystem::path collection(const std::string& name) const;

 private:
  std::filesystem::path folder_;
  std::string test_;
  mutable std::vector<std::unique_ptr<OwnDatabase>> databases_;
};

[[nodiscard]] std::string contentOf(const std::filesystem::path& file);
void write(const std::filesystem::path& file, const std::string& content);

/// The error that the work ends with, or nothing.
template <class Work>
std::optional<StoreError> errorOf(Work&& work) {
  try {
    work();
  } catch (const StoreError& error) {
    return error;
  }
  return std::nullopt;
}

template <class Work>
std::optional<StoreErrorCode> codeOf(Work&& work) {
  const auto error = errorOf(work);
  return error ? std::optional(error->code()) : std::nullopt;
}

}  // namespace tarebowl::store
