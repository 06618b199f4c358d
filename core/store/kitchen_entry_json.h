// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/kitchen_entry.h"

#include <optional>
#include <string>

/// An entry that waits, as it stands in a desk's file.
namespace tarebowl::store {

/// All but its number and its author, which have columns of their own.
[[nodiscard]] std::string bodyOf(const KitchenEntry& entry);
/// Nothing where the text is no such body.
[[nodiscard]] std::optional<KitchenEntry> entryOf(const std::string& body);

[[nodiscard]] std::string textOf(const SignedValue& value);
[[nodiscard]] std::optional<SignedValue> signedValueOf(const std::string& text);

}  // namespace tarebowl::store
