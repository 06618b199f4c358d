// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/kept_rotation.h"

#include <filesystem>
#include <string>
#include <string_view>

/// A rotation as a collection keeps it, as a file ("tarebowl-kept-rotation/1", indented);
/// sample-data/README.md lists the keys.
namespace tarebowl::exchange {

inline constexpr std::string_view kKeptRotationFormat = "tarebowl-kept-rotation/1";

struct KeptRotationFile {
  diet::KeptRotation rotation{};
  bool invented = false;
  bool operator==(const KeptRotationFile&) const = default;
};

/// Throws FormatError (problem_json.h) for what no rotation may be; whether its diet and foods are there is
/// for the collection to say.
[[nodiscard]] KeptRotationFile parseKeptRotation(std::string_view json, const std::string& fileName);
[[nodiscard]] KeptRotationFile readKeptRotation(const std::filesystem::path& file);

[[nodiscard]] std::string writeKeptRotation(const KeptRotationFile& file);

}  // namespace tarebowl::exchange
