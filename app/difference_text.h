// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_difference.h"

#include <string>

namespace tarebowl::app {

/// "crickets-adult, evening: 4 → 6 g"
[[nodiscard]] std::string sentenceOf(const diet::VersionDifference& difference);

}  // namespace tarebowl::app
