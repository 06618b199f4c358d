// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace tarebowl::animal {

/// Names of groups, animals and sections as a person lists them: "house 2" goes before "House 10". Numbers
/// count by their value, and capitals of a to z do not count unless nothing else differs. True where a goes
/// before b; a strict weak order, and the same on every machine.
[[nodiscard]] bool goesBefore(std::string_view a, std::string_view b);

}  // namespace tarebowl::animal
