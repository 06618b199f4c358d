// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>

namespace tarebowl::transfer {

/// Reads a folder of animals into a collection that has none of them yet: animals.json (tarebowl-herd/1),
/// profiles/CODE.json (tarebowl-profile/1), masses.csv and conditions.csv. Starter profiles that the profiles
/// derive from are adopted. Written verb by verb: it is meant for a collection in the making. Throws
/// FormatError and StoreError.
void importHerd(store::Collection& collection, const std::filesystem::path& folder,
                const store::Author& author);

}  // namespace tarebowl::transfer
