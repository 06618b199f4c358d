// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "core/exchange/rotation_json.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// One line that says what is wrong, or rules that a search keeps or says to be impossible: never a plan that
// failed its own checks.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl;
  static const diet::BalanceProblem kBase = exchange::parseProblem(
      R"({"format": "tarebowl-problem/1", "foods": [
        {"id": "kale", "group": "leaf", "per_100_g": {"WATER": 90, "CA": 200}, "max_g": 5},
        {"id": "endive", "group": "leaf", "per_100_g": {"WATER": 94, "CA": 50}, "max_g": 5}],
      "targets": [{"id": "ca", "nutrient": "CA", "min": 4, "unit": "mg", "basis": "day"}]})",
      "base");
  try {
    const exchange::RotationRulesFile file = exchange::parseRotationRules(
        {reinterpret_cast<const char*>(data), size}, "fuzz", kBase, {.days = 3, .from = {}});
    diet::RotationOptions options;
    options.rounds = 1;
    options.nodes = 200;
    const diet::RotationPlan plan = diet::rotate({kBase, file.rules}, options);
    if (plan.status == diet::RotationStatus::Failed) std::abort();
  } catch (const exchange::FormatError& error) {
    if (std::string_view(error.what()).find('\n') != std::string_view::npos) std::abort();
  }
  return 0;
}
