// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "core/exchange/text_file.h"

namespace tarebowl::exchange {

diet::BalanceProblem readProblem(std::istream& stream, const std::string& name,
                                 const FoodSource& collection) {
  return parseProblem(readText(stream, name), name, collection);
}

diet::BalanceProblem readProblem(const std::filesystem::path& file, const FoodSource& collection) {
  return parseProblem(readText(file), file.string(), collection);
}

}  // namespace tarebowl::exchange
