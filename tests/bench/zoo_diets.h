// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <string>

/// What the groups of the zoo of fed_zoo.h are fed by: a diet each, with a version for each year that was
/// approved on what was to be decided, and a draft of the next one.
namespace tarebowl::bench {

[[nodiscard]] std::string dietCode(int group);
/// Days are counted from the first one.
[[nodiscard]] int versionOnDay(int day);

/// After the herd: a decision asks who eats.
void addDiets(store::Collection& collection);

}  // namespace tarebowl::bench
