// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/problem_input.h"

#include "app/not_counted.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "core/diet/locked.h"
#include "core/exchange/problem_json.h"
#include "core/store/food_reading.h"

#include <filesystem>
#include <istream>
#include <memory>

namespace tarebowl::app {

namespace {

exchange::FoodSource foodSourceOf(const std::string& file) {
  if (file.empty()) return {};
  const auto collection = std::make_shared<const store::Collection>(openForReading(file));
  return [collection](const std::string& code) { return store::dietFood(*collection, code); };
}

diet::BalanceProblem dietProblemOf(const ProblemWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.file);
  const transfer::DeskDiet desk = deskOf(collection, words.diet, dayOf(words.day));
  tellNotices(desk, streams.err);
  tellNotGiven(desk.made.problem, streams.err);
  return diet::withLocked(desk.made.problem, desk.made.amounts, desk.made.locked);
}

}  // namespace

diet::BalanceProblem readProblemFile(const ProblemWords& words, const Streams& streams) {
  const exchange::FoodSource collection = foodSourceOf(words.collection);
  if (words.file == "-") return exchange::readProblem(streams.in, "standard input", collection);
  return exchange::readProblem(std::filesystem::path(words.file), collection);
}

diet::BalanceProblem problemOf(const ProblemWords& words, const Streams& streams) {
  return words.diet.diet.empty() ? readProblemFile(words, streams) : dietProblemOf(words, streams);
}

}  // namespace tarebowl::app
