// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"
#include "core/store/collection.h"

#include <string>

namespace tarebowl::store {

/// Looks up versions of a profile and those that they rest on, which were all read in one question; others
/// are asked for one by one. Reads while the collection lives. Throws StoreError.
[[nodiscard]] animal::ProfileLookup lineageOf(const Collection& collection, const std::string& code);

}  // namespace tarebowl::store
