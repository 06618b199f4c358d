// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>

namespace tarebowl::transfer {

/// Reads the folder of the invented sample into an empty collection: the foods of its problems with their
/// sources, the reports of its own laboratory (laboratory.csv), its animals with their target profiles
/// (herd/), its diets (diets/) and rotations (rotations/), its feeding days (feeding/) unless they are left
/// out, as for a house that has yet to weigh its first bowl. All of it or, where anything is wrong with it,
/// nothing. Throws FormatError and StoreError.
enum class FeedingDays { TakenIn, LeftOut };
void importSample(store::Collection& collection, const std::filesystem::path& folder,
                  const store::Author& author, FeedingDays days = FeedingDays::TakenIn);

}  // namespace tarebowl::transfer
