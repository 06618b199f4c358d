// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_approval.h"

#include <algorithm>
#include <set>
#include <string>

namespace tarebowl::diet {
namespace {

bool isMet(TargetState state) {
  return state == TargetState::Met || state == TargetState::AtMin || state == TargetState::AtMax;
}

/// Met as far as is known, and less is known than before: a minimum of an amount holds whatever is unknown of
/// it, a maximum or a ratio may not.
bool isDoubtful(const RungChange& rung) {
  constexpr double kRounding = 1e-12;
  const bool knowsLess =
      rung.after.coverage < rung.before.coverage - kRounding || (rung.after.atLeast && !rung.before.atLeast);
  return knowsLess && (rung.after.max || rung.after.kind != TargetKind::Nutrient);
}

/// The foods come from the groups of what is missing, and none of these is left without one.
bool isSameGroup(const SwapRequest& request, const Swap& swap) {
  std::set<std::string> missing;
  std::set<std::string> given;
  for (const std::size_t food : request.missing) missing.insert(request.problem.foods[food].group);
  for (const SwapPart& part : swap.parts) given.insert(request.candidates[part.candidate].group);
  return missing == given && !missing.contains("");
}

/// To be given in limits, or forbidden if the animal were what nobody has said it is. What the house has set
/// aside with a reason is approved already.
bool needsThought(const FoodFinding& finding) {
  return finding.severity != animal::CautionSeverity::Consider && finding.lifted.empty();
}

}  // namespace

SwapApproval approvalOf(const SwapRequest& request, const Swap& swap, const std::vector<RungChange>& rungs,
                        const std::vector<FoodFinding>& cautions) {
  SwapApproval approval;
  approval.isSameGroup = isSameGroup(request, swap);
  approval.isCautioned = std::ranges::any_of(cautions, needsThought);
  for (std::size_t i = 0; i < rungs.size(); ++i) {
    if (!isMet(rungs[i].before.state)) continue;
    if (!isMet(rungs[i].after.state))
      approval.lost.push_back(i);
    else if (isDoubtful(rungs[i]))
      approval.doubtful.push_back(i);
  }
  return approval;
}

}  // namespace tarebowl::diet
