// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_row.h"

#include <filesystem>
#include <memory>

namespace tarebowl::exchange {

/// The first sheet of an XLSX workbook (ECMA-376), row by row. A cell with a formula reads as "=…" and one
/// that is formatted as a date as ISO text, so that neither passes for a number. Throws FormatError.
[[nodiscard]] std::unique_ptr<TableReader> openSheet(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
