// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// How many single slips (a letter too many, too few, another one, or two swapped) lie between two words,
/// ignoring case. Optimal string alignment distance (Damerau 1964, restricted).
[[nodiscard]] std::size_t slipsBetween(std::string_view a, std::string_view b);

/// The known word that text looks like a slip of: at most one slip in a short word (up to 6 letters), two in
/// a longer one. Nothing where text is itself a known word or resembles none.
[[nodiscard]] std::optional<std::string_view> likelyMeant(std::string_view text,
                                                          std::span<const std::string_view> known);

/// "closest, lowest-cost or highest".
[[nodiscard]] std::string inWords(std::span<const std::string_view> choices);

}  // namespace tarebowl::exchange
