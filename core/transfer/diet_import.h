// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/diet_json.h"
#include "core/store/collection.h"

#include <filesystem>

namespace tarebowl::transfer {

/// Reads a diet with its versions into a collection that holds its group, targets and foods, and not yet the
/// diet. What was approved is decided on anew: its problem and result are worked out from the collection, as
/// of the day of the approval. Written verb by verb: it is meant for a collection in the making. Throws
/// StoreError.
void importDiet(store::Collection& collection, const exchange::DietFile& file, const store::Author& author);

/// Every diet of a folder, CODE.json; throws FormatError too. A folder that is not there has none.
void importDiets(store::Collection& collection, const std::filesystem::path& folder,
                 const store::Author& author);

}  // namespace tarebowl::transfer
