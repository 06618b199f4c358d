// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/formulation.h"
#include "core/diet/measure.h"
#include "core/solver/conflict.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// What may be kept or dropped as one where rules fight: a target, ratio or share with both its bounds, or
/// all choices of a group.
struct DietRule {
  std::string id;                      ///< of the target, ratio or share; "choice:GROUP" of choices
  std::optional<std::size_t> measure;  ///< position in measuresOf(problem); nothing for choices
  std::string group;                   ///< of choices
  solver::Rule rule;                   ///< its rows and choices in the formulation
};

/// The rules of a formulation in the problem's order, choices last. With hardOnly the soft ones are left out;
/// choices are always hard.
[[nodiscard]] std::vector<DietRule> rulesOf(const Formulation& formulation, std::span<const Measure> measures,
                                            bool hardOnly);

/// A smallest set of rules that cannot hold together, as DietSolution tells it.
struct DietConflict {
  std::vector<std::string> ids;
  bool minimal = true;
  bool onlyOnGrid = false;
};
[[nodiscard]] DietConflict findConflict(const Formulation& formulation, std::span<const Measure> measures,
                                        bool hardOnly, const solver::Limits& limits);

}  // namespace tarebowl::diet
