// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/conflict.h"

#include <algorithm>
#include <set>

namespace tarebowl::diet {

std::vector<std::string> conflictIds(const Formulation& formulation, std::span<const Measure> measures,
                                     const solver::Conflict& conflict) {
  std::set<std::size_t> members;
  for (const Eigen::Index row : conflict.rows) {
    members.insert(formulation.rows[static_cast<std::size_t>(row)].measure);
  }
  std::vector<std::string> ids;
  ids.reserve(members.size() + conflict.choices.size());
  for (const std::size_t member : members) ids.push_back(measures[member].id);
  for (const std::size_t choice : conflict.choices) {
    const std::string id = "choice:" + formulation.choices[choice];
    if (std::ranges::find(ids, id) == ids.end()) ids.push_back(id);
  }
  return ids;
}

}  // namespace tarebowl::diet
