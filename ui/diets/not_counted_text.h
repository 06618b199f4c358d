// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/from_profile.h"

#include <QString>

#include <vector>

namespace tarebowl::ui {

/// "? Not judged: iodine, selenium (no food here states them); browse (no food of the group)." Empty where
/// all rules are.
[[nodiscard]] QString notCountedText(const std::vector<diet::RuleNotCounted>& rules);

}  // namespace tarebowl::ui
