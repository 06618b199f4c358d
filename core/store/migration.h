// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace tarebowl::store {

/// One step of the schema, from the one before it to `number`; a file NNNN_reason.sql in migrations/, in the
/// SQL that engines have in common.
struct Migration {
  int number;
  std::string_view name;
  std::string_view sql;
};

/// All of them, from 1 on without a gap; compiled in.
[[nodiscard]] std::span<const Migration> migrations();

}  // namespace tarebowl::store
