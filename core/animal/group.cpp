// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/group.h"

#include <algorithm>

namespace tarebowl::animal {

namespace {

bool holdsOn(const Membership& stay, quantity::Date day) {
  return stay.from <= day && (!stay.until || day < *stay.until);
}

/// Two stays share a day exactly when the later beginning is a day of both.
bool shareADay(const Membership& a, const Membership& b) {
  const quantity::Date later = std::max(a.from, b.from);
  return holdsOn(a, later) && holdsOn(b, later);
}

}  // namespace

std::vector<std::string> membersOn(std::span<const Membership> memberships, const std::string& group,
                                   quantity::Date day) {
  std::vector<std::string> members;
  for (const Membership& stay : memberships)
    if (stay.group == group && holdsOn(stay, day) &&
        std::ranges::find(members, stay.individual) == members.end())
      members.push_back(stay.individual);
  return members;
}

std::optional<int> headcountOn(const Group& group, std::span<const Membership> memberships,
                               quantity::Date day) {
  if (const auto members = membersOn(memberships, group.code, day); !members.empty())
    return static_cast<int>(members.size());
  const GroupCount* inForce = nullptr;
  for (const GroupCount& count : group.counts)
    if (count.from <= day && (inForce == nullptr || count.from >= inForce->from)) inForce = &count;
  return inForce == nullptr ? std::nullopt : std::optional(inForce->count);
}

std::vector<std::pair<std::size_t, std::size_t>> overlaps(std::span<const Membership> memberships) {
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  for (std::size_t i = 0; i < memberships.size(); ++i)
    for (std::size_t j = i + 1; j < memberships.size(); ++j)
      if (memberships[i].individual == memberships[j].individual && shareADay(memberships[i], memberships[j]))
        pairs.emplace_back(i, j);
  return pairs;
}

}  // namespace tarebowl::animal
