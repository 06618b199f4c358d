// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/formulation.h"

namespace tarebowl::diet {

/// The formulation's program with amounts between the scale's steps, and without choices. bowl, where given,
/// is one whose choices are kept: what it leaves out of a group stays out, what it uses stays in.
[[nodiscard]] solver::Program anyAmounts(const Formulation& formulation, const Eigen::VectorXd* bowl);

}  // namespace tarebowl::diet
