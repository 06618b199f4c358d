// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/problem_input.h"

#include "app/collection_commands.h"
#include "core/exchange/problem_json.h"

#include <filesystem>
#include <istream>

namespace tarebowl::app {

diet::BalanceProblem readProblemFile(const Command& command, const Streams& streams) {
  const std::string& file = command.file.value();
  const exchange::FoodSource collection = foodSourceOf(command);
  if (file == "-") return exchange::readProblem(streams.in, "standard input", collection);
  return exchange::readProblem(std::filesystem::path(file), collection);
}

}  // namespace tarebowl::app
