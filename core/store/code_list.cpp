// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/code_list.h"

#include <algorithm>
#include <bit>
#include <utility>

namespace tarebowl::store {

CodeList::CodeList(std::vector<std::string> codes) : codes_(std::move(codes)) {
  std::ranges::sort(codes_);
  codes_.erase(std::unique(codes_.begin(), codes_.end()), codes_.end());  // Clang 14 knows no other range
}

std::size_t CodeList::placeCount() const {
  return codes_.empty() ? 0 : std::bit_ceil(codes_.size());
}

std::string CodeList::places() const {
  if (codes_.empty()) return "NULL";
  std::string places = "?";
  for (std::size_t i = 1; i < placeCount(); ++i) places += ", ?";
  return places;
}

void CodeList::bindTo(PreparedStatement& statement) const {
  for (std::size_t i = 0; i < placeCount(); ++i)
    statement.bind(static_cast<int>(i) + 1, codes_[std::min(i, codes_.size() - 1)]);
}

}  // namespace tarebowl::store
