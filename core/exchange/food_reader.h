// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/problem_json.h"

#include <string_view>

namespace tarebowl::exchange {

/// One entry of a problem's "foods": its names, limits and composition, or what a collection says of it.
/// Throws FormatError; whether the proximates allow an energy estimate is judged later, when the method is
/// known.
[[nodiscard]] diet::DietFood readFood(const JsonReader& reader, const FoodSource& collection);

/// A FAO/INFOODS tagname where the file states one; `reader` stands where it is stated.
[[nodiscard]] food::NutrientId readTagname(std::string_view tagname, const JsonReader& reader);

/// No bowl, larder or yearly need weighs more: anything above is a slip.
inline constexpr double kLargestMassGrams = 1e9;
[[nodiscard]] NumberRange massRange();

}  // namespace tarebowl::exchange
