// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace tarebowl::app {

/// Throws UsageError where the file cannot be written.
void writeWhole(const std::string& file, const std::string& text);

}  // namespace tarebowl::app
