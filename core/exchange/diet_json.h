// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

/// A diet and its versions as a file, "tarebowl-diet/1" (sample-data/README.md lists the keys). Foods and
/// targets are named, not contained: what was decided on is worked out where the file is read in.
namespace tarebowl::exchange {

inline constexpr std::string_view kDietFormat = "tarebowl-diet/1";

struct DietFile {
  diet::NamedDiet diet{};
  std::vector<diet::DietVersion> versions{};
  bool operator==(const DietFile&) const = default;
};

/// fileName is only used in messages. Throws FormatError (problem_json.h).
[[nodiscard]] DietFile parseDiet(std::string_view json, const std::string& fileName);
[[nodiscard]] DietFile readDiet(const std::filesystem::path& file);

/// Reads back as the same diet.
[[nodiscard]] std::string writeDiet(const DietFile& diet);

}  // namespace tarebowl::exchange
