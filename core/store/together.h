// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <functional>

namespace tarebowl::store {

/// Runs many verbs as one transaction: all of them are kept or, where one throws, none. For reading in what
/// would otherwise be synced to disk thousands of times.
void together(Collection& collection, const std::function<void()>& verbs);

}  // namespace tarebowl::store
