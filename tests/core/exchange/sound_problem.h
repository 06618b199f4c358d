// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// A small sound problem that uses every key of the format; each test breaks it in one place.
/// The numbers are made up for the tests.
inline constexpr std::string_view kSoundProblem = R"({
  "format": "tarebowl-problem/1",
  "title": "A bowl for tests",
  "notes": "made up",
  "invented": true,
  "animal": { "name": "Tenrec trio", "count": 3, "body_mass_kg": 0.14 },
  "energy_method": "modified-atwater",
  "foods": [
    { "id": "kale-raw", "name": "Kale, raw", "group": "leafy vegetable", "form": "raw", "preparation": "shredded",
      "source": "made up for the test", "sources": { "CA": "another table" },
      "qualifiers": { "FIBC": "<=" }, "n_samples": { "CA": 4 },
      "per_100_g": { "WATER": 89.5, "PROCNT": 2.9, "FAT": 1.5, "ASH": 1.6, "FIBC": 1.2, "CA": 254, "P": 55 },
      "sd_per_100_g": { "CA": 31 },
      "min_g": 1, "max_g": 60, "scale_step_g": 0.5, "cost_per_kg": 3.2, "eaten_fraction": 0.9 },
    { "id": "egg-boiled", "name": "Egg, boiled", "group": "egg", "invented": false,
      "per_100_g": { "WATER": 74.6, "PROCNT": 12.6, "FAT": 10.6, "ASH": 1.1, "CA": 50, "P": 172, "VITD": 2.2, "VITE": 1.03 },
      "cost_per_kg": 6 },
    { "id": "apple-raw", "name": "Apple, raw", "group": "fruit",
      "per_100_g": { "WATER": 85.6, "PROCNT": 0.26, "FAT": 0.17, "ASH": 0.19, "CHOCDF": 13.8, "CA": 6 },
      "cost_per_kg": 2 }
  ],
  "targets": [
    { "id": "energy-day", "nutrient": "ENERC", "min": 20, "max": 30, "unit": "kcal", "basis": "day", "hard": true },
    { "id": "calcium", "nutrient": "CA", "min": 5, "max": 12, "unit": "g", "basis": "dry-matter", "weight": 2,
      "source": "house rule of the test", "provenance": "invented", "model_species": "cat" },
    { "id": "d3", "nutrient": "VITD", "max": 4000, "unit": "IU", "basis": "metabolic-mass" }
  ],
  "ratios": [{ "id": "ca-p", "of": "CA", "to": "P", "min": 1.2, "max": 2.1 }],
  "shares": [{ "id": "fruit-share", "group": "fruit", "max": 0.1, "basis": "as-fed" }],
  "choices": [{ "group": "leafy vegetable", "at_least": 1, "at_most": 1, "min_g_each": 5 }],
  "reference": { "kale-raw": 20, "egg-boiled": 7.5 },
  "objective": { "kind": "lowest-cost" },
  "confidence": 0.95,
  "whole_steps": false
})";

/// The sound problem with one piece of its text, which must occur exactly once, replaced.
[[nodiscard]] std::string soundProblemWith(std::string_view piece, std::string_view replacement);

}  // namespace tarebowl::exchange
