// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/kitchen_commands.h"

#include "app/author.h"
#include "app/open_collection.h"
#include "app/text_table.h"
#include "app/written_file.h"
#include "core/exchange/prep_sheet_page.h"
#include "core/exchange/wording.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "core/transfer/kitchen_day.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <ostream>

namespace tarebowl::app {

namespace {

using Align = TextTable::Align;
using intake::PrepSheet;

/// The section that the command names; the only one where there is no other.
std::string sectionOf(const Command& command, const store::Collection& collection) {
  const auto sections = transfer::sectionsOf(collection);
  if (command.section.empty() && sections.size() == 1) return sections.front();
  if (std::ranges::find(sections, command.section) != sections.end()) return command.section;
  std::string names;
  for (const std::string& section : sections) names += (names.empty() ? "" : ", ") + section;
  throw UsageError(fmt::format("{}: --section must name one of its sections; it has {}",
                               collection.file().string(), names.empty() ? "none" : names));
}

void addAhead(std::string& text, const char* what, const std::vector<intake::KitchenTotal>& totals) {
  for (const intake::KitchenTotal& total : totals)
    text += fmt::format("{}: {}\n", what, exchange::aheadText(total));
}

std::string bowlsText(const PrepSheet& sheet, const intake::FoodLookup& foodOf) {
  std::string text;
  for (const intake::PrepBowl& bowl : sheet.bowls) {
    TextTable table({{"to weigh", Align::Right}, {"food"}, {"preparation"}, {"weighed", Align::Right}});
    for (const intake::BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      const intake::KitchenFood food = foodOf(item.food);
      const auto weighed = intake::entryThatCounts(item.weighings);
      table.addRow({exchange::portionText(item.planned, food), exchange::foodTitle(food), item.preparation,
                    weighed ? exchange::gramsText(weighed->actual, food.step) : "-"});
    }
    text += fmt::format(
        "{} (bowl {} of {}, {} animals{})\n{}\n", bowl.bowl.label, bowl.bowl.key.bowl, bowl.bowl.key.group,
        bowl.bowl.animals,
        bowl.phaseDay > 0 ? fmt::format(", phase-in day {} of {}", bowl.phaseDay, bowl.phaseDays) : "",
        table.text());
  }
  return text;
}

std::string prepText(const PrepSheet& sheet, const intake::FoodLookup& foodOf) {
  std::string text = fmt::format("{}, {}\n\n", sheet.section, quantity::isoDate(sheet.day));
  text += bowlsText(sheet, foodOf);
  TextTable totals({{"kitchen total", Align::Right}, {"food"}, {"raw, bought"}, {"bowls", Align::Right}});
  for (const intake::KitchenTotal& total : sheet.totals)
    totals.addRow({exchange::portionText(total.amount, total.food), exchange::foodTitle(total.food),
                   exchange::rawText(total), std::to_string(total.bowls)});
  text += totals.text() + '\n';
  addAhead(text, "out of the freezer for tomorrow", sheet.thawForTomorrow);
  addAhead(text, "feed well today, live food of tomorrow", sheet.gutLoadForTomorrow);
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl)
    text += fmt::format("no bowl for {}: {}\n", group.name, exchange::reasonText(group.why));
  for (const std::string& caution : sheet.cautions) text += "caution: " + caution + '\n';
  return text;
}

nlohmann::ordered_json stockJson(const food::Food& food) {
  return {{"code", food.code}, {"name", food.name}, {"in_stock", food.inStock}};
}

/// Codes parted by commas.
std::vector<std::string> codesIn(const std::string& text) {
  std::vector<std::string> codes;
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    if (end > begin) codes.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return codes;
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

}  // namespace

int prepare(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const PrepSheet sheet = transfer::readPrepSheet(collection, sectionOf(command, collection), dayOf(command));
  const intake::FoodLookup foodOf = transfer::kitchenFoods(collection);
  if (command.tableFile.empty()) {
    streams.out << (command.table ? prepText(sheet, foodOf) : exchange::prepSheetAsJson(sheet, foodOf));
    return kDone;
  }
  if (std::filesystem::path(command.tableFile).extension() != ".html")
    throw UsageError(command.tableFile + ": expected NAME.html (the window writes PDF)");
  writeWhole(command.tableFile,
             command.labels ? exchange::bowlLabelsAsHtml(sheet) : exchange::prepSheetAsHtml(sheet, foodOf));
  streams.out << fmt::format("{} of {} on {} is written to {}\n",
                             exchange::counted(sheet.bowls.size(), "bowl", "bowls"), sheet.section,
                             quantity::isoDate(sheet.day), command.tableFile);
  return kDone;
}

int showStock(const Command& command, const Streams& streams) {
  const bool writes = !command.outOfStock.empty() || !command.backInStock.empty();
  store::Collection collection =
      writes ? openForWriting(command.file.value()) : openForReading(command.file.value());
  setStock(collection, command.outOfStock, false, streams.err);
  setStock(collection, command.backInStock, true, streams.err);
  nlohmann::ordered_json json{{"format", "tarebowl-stock/1"}, {"foods", nlohmann::ordered_json::array()}};
  TextTable table({{"food"}, {"name"}, {"in stock"}});
  for (const food::FoodLine& line : store::listFoods(collection)) {
    const auto stored = store::findFood(collection, store::FoodId{line.id});
    if (!stored) continue;
    json["foods"].push_back(stockJson(stored->record.food));
    table.addRow({line.code, line.name, stored->record.food.inStock ? "yes" : "no"});
  }
  streams.out << (command.table
                      ? table.text()
                      : json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + '\n');
  return kDone;
}

int showTolerance(const Command& command, const Streams& streams) {
  const bool writes = command.ofStep || command.leastSteps || command.ofBowl || command.ofBody;
  store::Collection collection =
      writes ? openForWriting(command.file.value()) : openForReading(command.file.value());
  intake::ToleranceRule rule = store::toleranceRule(collection);
  rule.ofStep = command.ofStep.value_or(rule.ofStep);
  rule.leastSteps = command.leastSteps.value_or(rule.leastSteps);
  rule.ofBowl = command.ofBowl.value_or(rule.ofBowl);
  rule.ofBody = command.ofBody.value_or(rule.ofBody);
  if (writes) (void)store::setToleranceRule(collection, rule, {whoIsThere(), nowInUtc()});
  const nlohmann::ordered_json json{{"format", "tarebowl-tolerance/1"},
                                    {"of_step", rule.ofStep},
                                    {"least_steps", rule.leastSteps},
                                    {"of_bowl", rule.ofBowl},
                                    {"of_body", rule.ofBody}};
  streams.out << json.dump(2) << '\n';
  return kDone;
}

}  // namespace tarebowl::app
