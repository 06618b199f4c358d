// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/swap_command.h"

#include "app/food_codes.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/problem_input.h"
#include "app/swap_text.h"
#include "core/diet/solve.h"
#include "core/exchange/larder_json.h"
#include "core/exchange/swap_json.h"
#include "core/transfer/eaten_before.h"
#include "core/transfer/swap_on_desk.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <ostream>

namespace tarebowl::app {

namespace {

using diet::DietFood;
using diet::SwapRequest;

std::vector<std::string> missingCodes(const Command& command) {
  std::vector<std::string> codes = foodCodes(command.without);
  if (codes.empty()) throw UsageError("--without: expected codes of foods, found none");
  return codes;
}

/// Only the foods that were named, where any were.
void keepNamed(std::vector<DietFood>& foods, const Command& command) {
  const std::vector<std::string> codes = foodCodes(command.among);
  if (codes.empty()) return;
  for (const std::string& code : codes)
    if (std::ranges::find(foods, code, &DietFood::id) == foods.end())
      throw UsageError(fmt::format("--among: there is no food {} on hand", code));
  std::erase_if(foods,
                [&](const DietFood& food) { return std::ranges::find(codes, food.id) == codes.end(); });
}

SwapRequest ofCollection(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  int number = command.version;
  if (number == 0)
    if (const auto fed = store::fedOn(collection, command.diet, dayOf(command)))
      number = fed->record.version.number;
  const transfer::DeskDiet desk = deskOf(command, collection, number);
  tellNotices(desk, streams.err);
  std::vector<DietFood> candidates = transfer::foodsOnHand(collection, desk.made.problem);
  keepNamed(candidates, command);
  const std::vector<std::string> missing = missingCodes(command);
  for (const std::string& code : missing)
    if (std::ranges::find(desk.made.places, code, &diet::PlaceInVersion::food) == desk.made.places.end())
      throw UsageError(fmt::format("--without: {} has no {} in version {}", command.diet, code,
                                   desk.version.record.version.number));
  auto request = transfer::swapRequestOn(desk, missing, std::move(candidates));
  if (!request) throw UsageError(fmt::format("--without: {} gives 0 g of {}", command.diet, command.without));
  request->eatenBefore = transfer::eatenBefore(collection, desk.diet.record.group, dayOf(command));
  return std::move(*request);
}

SwapRequest ofProblemFile(const Command& command, const Streams& streams) {
  SwapRequest request;
  request.problem = readProblemFile(command, streams);
  if (!request.problem.reference)
    throw UsageError(
        fmt::format("{}: it has no \"reference\", the approved diet's grams; or name a diet of a "
                    "collection with --diet",
                    command.file.value()));
  if (!command.larder) throw UsageError("--larder: expected the foods on hand (tarebowl-larder/1)");
  request.approved = *request.problem.reference;
  for (const std::string& code : missingCodes(command)) {
    const auto food = std::ranges::find(request.problem.foods, code, &DietFood::id);
    if (food == request.problem.foods.end())
      throw UsageError(fmt::format("--without: there is no food {} in {}", code, command.file.value()));
    request.missing.push_back(static_cast<std::size_t>(food - request.problem.foods.begin()));
  }
  request.candidates = exchange::readLarder(std::filesystem::path(*command.larder)).foods;
  keepNamed(request.candidates, command);
  return request;
}

}  // namespace

int rankSwaps(const Command& command, const Streams& streams) {
  SwapRequest request =
      command.diet.empty() ? ofProblemFile(command, streams) : ofCollection(command, streams);
  if (command.among.empty()) diet::leaveOutMissing(request);
  request.move = command.move;
  diet::SwapOptions options;
  options.most = command.most;
  if (command.pairs) options.pairs = diet::SwapOptions::Pairs::Always;
  const diet::SwapRanking ranking = diet::rankSwaps(request, options);
  streams.out << (command.table ? swapTable(request, ranking, command.most)
                                : exchange::writeSwaps(request, ranking, command.most));
  return ranking.singles.empty() && ranking.pairs.empty() ? kImpossible : kDone;
}

}  // namespace tarebowl::app
