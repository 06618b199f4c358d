// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLabel;

namespace tarebowl::ui {

/// A line that says what went wrong, in the page and not over it: hidden until it has something to say.
[[nodiscard]] QLabel* makeBanner();

}  // namespace tarebowl::ui
