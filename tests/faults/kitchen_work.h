// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>

/// A kitchen's writing, day after day, in steps that are numbered 0, 1, 2 …: the sheet of a day is opened,
/// all of its foods are weighed in, all leftovers noted, and the draft of the diet is edited. Each step is
/// one write, and is there as a whole or not at all.
namespace tarebowl::faults {

/// A new collection with a group, its targets and a draft of its diet; nothing is fed yet.
void makeKitchen(const std::filesystem::path& file);

/// Throws StoreError.
void writeStep(store::Collection& collection, int step);

enum class Found { Nothing, Half, Whole };
[[nodiscard]] Found findStep(const store::Collection& collection, int step);

}  // namespace tarebowl::faults
