// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/from_profile.h"
#include "core/store/group_reading.h"

namespace tarebowl::transfer {

/// What a problem must know of who eats, from what the collection knows of the group.
[[nodiscard]] diet::EaterFacts groupFacts(const store::KnownGroup& group);

/// The cautions that the house has written down.
[[nodiscard]] std::vector<animal::FoodCaution> houseCautions(const store::Collection& collection);

}  // namespace tarebowl::transfer
