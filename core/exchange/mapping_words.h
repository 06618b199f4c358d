// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"
#include "core/exchange/encoding.h"

#include <array>
#include <optional>
#include <string_view>

/// The words of a mapping file, in both directions.
namespace tarebowl::exchange {

inline constexpr std::string_view kMappingFormat = "tarebowl-mapping/1";

enum class Layout { Wide, Long };
enum class ZeroMeans { Nothing, Unknown };

/// In the order of the enumerators.
inline constexpr std::array<std::string_view, 5> kEncodingWords{"utf-8", "utf-16le", "utf-16be",
                                                                "windows-1252", "latin-1"};
inline constexpr std::array<std::string_view, 2> kLayoutWords{"wide", "long"};
inline constexpr std::array<std::string_view, 2> kDecimalWords{".", ","};
inline constexpr std::array<std::string_view, 2> kZeroWords{"none", "unknown"};
inline constexpr std::array<std::string_view, 3> kFoodBasisWords{"as-fed", "dry-matter", "energy"};

[[nodiscard]] std::optional<ColumnRole> parseRole(std::string_view text);
[[nodiscard]] std::optional<Layout> parseLayout(std::string_view text);
[[nodiscard]] std::optional<DecimalMark> parseDecimalMark(std::string_view text);
[[nodiscard]] std::optional<ZeroMeans> parseZero(std::string_view text);
/// Only the bases on which a food can be described.
[[nodiscard]] std::optional<quantity::Basis> parseFoodBasis(std::string_view text);

}  // namespace tarebowl::exchange
