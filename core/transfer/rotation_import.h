// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>

namespace tarebowl::transfer {

/// Every rotation of a folder (exchange/kept_rotation_json.h) into a collection that holds its diet; a folder
/// that is not there has none. Throws FormatError and StoreError.
void importRotations(store::Collection& collection, const std::filesystem::path& folder,
                     const store::Author& author);

}  // namespace tarebowl::transfer
