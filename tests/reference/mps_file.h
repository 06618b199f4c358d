// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <filesystem>

namespace tarebowl::reference {

/// A linear program from a file in MPS format; names without spaces; a section QUADOBJ and the objective's
/// constant are left out. All rows hard, all variables without a step. Throws std::runtime_error for a file
/// that cannot be read, for a negative or free variable, and for what is no MPS file.
[[nodiscard]] solver::Program readMps(const std::filesystem::path& file);

}  // namespace tarebowl::reference
