// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_reader.h"
#include "core/exchange/food_reader.h"
#include "core/exchange/json_document.h"
#include "core/exchange/rotation_days.h"
#include "core/exchange/rotation_json.h"
#include "core/exchange/text_file.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <set>

namespace tarebowl::exchange {

namespace {

using diet::RotationRules;
using quantity::Grams;

constexpr int kDaysWhereNotSaid = 7;
constexpr int kMostOfAnything = 100'000;
constexpr std::array<std::string_view, 17> kRulesKeys{
    "format", "title",  "days",      "from",  "structure", "daily_zones", "period_zones", "often", "variety",
    "off",    "season", "delivered", "stock", "portions",  "kitchen",     "purchase",     "locked"};
constexpr std::array<std::string_view, 7> kStructureKeys{"id",      "group",      "foods", "at_least",
                                                         "at_most", "min_g_each", "days"};
constexpr std::array<std::string_view, 2> kZonesKeys{"widen", "of"};
constexpr std::array<std::string_view, 2> kWidthKeys{"id", "widen"};
constexpr std::array<std::string_view, 5> kOftenKeys{"group", "foods", "longest_run", "least_days",
                                                     "most_days"};
constexpr std::array<std::string_view, 4> kVarietyKeys{"group", "foods", "wanted", "weight"};
constexpr std::array<std::string_view, 3> kOffKeys{"group", "foods", "days"};
constexpr std::array<std::string_view, 4> kSeasonKeys{"group", "foods", "from", "to"};
constexpr std::array<std::string_view, 4> kDeliveryKeys{"group", "foods", "on", "keeps_days"};
constexpr std::array<std::string_view, 4> kStockKeys{"food", "most_g", "use_up_g", "by"};
constexpr std::array<std::string_view, 4> kPortionKeys{"group", "foods", "min_g", "max_g"};
constexpr std::array<std::string_view, 2> kKitchenKeys{"most_foods", "at_hand"};
constexpr std::array<std::string_view, 2> kAtHandKeys{"day", "foods"};
constexpr std::array<std::string_view, 4> kPurchaseKeys{"group", "foods", "edible_fraction",
                                                        "waste_fraction"};
constexpr std::array<std::string_view, 3> kLockedKeys{"day", "food", "g"};

class RulesReader {
 public:
  RulesReader(const diet::BalanceProblem& base, RotationDays days) : base_(base), days_(days) {}

  RotationRules read(const JsonReader& root) const {
    RotationRules rules;
    rules.days = days_.count();
    const auto each = [](auto member) { return [member](const JsonReader& entry) { return member(entry); }; };
    rules.structure = listOf(root, "structure", each([&](const auto& e) { return structure(e); }));
    if (const auto zones = root.find("daily_zones")) rules.daily = zonesOf(*zones, rules.daily.widen);
    if (const auto zones = root.find("period_zones")) rules.period = zonesOf(*zones, rules.period.widen);
    rules.frequency = listOf(root, "often", each([&](const auto& e) { return often(e); }));
    rules.variety = listOf(root, "variety", each([&](const auto& e) { return variety(e); }));
    rules.off = listOf(root, "off", each([&](const auto& e) { return off(e); }));
    for (const JsonReader& entry : entriesOf(root, "season")) rules.off.push_back(season(entry));
    for (const JsonReader& entry : entriesOf(root, "delivered")) rules.off.push_back(delivered(entry));
    rules.stock = listOf(root, "stock", each([&](const auto& e) { return stock(e); }));
    rules.portions = listOf(root, "portions", each([&](const auto& e) { return portion(e); }));
    if (const auto kitchen = root.find("kitchen")) rules.kitchen = kitchenOf(*kitchen);
    rules.purchase = listOf(root, "purchase", each([&](const auto& e) { return purchase(e); }));
    rules.locked = listOf(root, "locked", each([&](const auto& e) { return locked(e); }));
    return rules;
  }

 private:
  [[nodiscard]] std::string food(const JsonReader& reader) const {
    std::string id = reader.nonEmptyText();
    const bool isThere = std::ranges::find(base_.foods, id, &diet::DietFood::id) != base_.foods.end();
    if (!isThere) reader.refuse("the id of a food of the problem");
    return id;
  }
  [[nodiscard]] std::vector<std::string> foods(const JsonReader& reader) const {
    std::vector<std::string> ids;
    for (const JsonReader& entry : reader.elements()) ids.push_back(food(entry));
    return ids;
  }
  [[nodiscard]] diet::FoodSelection selection(const JsonReader& reader) const {
    diet::FoodSelection selection;
    if (const auto group = reader.find("group")) {
      selection.group = group->nonEmptyText();
      const bool isThere =
          std::ranges::find(base_.foods, selection.group, &diet::DietFood::group) != base_.foods.end();
      if (!isThere) group->refuse("a group that a food of the problem has");
    }
    if (const auto list = reader.find("foods")) {
      selection.foods = foods(*list);
      if (selection.foods.empty()) list->refuse("at least one food");
    }
    return selection;
  }
  static std::optional<Grams> grams(const JsonReader& reader, const char* key) {
    const auto number = numberOf(reader, key, massRange());
    return number ? std::optional(Grams(*number)) : std::nullopt;
  }
  static std::optional<int> count(const JsonReader& reader, const char* key, int least, int most) {
    const auto found = reader.find(key);
    return found ? std::optional(found->wholeNumber(least, most)) : std::nullopt;
  }

  [[nodiscard]] diet::DayStructure structure(const JsonReader& reader) const {
    reader.refuseSlips(kStructureKeys);
    diet::DayStructure rule{.id = {}, .of = selection(reader), .atMost = {}, .days = {}};
    if (rule.of.isAll()) reader.complain("group or foods, found neither");
    rule.id = textOf(reader, "id");
    if (rule.id.empty()) rule.id = rule.of.group.empty() ? rule.of.foods.front() : rule.of.group;
    rule.atLeast = count(reader, "at_least", 0, kMostOfAnything).value_or(0);
    rule.atMost = count(reader, "at_most", rule.atLeast, kMostOfAnything);
    rule.minEach = grams(reader, "min_g_each").value_or(Grams(0));
    if (const auto days = reader.find("days")) rule.days = days_.list(*days);
    return rule;
  }

  [[nodiscard]] diet::Zones zonesOf(const JsonReader& reader, double otherwise) const {
    reader.refuseSlips(kZonesKeys);
    diet::Zones zones;
    zones.widen = numberOf(reader, "widen", {}).value_or(otherwise);
    zones.of = listOf(reader, "of", [&](const JsonReader& entry) {
      entry.refuseSlips(kWidthKeys);
      diet::ZoneWidth width{.target = entry.member("id").nonEmptyText(), .widen = std::nullopt};
      if (!isRule(width.target))
        entry.member("id").refuse("the id of a target, ratio or share of the problem");
      const JsonReader widen = entry.member("widen");
      if (!widen.isNull())
        width.widen = widen.number({.inWords = "a number of 0 or more, or null for no zone"});
      return width;
    });
    return zones;
  }
  [[nodiscard]] bool isRule(const std::string& id) const {
    const auto has = [&](const auto& rules) {
      return std::ranges::any_of(rules, [&](const auto& rule) { return rule.id == id; });
    };
    return has(base_.targets) || has(base_.ratios) || has(base_.shares);
  }

  [[nodiscard]] diet::FoodFrequency often(const JsonReader& reader) const {
    reader.refuseSlips(kOftenKeys);
    diet::FoodFrequency rule;
    rule.of = selection(reader);
    rule.longestRun = count(reader, "longest_run", 1, kMostRotationDays);
    rule.leastDays = count(reader, "least_days", 0, days_.count());
    rule.mostDays = count(reader, "most_days", rule.leastDays.value_or(0), days_.count());
    return rule;
  }
  [[nodiscard]] diet::VarietyWish variety(const JsonReader& reader) const {
    reader.refuseSlips(kVarietyKeys);
    diet::VarietyWish wish;
    wish.of = selection(reader);
    wish.wanted = reader.member("wanted").wholeNumber(1, kMostOfAnything);
    if (const auto weight = numberOf(reader, "weight", {})) wish.weight = *weight;
    return wish;
  }
  [[nodiscard]] diet::DaysOff off(const JsonReader& reader) const {
    reader.refuseSlips(kOffKeys);
    return {.of = selection(reader), .days = days_.list(reader.member("days"))};
  }
  [[nodiscard]] diet::DaysOff season(const JsonReader& reader) const {
    reader.refuseSlips(kSeasonKeys);
    const JsonReader to = reader.member("to");
    const quantity::Date first = dateOf(reader.member("from"));
    const quantity::Date last = dateOf(to);
    if (last < first) to.refuse("a day that is not before \"from\"");
    return {.of = selection(reader), .days = days_.outside(first, last, reader.member("from"))};
  }
  /// There to be fed on the day of a delivery and so many days after it.
  [[nodiscard]] diet::DaysOff delivered(const JsonReader& reader) const {
    reader.refuseSlips(kDeliveryKeys);
    const diet::DayList on = days_.list(reader.member("on"));
    const int keeps = count(reader, "keeps_days", 0, kMostRotationDays).value_or(0);
    diet::DaysOff off{.of = selection(reader), .days = {}};
    for (int day = 0; day < days_.count(); ++day) {
      const bool isThere =
          std::ranges::any_of(on, [&](int delivery) { return delivery <= day && day <= delivery + keeps; });
      if (!isThere) off.days.push_back(day);
    }
    return off;
  }
  [[nodiscard]] diet::Stock stock(const JsonReader& reader) const {
    reader.refuseSlips(kStockKeys);
    diet::Stock stock{.food = food(reader.member("food")), .most = {}, .useUp = {}};
    stock.most = grams(reader, "most_g");
    stock.useUp = grams(reader, "use_up_g");
    const auto by = reader.find("by");
    stock.by = by ? days_.day(*by) : days_.count() - 1;
    return stock;
  }
  [[nodiscard]] diet::Portion portion(const JsonReader& reader) const {
    reader.refuseSlips(kPortionKeys);
    diet::Portion portion{.of = selection(reader), .max = {}};
    portion.min = grams(reader, "min_g").value_or(Grams(0));
    portion.max = grams(reader, "max_g");
    if (portion.max && *portion.max < portion.min) reader.member("max_g").refuse("at least min_g");
    return portion;
  }
  [[nodiscard]] diet::KitchenRule kitchenOf(const JsonReader& reader) const {
    reader.refuseSlips(kKitchenKeys);
    diet::KitchenRule rule;
    rule.mostFoods = count(reader, "most_foods", 1, kMostOfAnything);
    rule.atHand = listOf(reader, "at_hand", [&](const JsonReader& entry) {
      entry.refuseSlips(kAtHandKeys);
      return diet::KitchenRule::AtHand{days_.day(entry.member("day")), entry.member("foods").texts()};
    });
    return rule;
  }
  [[nodiscard]] diet::PurchaseLoss purchase(const JsonReader& reader) const {
    reader.refuseSlips(kPurchaseKeys);
    diet::PurchaseLoss loss;
    loss.of = selection(reader);
    loss.edible = numberOf(reader, "edible_fraction",
                           {.most = 1.0, .leastIncluded = false, .inWords = "a number above 0, at most 1"})
                      .value_or(1.0);
    loss.waste = numberOf(reader, "waste_fraction",
                          {.most = 1.0, .mostIncluded = false, .inWords = "a number from 0 to less than 1"})
                     .value_or(0.0);
    return loss;
  }
  [[nodiscard]] diet::LockedCell locked(const JsonReader& reader) const {
    reader.refuseSlips(kLockedKeys);
    return {.day = days_.day(reader.member("day")),
            .food = food(reader.member("food")),
            .grams = Grams(reader.member("g").number(massRange()))};
  }

  const diet::BalanceProblem& base_;
  RotationDays days_;
};

diet::Diet dietOf(const JsonReader& reader, const diet::BalanceProblem& base) {
  diet::Diet diet(base.foods.size(), Grams(0));
  for (const auto& [id, amount] : reader.members()) {
    const auto food = std::ranges::find(base.foods, id, &diet::DietFood::id);
    if (food == base.foods.end())
      amount.complain("the id of a food of the problem; add what was fed instead to its foods");
    diet[static_cast<std::size_t>(food - base.foods.begin())] = Grams(amount.number(massRange()));
  }
  return diet;
}

/// What was left is what was fed and not eaten; foods that are not named there were eaten whole.
std::optional<diet::Diet> eatenOf(const JsonReader& day, const diet::BalanceProblem& base,
                                  const diet::Diet& fed) {
  const auto eaten = day.find("eaten");
  if (!eaten) return std::nullopt;
  diet::Diet diet = dietOf(*eaten, base);
  for (std::size_t food = 0; food < fed.size(); ++food)
    if (!eaten->find(base.foods[food].id)) diet[food] = fed[food] * base.foods[food].eatenFraction;
  return diet;
}

}  // namespace

RotationRulesFile parseRotationRules(std::string_view text, const std::string& fileName,
                                     const diet::BalanceProblem& base, const RotationPeriod& asked) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader root(document, fileName);
  root.refuseSlips(kRulesKeys);
  const JsonReader format = root.member("format");
  if (format.text() != kRotationRulesFormat) format.refuse(inQuotes(kRotationRulesFormat));
  const auto stated = root.find("days");
  int days = stated ? stated->wholeNumber(1, kMostRotationDays) : kDaysWhereNotSaid;
  if (asked.days) days = *asked.days;
  const std::optional<quantity::Date> from = asked.from ? asked.from : dateOf(root, "from");
  return {RulesReader(base, RotationDays(days, from)).read(root), from};
}

RotationRulesFile readRotationRules(const std::filesystem::path& file, const diet::BalanceProblem& base,
                                    const RotationPeriod& asked) {
  return parseRotationRules(readText(file), file.string(), base, asked);
}

std::vector<diet::FedDay> readFedDays(const std::filesystem::path& file, const diet::BalanceProblem& base,
                                      const RotationPeriod& period, std::optional<int> before) {
  const std::string name = file.string();
  const nlohmann::json document = parseDocument(readText(file), name);
  const JsonReader root(document, name);
  const RotationDays days(period.days.value_or(kDaysWhereNotSaid), period.from);
  std::vector<diet::FedDay> fed;
  std::set<int> seen;
  if (!root.find("days")) root.refuseMissing("days", "a list of days with day and grams");
  for (const JsonReader& entry : entriesOf(root, "days")) {
    const int day = days.day(entry.member("day"));
    if (!seen.insert(day).second) entry.member("day").refuse("each day once");
    if (before && day >= *before) continue;
    diet::FedDay over{.day = day, .fed = dietOf(entry.member("grams"), base), .eaten = {}};
    over.eaten = eatenOf(entry, base, over.fed);
    fed.push_back(std::move(over));
  }
  return fed;
}

}  // namespace tarebowl::exchange
