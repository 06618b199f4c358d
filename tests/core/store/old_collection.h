// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/migration.h"
#include "tests/core/store/own_folder.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::store {

[[nodiscard]] std::span<const Migration> upTo(int number);

/// A collection as a program of an older schema left it, with what `fill` puts into one of today's.
void makeOld(const std::filesystem::path& file, int schema, const std::function<void(Collection&)>& fill);

[[nodiscard]] std::vector<std::string> tablesOf(const Collection& collection);

/// Every table, index and trigger, as the file itself tells it.
[[nodiscard]] std::vector<std::string> schemaOf(const Collection& collection);

}  // namespace tarebowl::store
