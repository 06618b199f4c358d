// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/new_file.h"

#include "core/store/store_error.h"

#include <fstream>

namespace tarebowl::store {

namespace fs = std::filesystem;

void makeOwnFile(const fs::path& file) {
  std::error_code error;
  if (!std::ofstream(file, std::ios::binary | std::ios::app))
    throw StoreError(StoreErrorCode::NoPermission, file, "cannot be made here");
  fs::permissions(file, fs::perms::others_all, fs::perm_options::remove,
                  error);  // where the disk knows of rights
}

void putInPlace(const fs::path& made, const fs::path& file) {
  std::error_code error;
  fs::create_hard_link(made, file, error);
  if (!error) {
    fs::remove(made, error);
    return;
  }
  if (fs::exists(file)) throw StoreError(StoreErrorCode::AlreadyThere, file, "is there already");
  fs::rename(made, file, error);
  if (error) throw StoreError(StoreErrorCode::NoPermission, file, "cannot be made here: " + error.message());
}

}  // namespace tarebowl::store
