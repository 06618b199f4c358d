// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/stock_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/food_codes.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/store/food_reading.h"
#include "core/store/reading.h"
#include "core/store/verbs.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct StockWords {
  std::string collection{};
  std::string outOfStock{};  ///< codes of foods parted by commas
  std::string backInStock{};
  bool table = false;
};

nlohmann::ordered_json stockJson(const food::Food& food) {
  return {{"code", food.code}, {"name", food.name}, {"in_stock", food.inStock}};
}

void setStock(store::Collection& collection, const std::string& codes, bool inStock, std::ostream& err) {
  std::vector<store::StoredFood> foods;
  for (const std::string& code : codesIn(codes)) {
    auto stored = store::findFood(collection, code);
    if (!stored) throw UsageError(collection.file().string() + ": there is no food " + code);
    foods.push_back(std::move(*stored));
  }
  for (store::StoredFood& stored : foods) {
    if (stored.record.food.inStock == inStock) continue;
    stored.record.food.inStock = inStock;
    store::editFood(collection, stored.id, stored.revision, stored.record, {whoIsThere(), nowInUtc()});
    err << stored.record.food.code << (inStock ? " is in stock\n" : " is out of stock\n");
  }
}

std::vector<store::StoredFood> everyFood(const store::Collection& collection) {
  const auto lines = store::listFoods(collection);
  const auto find = [&](const food::FoodLine& line) {
    return store::findFood(collection, store::FoodId{line.id});
  };
  for (const food::FoodLine& line : lines) store::askAhead(collection, [&] { return find(line); });
  std::vector<store::StoredFood> foods;
  for (const food::FoodLine& line : lines)
    if (auto stored = find(line)) foods.push_back(std::move(*stored));
  return foods;
}

int showStock(const StockWords& words, const Streams& streams) {
  const bool writes = !words.outOfStock.empty() || !words.backInStock.empty();
  store::Collection collection = writes ? openForWriting(words.collection) : openForReading(words.collection);
  setStock(collection, words.outOfStock, false, streams.err);
  setStock(collection, words.backInStock, true, streams.err);
  nlohmann::ordered_json json{{"format", "tarebowl-stock/1"}, {"foods", nlohmann::ordered_json::array()}};
  TextTable table({{"food"}, {"name"}, {"in stock"}});
  for (const store::StoredFood& stored : store::readTogether(collection, &everyFood)) {
    const food::Food& food = stored.record.food;
    json["foods"].push_back(stockJson(food));
    table.addRow({food.code, food.name, food.inStock ? "yes" : "no"});
  }
  streams.out << (words.table ? table.text() : toText(json));
  return kDone;
}

}  // namespace

void defineStock(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<StockWords>();
  CLI::App& command = *app.add_subcommand("stock", "Which foods are in the house");
  addCollectionFile(command, words->collection);
  command.add_option("--out", words->outOfStock,
                     "Codes of foods that are not in the house, parted by commas");
  command.add_option("--in", words->backInStock, "Codes of foods that are in the house again");
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showStock(*words, streams); });
}

}  // namespace tarebowl::app
