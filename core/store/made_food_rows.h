// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_records.h"
#include "core/store/opening.h"

#include <string>
#include <vector>

/// The SQL of foods that are made from foods: cooked from one, or mixed from several. Inside guarded().
namespace tarebowl::store {

/// How the food is made, where it is made from others.
void loadMaking(Collection::Inner& inner, long long id, FoodRecord& record);
/// Refused where a food that it is made from is not there.
void insertMaking(Collection::Inner& inner, long long id, const FoodRecord& record);
void deleteMaking(Collection::Inner& inner, long long id);

/// The codes of the foods that a food is made from.
[[nodiscard]] std::vector<std::string> madeFrom(Collection::Inner& inner, const std::string& code);
/// The code of a food that is made from this one; empty where none is.
[[nodiscard]] std::string foodMadeFrom(Collection::Inner& inner, long long id);

}  // namespace tarebowl::store
