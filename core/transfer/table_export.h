// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_export.h"
#include "core/store/collection.h"

namespace tarebowl::transfer {

/// Every food of the collection as diets count with it, and what it holds besides; one at a time. The
/// collection must outlive it. Throws StoreError, when called too.
[[nodiscard]] exchange::ExportSource foodsOf(const store::Collection& collection);

}  // namespace tarebowl::transfer
