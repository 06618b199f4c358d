// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace tarebowl::app {

/// As every command prints it: indented, with a line's end. Bytes that are not UTF-8 become U+FFFD.
[[nodiscard]] std::string toText(const nlohmann::ordered_json& json);

}  // namespace tarebowl::app
