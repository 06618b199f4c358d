// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/balance.h"
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// Whatever the bytes are: either one line that says what is wrong, or a problem that survives writing and can
// be judged.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try {
    const diet::BalanceProblem problem = exchange::parseProblem(text, "fuzz");
    if (!(exchange::parseProblem(exchange::writeProblem(problem), "written") == problem)) std::abort();
    diet::DietSolution judged;
    judged.grams = diet::referenceDiet(problem);
    judged.balance = diet::balance(problem, judged.grams);
    if (exchange::writeResult(problem, judged).empty()) std::abort();
  } catch (const exchange::FormatError& error) {
    if (std::string_view(error.what()).find('\n') != std::string_view::npos) std::abort();
  }
  return 0;
}
