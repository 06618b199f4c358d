// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>

namespace tarebowl::transfer {

/// Reads a folder of feeding days (exchange/feeding_file.h) into a collection that holds its groups, foods
/// and diets and has no bowl on any of these days: a table for each group, GROUP.csv, remainders.csv and
/// pans.csv; observations.csv where it is there. In one transaction. Sheets were opened at 06:30, bowls
/// weighed at 07:30, leftovers at 08:00 of the day after, UTC. A folder that is not there has none. Throws
/// FormatError and StoreError.
void importFeeding(store::Collection& collection, const std::filesystem::path& folder,
                   const store::Author& author);

}  // namespace tarebowl::transfer
