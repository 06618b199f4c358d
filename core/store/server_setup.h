// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

/// What whoever sets up a collection on a server does there; Collection::create makes it. Every call throws
/// StoreError.
namespace tarebowl::store {

/// What somebody is to a collection on a server. server/rights.sql says what each may do; the database holds
/// to it whatever program a person uses.
inline constexpr std::array<std::string_view, 5> kServerRoles{"reader", "keeper", "vet", "nutritionist",
                                                              "curator"};

/// Raises an older collection to this program's schema while nobody writes, and says anew what each role may
/// do; false where there was nothing to raise.
bool upgradeServer(const std::filesystem::path& address, const OpenOptions& options);

/// Lets a person in, as one of kServerRoles: somebody whom the server knows already, or, with a password,
/// somebody new. The password goes to the server as a hash.
void letIn(const std::filesystem::path& address, const OpenOptions& options, const std::string& person,
           std::string_view role, const std::optional<std::string>& newPassword);

/// Whether the server knows a person of this name.
[[nodiscard]] bool isKnown(const std::filesystem::path& address, const OpenOptions& options,
                           const std::string& person);

}  // namespace tarebowl::store
