// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/any_amounts.h"

#include <algorithm>

namespace tarebowl::diet {

solver::Program anyAmounts(const Formulation& formulation, const Eigen::VectorXd* bowl) {
  solver::Program program = formulation.program;
  program.step.setZero();
  if (bowl != nullptr) {
    for (const solver::Choice& choice : program.choices) {
      for (const Eigen::Index j : choice.members) {
        if ((*bowl)[j] > 0.0)
          program.lower[j] = std::max(program.lower[j], choice.threshold);
        else
          program.upper[j] = 0.0;
      }
    }
  }
  program.choices.clear();
  return program;
}

}  // namespace tarebowl::diet
