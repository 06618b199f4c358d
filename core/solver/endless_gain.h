// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

namespace tarebowl::solver {

/// Whether a linear objective falls for ever: there is a mix of variables without an upper limit that costs
/// less than nothing and drives no row further against a bound. Then it may be had without end; without such
/// a mix the objective has a least value, however far away. Scatter, steps and choices, which only hinder,
/// are not looked at.
[[nodiscard]] bool gainsWithoutEnd(const Program& program);

}  // namespace tarebowl::solver
