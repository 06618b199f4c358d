// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_reading.h"
#include "core/store/animal_verbs.h"
#include "core/store/mass_verbs.h"
#include "core/store/profile_reading.h"
#include "core/store/profile_verbs.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"

#include <functional>

/// Invented animals with something in every field.
namespace tarebowl::store {

[[nodiscard]] quantity::Date day(const char* iso);
[[nodiscard]] animal::Species lemurSpecies();
[[nodiscard]] animal::Individual lemur(const std::string& code);
[[nodiscard]] animal::Group lemurGroup(const std::string& code);
[[nodiscard]] MassRecord weighed(const std::string& individual, const char* iso, double kilograms);
/// Calcium between two bounds, a ratio, a share, a choice and an exclusion.
[[nodiscard]] animal::TargetProfile primateProfile();
[[nodiscard]] animal::TargetProfile bareProfile(const std::string& code);

/// A collection with a species, two animals (a and b) and two groups (family and pair).
class Herd {
 public:
  Herd();
  OwnFolder folder;
  Collection collection;
};

/// What the refused work was refused for; nothing may have been written.
[[nodiscard]] std::string refusal(const Collection& collection, const std::function<void()>& work);

}  // namespace tarebowl::store
