// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/collection_commands.h"

#include "app/author.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/food/food_index.h"
#include "core/store/food_reading.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct FoodsWords {
  std::string file{};
  std::string sought{};  ///< part of a food's name
  std::size_t most = 50;
  bool table = false;
};

std::string toJson(const std::vector<food::FoodLine>& foods, std::size_t all) {
  nlohmann::ordered_json json{{"format", "tarebowl-foods/1"}, {"foods_in_collection", all}};
  json["foods"] = nlohmann::ordered_json::array();
  for (const food::FoodLine& food : foods)
    json["foods"].push_back(
        {{"code", food.code}, {"name", food.name}, {"form", food.form}, {"group", food.group}});
  return toText(json);
}

std::string toTable(const std::vector<food::FoodLine>& foods, std::size_t all) {
  TextTable table({{"code"}, {"name"}, {"form"}, {"group"}});
  for (const food::FoodLine& food : foods) table.addRow({food.code, food.name, food.form, food.group});
  return table.text() + fmt::format("\n{} of {} foods in the collection\n", foods.size(), all);
}

int makeCollection(const std::string& file, const Streams& streams) {
  const store::Collection made = store::Collection::create(file, {whoIsThere(), nowInUtc()}, openingByHand());
  streams.out << fmt::format("{} is a new, empty collection\n", made.file().string());
  return kDone;
}

int listFoods(const FoodsWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.file);
  const food::FoodIndex index(store::listFoods(collection));
  const auto found = index.find(words.sought, words.most);
  streams.out << (words.table ? toTable(found, index.size()) : toJson(found, index.size()));
  return kDone;
}

void defineNew(CLI::App& app, Run& chosen) {
  const auto file = std::make_shared<std::string>();
  CLI::App& command = *app.add_subcommand("new", "Make a new, empty collection file");
  command.add_option("COLLECTION", *file, "The file to make, NAME.tarebowl")->required();
  runWhenNamed(command, chosen, [file](const Streams& streams) { return makeCollection(*file, streams); });
}

void defineFoods(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<FoodsWords>();
  CLI::App& command = *app.add_subcommand("foods", "List the foods of a collection, or find some by name");
  addCollectionFile(command, words->file);
  command.add_option("--find", words->sought, "Words of the name, form, group or code, in any order");
  command.add_option("--most", words->most, "How many to list")->capture_default_str();
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return listFoods(*words, streams); });
}

}  // namespace

void defineCollections(CLI::App& app, Run& chosen) {
  defineNew(app, chosen);
  defineFoods(app, chosen);
}

}  // namespace tarebowl::app
