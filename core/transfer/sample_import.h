// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>

namespace tarebowl::transfer {

/// Reads the folder of the invented sample into an empty collection: the foods of its problems with their
/// sources, the reports of its own laboratory (laboratory.csv), its animals with their target profiles
/// (herd/), its diets (diets/), its feeding days (feeding/). Throws FormatError and StoreError.
void importSample(store::Collection& collection, const std::filesystem::path& folder,
                  const store::Author& author);

}  // namespace tarebowl::transfer
