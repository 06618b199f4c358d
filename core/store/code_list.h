// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/prepared_statement.h"

#include <string>
#include <vector>

namespace tarebowl::store {

/// Codes that a statement picks rows by, "code IN (…)", each once and in their order. It has as many places
/// as the next power of two, the last code in those that are left: so lists of any length are few statements,
/// of which a server keeps the plans.
class CodeList {
 public:
  explicit CodeList(std::vector<std::string> codes);

  [[nodiscard]] const std::vector<std::string>& codes() const { return codes_; }
  /// "?, ?, ?, ?"; NULL, which no code is, for an empty list.
  [[nodiscard]] std::string places() const;
  /// To the places from the first on. It must live until the statement has run.
  void bindTo(PreparedStatement& statement) const;

 private:
  [[nodiscard]] std::size_t placeCount() const;

  std::vector<std::string> codes_;
};

}  // namespace tarebowl::store
