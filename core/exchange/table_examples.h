// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"
#include "core/exchange/table_input.h"

#include <string>
#include <vector>

namespace tarebowl::exchange {

/// A column of a table as a person looks at it before saying what it holds.
struct ColumnExamples {
  std::string title{};                  ///< as the header writes it; empty in a table without one
  std::string unit{};                   ///< from the units line; empty where there is none
  std::vector<std::string> examples{};  ///< the first different cells that say something, at most three
  bool operator==(const ColumnExamples&) const = default;
};

/// The columns of the table, read from its head with the mapping's form, header and units line. Throws
/// FormatError.
[[nodiscard]] std::vector<ColumnExamples> columnExamples(const TableInput& input,
                                                         const TableMapping& mapping);

}  // namespace tarebowl::exchange
