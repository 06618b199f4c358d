// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/profile_reading.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

/// The versions of a profile and those that they rest on, read in one question. It is used while the
/// collection lives. Every call throws StoreError.
class ProfileLineage {
 public:
  ProfileLineage(const Collection& collection, std::string code);

  /// Of the profile itself, in their order.
  [[nodiscard]] std::vector<StoredProfile> versions() const;
  /// As profileInForce.
  [[nodiscard]] std::optional<StoredProfile> inForce(quantity::Date day) const;
  [[nodiscard]] std::optional<StoredProfile> find(const animal::ProfileReference& reference) const;
  /// Others than these are asked for one by one.
  [[nodiscard]] animal::ProfileLookup lookup() const;

 private:
  const Collection& collection_;
  std::string code_;
  std::shared_ptr<const std::vector<StoredProfile>> line_;
};

}  // namespace tarebowl::store
