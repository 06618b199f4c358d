// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
#include "core/store/collection.h"

#include <filesystem>
#include <random>
#include <string>
#include <vector>

/// Years of a zoo's feeding, made up with a seed: groups of ten foods a day each, with weights, leftovers,
/// some swaps and a control pan a day in each house. Foods are analysed for water, energy, protein, calcium
/// and phosphorus. Who eats stands in zoo_herd.h, by what diets in zoo_diets.h.
namespace tarebowl::bench {

inline constexpr int kItems = 10;

/// TAREBOWL_FEEDING_DAYS and TAREBOWL_FEEDING_GROUPS, or ten years of 300 groups.
[[nodiscard]] int days();
/// Of these, the last ones, on which bowls were written down: TAREBOWL_FED_DAYS, or all. Few are enough to
/// see what herd and diets alone cost.
[[nodiscard]] int fedDays();
[[nodiscard]] int groups();
[[nodiscard]] double lines();

[[nodiscard]] std::string groupCode(int group);
/// The food that stands as this item, 1 … kItems, in the group's bowl.
[[nodiscard]] std::string foodOfItem(int group, int item);
/// Days are counted from the first one.
[[nodiscard]] quantity::Date dayAt(int number);
/// As the collection counts it.
[[nodiscard]] int storedDay(int number);

[[nodiscard]] std::vector<intake::Bowl> sheetOf(int day, std::mt19937& random);
/// Groups with their targets and foods, nobody in them and nothing fed yet.
[[nodiscard]] store::Collection unfedZoo(const std::filesystem::path& file);
/// Made where it is not there, and kept for the next run.
[[nodiscard]] const std::filesystem::path& fedZoo();

}  // namespace tarebowl::bench
