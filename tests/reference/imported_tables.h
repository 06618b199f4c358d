// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/food/collection_checks.h"
#include "tests/core/exchange/memory_sink.h"

#include <optional>
#include <string>
#include <vector>

/// The published tables as the importer reads them, by the mappings in data/.
namespace tarebowl::reference {

struct PublishedTable {
  exchange::TableInput input;
  exchange::TableMapping mapping;
};

/// Nothing where the table is not there.
[[nodiscard]] std::optional<PublishedTable> sr28Table();
[[nodiscard]] std::optional<PublishedTable> ifctTableWithMapping();

/// What was imported, as the checks see it; in the order of the keys.
[[nodiscard]] std::vector<food::CheckedFood> checkedFoods(const exchange::MemorySink& sink);

}  // namespace tarebowl::reference
