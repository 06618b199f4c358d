// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <iosfwd>
#include <string>

namespace tarebowl::exchange {

/// The text of a file, or of a stream that messages call by name. Throws FormatError (problem_json.h) where
/// it cannot be read or is longer than kLargestFile.
[[nodiscard]] std::string readText(const std::filesystem::path& file);
[[nodiscard]] std::string readText(std::istream& stream, const std::string& name);

}  // namespace tarebowl::exchange
