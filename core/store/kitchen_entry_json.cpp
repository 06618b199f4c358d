// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kitchen_entry_json.h"

#include "core/store/record_json.h"

#include <stdexcept>

namespace tarebowl::store {

using intake::Bowl;
using intake::BowlItem;
using quantity::Grams;

namespace {

std::string dumped(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Json jsonOf(const NotedValue& value) {
  Json json = Json::object();
  if (value.kind) json["kind"] = static_cast<int>(*value.kind);
  if (value.grams) json["g"] = value.grams->value();
  if (value.lost) json["lost_g"] = value.lost->value();
  return json;
}

std::optional<Grams> gramsIn(const Json& json, const char* name) {
  const auto place = json.find(name);
  return place == json.end() ? std::nullopt : std::optional(Grams(place->get<double>()));
}

NotedValue valueOf(const Json& json) {
  NotedValue value{.grams = gramsIn(json, "g"), .lost = gramsIn(json, "lost_g")};
  if (const auto place = json.find("kind"); place != json.end()) {
    const int kind = place->get<int>();
    if (kind < 0 || kind > static_cast<int>(intake::LeftoverKind::Stolen))
      throw std::out_of_range("no kind of leftover");
    value.kind = static_cast<intake::LeftoverKind>(kind);
  }
  return value;
}

Json jsonOf(const Bowl& bowl) {
  Json items = Json::array();
  for (const BowlItem& item : bowl.items)
    items.push_back(Json{{"item", item.item},
                         {"food", item.food},
                         {"g", item.planned.value()},
                         {"preparation", item.preparation}});
  return Json{{"group", bowl.key.group}, {"day", quantity::isoDate(bowl.key.day)},
              {"bowl", bowl.key.bowl},   {"meal", bowl.meal},
              {"label", bowl.label},     {"diet", bowl.diet},
              {"version", bowl.version}, {"animals", bowl.animals},
              {"items", items}};
}

Bowl bowlOf(const Json& json) {
  const auto day = quantity::parseDate(json.at("day").get<std::string>());
  if (!day) throw std::out_of_range("no day");
  Bowl bowl{.key = {json.at("group").get<std::string>(), *day, json.at("bowl").get<int>()},
            .meal = json.at("meal").get<std::string>(),
            .label = json.at("label").get<std::string>(),
            .diet = json.at("diet").get<std::string>(),
            .version = json.at("version").get<int>(),
            .animals = json.at("animals").get<int>()};
  for (const Json& item : json.at("items"))
    bowl.items.push_back({.item = item.at("item").get<int>(),
                          .food = item.at("food").get<std::string>(),
                          .planned = Grams(item.at("g").get<double>()),
                          .preparation = item.at("preparation").get<std::string>()});
  return bowl;
}

/// Nothing where the text is not what `read` looks for.
template <class Read>
auto readOrNothing(const std::string& text, Read read) -> std::optional<decltype(read(Json()))> {
  try {
    return read(Json::parse(text));
  } catch (const Json::exception&) {
    return std::nullopt;
  } catch (const std::out_of_range&) {
    return std::nullopt;
  }
}

}  // namespace

std::string bodyOf(const KitchenEntry& entry) {
  Json json{{"section", entry.section},
            {"noted", static_cast<int>(entry.noted)},
            {"item", entry.item},
            {"value", jsonOf(entry.value)}};
  if (!entry.reason.empty()) json["reason"] = entry.reason;
  if (entry.seen) json["seen"] = jsonOf(*entry.seen);
  json["bowl"] = jsonOf(entry.bowl);
  for (const Bowl& bowl : entry.beside) json["beside"].push_back(jsonOf(bowl));
  return dumped(json);
}

std::optional<KitchenEntry> entryOf(const std::string& body) {
  return readOrNothing(body, [](const Json& json) {
    const int noted = json.at("noted").get<int>();
    if (noted < 0 || noted > static_cast<int>(Noted::Remainder)) throw std::out_of_range("nothing to note");
    KitchenEntry entry{.section = json.at("section").get<std::string>(),
                       .bowl = bowlOf(json.at("bowl")),
                       .noted = static_cast<Noted>(noted),
                       .item = json.at("item").get<int>(),
                       .value = valueOf(json.at("value")),
                       .reason = json.value("reason", "")};
    if (const auto seen = json.find("seen"); seen != json.end()) entry.seen = valueOf(*seen);
    if (const auto beside = json.find("beside"); beside != json.end())
      for (const Json& bowl : *beside) entry.beside.push_back(bowlOf(bowl));
    return entry;
  });
}

std::string textOf(const SignedValue& value) {
  Json json = jsonOf(value.value);
  json["who"] = value.by.who;
  json["at"] = value.by.at;
  return dumped(json);
}

std::optional<SignedValue> signedValueOf(const std::string& text) {
  return readOrNothing(text, [](const Json& json) {
    return SignedValue{valueOf(json), {json.value("who", ""), json.value("at", "")}};
  });
}

}  // namespace tarebowl::store
