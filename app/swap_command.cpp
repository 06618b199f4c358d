// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/swap_command.h"

#include "app/command_line.h"
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

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using diet::DietFood;
using diet::SwapRequest;

struct SwapWords {
  ProblemWords problem{};
  std::string without{};     ///< codes of missing foods, parted by commas
  std::string among{};       ///< codes of the only candidates; empty: all that is on hand
  std::string larder{};      ///< foods on hand, of a problem file
  double movePercent = 0.0;  ///< by which other lines may move
  bool eaten = false;        ///< by what the group ate of each food
  bool pairs = false;        ///< seek pairs though one food would do
  std::size_t most = 10;     ///< to show
  bool table = false;
};

std::vector<std::string> missingCodes(const SwapWords& words) {
  std::vector<std::string> codes = foodCodes(words.without);
  if (codes.empty()) throw UsageError("--without: expected codes of foods, found none");
  return codes;
}

/// Only the foods that were named, where any were.
void keepNamed(std::vector<DietFood>& foods, const SwapWords& words) {
  const std::vector<std::string> codes = foodCodes(words.among);
  if (codes.empty()) return;
  for (const std::string& code : codes)
    if (std::ranges::find(foods, code, &DietFood::id) == foods.end())
      throw UsageError(fmt::format("--among: there is no food {} on hand", code));
  std::erase_if(foods,
                [&](const DietFood& food) { return std::ranges::find(codes, food.id) == codes.end(); });
}

SwapRequest ofCollection(const SwapWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.problem.file);
  const quantity::Date day = dayOf(words.problem.day);
  const transfer::DeskDiet desk =
      fedDeskOf(collection, words.problem.diet, day,
                words.eaten ? transfer::CountedAs::Eaten : transfer::CountedAs::Offered);
  tellNotices(desk, streams.err);
  std::vector<DietFood> candidates =
      transfer::foodsOnHand(collection, desk.made.problem, {.eaters = transfer::eatersOf(desk, day)});
  keepNamed(candidates, words);
  const std::vector<std::string> missing = missingCodes(words);
  for (const std::string& code : missing)
    if (std::ranges::find(desk.made.places, code, &diet::PlaceInVersion::food) == desk.made.places.end())
      throw UsageError(fmt::format("--without: {} has no {} in version {}", words.problem.diet.diet, code,
                                   desk.version.record.version.number));
  auto request = transfer::swapRequestOn(desk, missing, std::move(candidates));
  if (!request)
    throw UsageError(fmt::format("--without: {} gives 0 g of {}", words.problem.diet.diet, words.without));
  request->eatenBefore = transfer::eatenBefore(collection, desk.diet.record.group, day);
  return std::move(*request);
}

SwapRequest ofProblemFile(const SwapWords& words, const Streams& streams) {
  SwapRequest request;
  request.problem = readProblemFile(words.problem, streams);
  if (!request.problem.reference)
    throw UsageError(
        fmt::format("{}: it has no \"reference\", the approved diet's grams; or name a diet of a "
                    "collection with --diet",
                    words.problem.file));
  if (words.larder.empty()) throw UsageError("--larder: expected the foods on hand (tarebowl-larder/1)");
  request.approved = *request.problem.reference;
  for (const std::string& code : missingCodes(words)) {
    const auto food = std::ranges::find(request.problem.foods, code, &DietFood::id);
    if (food == request.problem.foods.end())
      throw UsageError(fmt::format("--without: there is no food {} in {}", code, words.problem.file));
    request.missing.push_back(static_cast<std::size_t>(food - request.problem.foods.begin()));
  }
  request.candidates = exchange::readLarder(std::filesystem::path(words.larder)).foods;
  keepNamed(request.candidates, words);
  return request;
}

int rankSwaps(const SwapWords& words, const Streams& streams) {
  SwapRequest request =
      words.problem.diet.diet.empty() ? ofProblemFile(words, streams) : ofCollection(words, streams);
  if (words.among.empty()) diet::leaveOutMissing(request);
  request.move = words.movePercent / 100.0;
  diet::SwapOptions options;
  options.most = words.most;
  if (words.pairs) options.pairs = diet::SwapOptions::Pairs::Always;
  const diet::SwapRanking ranking = diet::rankSwaps(request, options);
  streams.out << (words.table ? swapTable(request, ranking, words.most)
                              : exchange::writeSwaps(request, ranking, words.most));
  return ranking.singles.empty() && ranking.pairs.empty() ? kImpossible : kDone;
}

}  // namespace

void defineSwap(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<SwapWords>();
  CLI::App& command =
      *app.add_subcommand("swap", "What to give instead of a food that is missing, and how many grams");
  command
      .add_option("FILE", words->problem.file,
                  "With --diet a collection; else a problem file whose \"reference\" is the approved diet")
      ->required();
  addFedDiet(command, words->problem.diet);
  addDay(command, words->problem.day);
  command.add_option("--without", words->without, "Codes of the missing foods, parted by commas")->required();
  command.add_option("--among", words->among, "Look only at these foods: codes parted by commas");
  command.add_option("--larder", words->larder, "With a problem file: the foods on hand (tarebowl-larder/1)")
      ->excludes("--diet");
  addCollection(command, words->problem.collection)->excludes("--diet");
  command
      .add_option("--move", words->movePercent,
                  "Let every other line move by so many percent of its grams (default: held)")
      ->check(CLI::Range(0.0, 100.0));
  command
      .add_flag("--eaten", words->eaten,
                "Keep what is eaten near the diet: by what the group ate of each food in the eight weeks "
                "before (default: what is offered)")
      ->needs("--diet");
  command.add_flag("--pairs", words->pairs, "Seek pairs of foods even where one food would do");
  command.add_option("--most", words->most, "How many swaps to show")->capture_default_str();
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return rankSwaps(*words, streams); });
}

}  // namespace tarebowl::app
