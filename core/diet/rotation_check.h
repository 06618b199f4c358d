// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"

#include <optional>
#include <string>

namespace tarebowl::diet {

/// Looks at a plan as someone who knows only the problem and its rules: structure, portions, scale, runs,
/// days off, stock, what is locked and what was fed, hard zones. The first that does not hold, as a code word
/// and facts; nothing where all do.
[[nodiscard]] std::optional<std::string> brokenRotationRule(const RotationProblem& problem,
                                                            const RotationPlan& plan);

}  // namespace tarebowl::diet
