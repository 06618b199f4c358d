// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_rows.h"

#include <string>

/// The state of a food or a sample as the change log keeps it. Revisions are not part of it: going back to a
/// state is an edit of its own.
namespace tarebowl::store {

[[nodiscard]] std::string toJson(const FoodRecord& record);
[[nodiscard]] FoodRecord foodFromJson(const std::string& json);

/// Components by tagname, so that values this program does not know survive too.
[[nodiscard]] std::string toJson(Collection::Inner& inner, const SampleRows& rows);
[[nodiscard]] SampleRows sampleFromJson(Collection::Inner& inner, const std::string& json);

}  // namespace tarebowl::store
