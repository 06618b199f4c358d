// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace tarebowl::animal {

/// Animals that are fed together: one bowl, one diet. A colony whose animals are not known one by one has
/// counts instead of members.
struct GroupCount {
  quantity::Date from{};
  int count = 1;
  bool operator==(const GroupCount&) const = default;
};

struct Group {
  std::string code{};     ///< "lemurs-main"; unique in a collection
  std::string name{};     ///< "Red ruffed lemurs, family"
  std::string species{};  ///< Species::code
  std::string section{};  ///< where it is kept and whose keepers feed it: "Small Mammals"
  std::vector<GroupCount> counts{};
  std::string profile{};  ///< TargetProfile::code of what it is fed by; empty: not chosen yet
  std::string note{};
  bool invented = false;
  bool operator==(const Group&) const = default;
};

/// An individual is in a group from one day until, not including, another.
struct Membership {
  std::string group{};
  std::string individual{};
  quantity::Date from{};
  std::optional<quantity::Date> until{};
  bool operator==(const Membership&) const = default;
};

/// Members on a day, in the order given.
[[nodiscard]] std::vector<std::string> membersOn(std::span<const Membership> memberships,
                                                 const std::string& group, quantity::Date day);
/// How many animals share the bowl: members where there are any, otherwise the count in force; nothing where
/// neither is known.
[[nodiscard]] std::optional<int> headcountOn(const Group& group, std::span<const Membership> memberships,
                                             quantity::Date day);

/// Two stays of one animal that share a day; indices into `memberships`. An animal eats from one bowl.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> overlaps(
    std::span<const Membership> memberships);

}  // namespace tarebowl::animal
