// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/theme.h"

namespace tarebowl::ui {

/// So many things can be told apart in one chart; what is beyond them goes together.
inline constexpr int kBands = 6;

/// The colour of one of several foods in a chart, mixed from the theme; neighbours differ in lightness too,
/// so that they read in greyscale. kBands is the colour of all others together.
[[nodiscard]] QColor bandColor(const Theme& theme, int band);
/// How it is drawn where it is a line, so that lines are told apart without their colour.
[[nodiscard]] Qt::PenStyle bandStyle(int band);

}  // namespace tarebowl::ui
