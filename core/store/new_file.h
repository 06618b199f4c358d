// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

/// How a new collection file comes to be. A file is built under another name, so that a collection is never
/// seen half made.
namespace tarebowl::store {

/// An empty file for the engine to fill, which only its owner and their group may read; the engine gives the
/// files beside it the same rights. Throws StoreError where it cannot be made.
void makeOwnFile(const std::filesystem::path& file);

/// Gives what was built its name, only if that is still free. Throws StoreError (AlreadyThere, NoPermission).
void putInPlace(const std::filesystem::path& made, const std::filesystem::path& file);

}  // namespace tarebowl::store
