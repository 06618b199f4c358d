// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/clerk.h"

#include <QString>

namespace tarebowl::ui {

/// Where two versions of a thing differ, a line each: "scale step: yours 0.1, now there 1". Both are JSON
/// objects as the change log keeps them; an empty `theirs` was removed.
[[nodiscard]] QString conflictText(const QString& mine, const QString& theirs);

/// Why something was refused; where another window was faster, where the two versions differ as well.
[[nodiscard]] QString refusalText(const Refusal& refusal);

}  // namespace tarebowl::ui
