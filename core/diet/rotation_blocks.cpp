// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_blocks.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

bool areAlike(const RotationModel& model, Index a, Index b) {
  const auto& of = model.dayCounts[at(a)];
  const auto& other = model.dayCounts[at(b)];
  if (of.size() != other.size()) return false;
  for (std::size_t i = 0; i < of.size(); ++i)
    if (of[i].id != other[i].id || of[i].members != other[i].members || of[i].atLeast != other[i].atLeast ||
        of[i].atMost != other[i].atMost)
      return false;
  for (Index j = 0; j < model.foods; ++j) {
    const RotationCell& x = model.cell(a, j);
    const RotationCell& y = model.cell(b, j);
    if (x.least != y.least || x.most != y.most || x.must != y.must || x.isFixed != y.isFixed) return false;
  }
  return true;
}

}  // namespace

DayBlocks allTogether(const RotationModel& model) {
  DayBlocks blocks(1);
  for (Index d = 0; d < model.days; ++d)
    if (model.isOpen[at(d)]) blocks.front().push_back(d);
  if (blocks.front().empty()) blocks.clear();
  return blocks;
}

DayBlocks alikeTogether(const RotationModel& model) {
  DayBlocks blocks;
  for (Index d = 0; d < model.days; ++d) {
    if (!model.isOpen[at(d)]) continue;
    const auto block = std::ranges::find_if(
        blocks, [&](const std::vector<Index>& days) { return areAlike(model, days.front(), d); });
    if (block == blocks.end())
      blocks.push_back({d});
    else
      block->push_back(d);
  }
  return blocks;
}

DayBlocks eachAlone(const RotationModel& model) {
  DayBlocks blocks;
  for (Index d = 0; d < model.days; ++d)
    if (model.isOpen[at(d)]) blocks.push_back({d});
  return blocks;
}

}  // namespace tarebowl::diet
