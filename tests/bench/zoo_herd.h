// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <string>

/// Who lives in the zoo of fed_zoo.h, made up with a seed: species with their targets, about five animals a
/// group that are weighed every month and scored every year, and what keepers saw of each group.
namespace tarebowl::bench {

[[nodiscard]] std::string speciesOfGroup(int group);
/// The targets of its species, in the version that is in force.
[[nodiscard]] std::string profileOfGroup(int group);
/// Who share its bowl.
[[nodiscard]] int animalsOfGroup(int group);

/// Species and their targets; before the groups.
void addKinds(store::Collection& collection);
/// Animals from the first day on with their masses, scores and signs up to the last one; after the groups.
void addHerd(store::Collection& collection);

}  // namespace tarebowl::bench
