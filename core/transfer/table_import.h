// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/store/collection.h"

#include <cstdint>
#include <filesystem>
#include <optional>

namespace tarebowl::transfer {

/// A table of foods and how it is read. Where the mapping names no source, the file's name without its ending
/// does: by source and code a food is found again when the table is imported a second time.
struct FoodTable {
  exchange::TableInput input;
  exchange::TableMapping mapping;
  std::filesystem::path file{};
};

enum class Keep { Nothing, WhereItMay };

struct Imported {
  exchange::ImportPlan plan;
  std::optional<std::int64_t> change{};  ///< entry of the change log; nothing where nothing was written
};

/// Reads the table into the collection as one transaction, and keeps it if that is wanted and nothing of it
/// is refused. To plan is to do all of it and keep nothing, so that the plan says what an import will do.
/// Holds the collection's write lock meanwhile. Throws FormatError where the table cannot be read at all, and
/// StoreError.
[[nodiscard]] Imported importTable(store::Collection& collection, const FoodTable& table,
                                   const store::Author& author, Keep keep,
                                   const exchange::ImportOptions& options = {});

}  // namespace tarebowl::transfer
