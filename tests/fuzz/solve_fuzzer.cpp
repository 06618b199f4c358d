// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// Every problem that can be read gets an answer that passed its own checks, or a word why there is none.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try {
    const diet::BalanceProblem problem = exchange::parseProblem(text, "fuzz");
    const diet::DietSolution solution =
        diet::solve(problem, {.deadline = std::chrono::milliseconds(200), .stop = {}});
    if (exchange::writeResult(problem, solution).empty()) std::abort();
  } catch (const exchange::FormatError&) {
  }
  return 0;
}
