// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// More would be no problem file but a mistake or an attack.
inline constexpr std::size_t kLargestFile = std::size_t{64} * 1024 * 1024;
inline constexpr std::size_t kDeepestNesting = 32;

/// Strict JSON (RFC 8259) in UTF-8, with or without a byte order mark. Throws FormatError, with line and
/// column, for a syntax error, invalid UTF-8, a number that no double can hold, an object that has a key
/// twice (the first value would be lost without a word), nesting deeper than kDeepestNesting and text longer
/// than kLargestFile. fileName is only used in messages.
[[nodiscard]] nlohmann::json parseDocument(std::string_view text, const std::string& fileName);

/// path + ".key", or path + "[\"odd key\"]" where the key is not a plain word.
[[nodiscard]] std::string memberPath(const std::string& path, std::string_view key);
[[nodiscard]] std::string elementPath(const std::string& path, std::size_t index);

}  // namespace tarebowl::exchange
