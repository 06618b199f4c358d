// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/larder.h"

#include <filesystem>
#include <string_view>
#include <vector>

namespace tarebowl::ui {

/// The foods of the invented sample: those of its diets with their sources, and the invented reports of its
/// own laboratory (laboratory.csv). Reads files: for a worker. Throws std::exception where one cannot be
/// read.
[[nodiscard]] std::vector<FoodPage> sampleFoods(const std::filesystem::path& folder);

}  // namespace tarebowl::ui
