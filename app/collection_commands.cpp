// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/collection_commands.h"

#include "app/author.h"
#include "app/open_collection.h"
#include "app/text_table.h"
#include "core/food/food_index.h"
#include "core/store/food_reading.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

std::string toJson(const std::vector<food::FoodLine>& foods, std::size_t all) {
  nlohmann::ordered_json json{{"format", "tarebowl-foods/1"}, {"foods_in_collection", all}};
  json["foods"] = nlohmann::ordered_json::array();
  for (const food::FoodLine& food : foods)
    json["foods"].push_back(
        {{"code", food.code}, {"name", food.name}, {"form", food.form}, {"group", food.group}});
  return json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + '\n';
}

std::string toTable(const std::vector<food::FoodLine>& foods, std::size_t all) {
  TextTable table({{"code"}, {"name"}, {"form"}, {"group"}});
  for (const food::FoodLine& food : foods) table.addRow({food.code, food.name, food.form, food.group});
  return table.text() + fmt::format("\n{} of {} foods in the collection\n", foods.size(), all);
}

}  // namespace

exchange::FoodSource foodSourceOf(const Command& command) {
  if (!command.collection) return {};
  const auto collection = std::make_shared<const store::Collection>(openForReading(*command.collection));
  return [collection](const std::string& code) { return store::dietFood(*collection, code); };
}

int makeCollection(const Command& command, const Streams& streams) {
  const store::Collection made = store::Collection::create(command.file.value(), {whoIsThere(), nowInUtc()});
  streams.out << fmt::format("{} is a new, empty collection\n", made.file().string());
  return kDone;
}

int listFoods(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const food::FoodIndex index(store::listFoods(collection));
  const auto found = index.find(command.sought, command.most);
  streams.out << (command.table ? toTable(found, index.size()) : toJson(found, index.size()));
  return kDone;
}

}  // namespace tarebowl::app
