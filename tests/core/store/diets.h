// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/diet_reading.h"
#include "core/store/diet_verbs.h"
#include "tests/core/store/herd.h"

/// Invented diets with something in every field.
namespace tarebowl::store {

[[nodiscard]] diet::NamedDiet morningBowl();
/// Of the targets "primates 1" (herd.h).
[[nodiscard]] diet::DietVersion fullVersion();
[[nodiscard]] DecidedDiet decision();

/// A herd whose family has targets in force and a diet without versions yet.
class FedHerd : public Herd {
 public:
  FedHerd();
};

}  // namespace tarebowl::store
