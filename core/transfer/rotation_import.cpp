// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/rotation_import.h"

#include "core/exchange/kept_rotation_json.h"
#include "core/store/rotation_verbs.h"
#include "core/transfer/json_files.h"

namespace tarebowl::transfer {

void importRotations(store::Collection& collection, const std::filesystem::path& folder,
                     const store::Author& author) {
  for (const auto& file : jsonFilesIn(folder))
    store::importRotation(collection, exchange::readKeptRotation(file).rotation, author);
}

}  // namespace tarebowl::transfer
