// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace tarebowl::reference {

/// The problem files of the invented collection, by file name, in order.
[[nodiscard]] std::vector<std::string> sampleNames();
[[nodiscard]] std::filesystem::path samplePath(const std::string& name);
[[nodiscard]] nlohmann::json readSampleJson(const std::string& name);

/// "tenrec-hedgehog.json" → "TenrecHedgehog": what a test of one file is called.
[[nodiscard]] std::string testNameOf(const std::string& name);

}  // namespace tarebowl::reference
