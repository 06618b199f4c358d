// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/scale_line.h"

#include <QString>

namespace tarebowl::ui {

/// What a line that is no weight means and what to do. Empty where it means nothing to a person: words that a
/// scale sends beside its weights.
[[nodiscard]] QString scaleFault(intake::ScaleFault fault, const QString& line);
[[nodiscard]] QString scaleUnit(intake::ScaleUnit unit);
[[nodiscard]] QString scaleGone(const QString& port);
[[nodiscard]] QString scaleNotOpened(const QString& port, const QString& reason);

}  // namespace tarebowl::ui
