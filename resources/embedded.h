// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/// Data files compiled into the program; see resources/CMakeLists.txt.
namespace tarebowl::resources {

[[nodiscard]] std::string_view nutrientsJson();
[[nodiscard]] std::string_view tableWordsJson();
[[nodiscard]] std::string_view starterProfilesJson();
[[nodiscard]] std::string_view cautionsJson();

}  // namespace tarebowl::resources
