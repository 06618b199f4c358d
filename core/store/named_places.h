// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace tarebowl::store {

/// ":code" as "?", each time it stands there: what stands between quotes stays.
[[nodiscard]] std::string withBarePlaces(std::string_view sql);

}  // namespace tarebowl::store
