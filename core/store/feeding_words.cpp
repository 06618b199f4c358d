// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_words.h"

#include "core/store/food_rows.h"
#include "core/store/write.h"

#include <cmath>

namespace tarebowl::store {

namespace {

constexpr double kMilligramsPerGram = 1000.0;

}  // namespace

FeedingWords::FeedingWords(Collection::Inner& inner)
    : inner_(inner),
      find_(inner.connection, "SELECT id FROM feeding_word WHERE word = ?"),
      add_(inner.connection, "INSERT INTO feeding_word (id, word) VALUES (?, ?)"),
      read_(inner.connection, "SELECT id, word FROM feeding_word") {}

long long FeedingWords::numberOf(const std::string& word) {
  const auto [place, isNew] = numbers_.try_emplace(word, 0);
  if (!isNew) return place->second;
  find_.bind(1, word);
  if (const auto known = find_.runForNumber()) return place->second = *known;
  place->second = nextId(inner_.sql(), "feeding_word");
  add_.bind(1, place->second);
  add_.bind(2, word);
  add_.run();
  return place->second;
}

/// There are few, and whoever reads one reads many.
const std::string& FeedingWords::wordOf(long long number) {
  if (const auto known = words_.find(number); known != words_.end()) return known->second;
  while (read_.step()) words_.insert_or_assign(read_.number(0), read_.text(1));
  return words_[number];
}

void FeedingWords::ask() {
  (void)read_.step();
  read_.reset();
}

FedFoods::FedFoods(Collection::Inner& inner)
    : inner_(inner),
      findFood_(inner.connection, "SELECT id FROM food WHERE code = ?"),
      find_(inner.connection, "SELECT id FROM fed_food WHERE food_id = ?"),
      findGone_(inner.connection, "SELECT id FROM fed_food WHERE code = ? AND food_id IS NULL"),
      add_(inner.connection, "INSERT INTO fed_food (id, code, food_id) VALUES (?, ?, ?)"),
      read_(
          inner.connection,
          "SELECT fed_food.id, COALESCE(food.code, fed_food.code) FROM fed_food LEFT JOIN food ON food.id = "
          "fed_food.food_id") {}

long long FedFoods::numberOf(const std::string& code) {
  const auto [place, isNew] = numbers_.try_emplace(code, 0);
  if (!isNew) return place->second;
  findFood_.bind(1, code);
  const std::optional<long long> food = findFood_.runForNumber();
  PreparedStatement& find = food ? find_ : findGone_;
  if (food)
    find.bind(1, *food);
  else
    find.bind(1, code);
  if (const auto known = find.runForNumber()) return place->second = *known;
  place->second = nextId(inner_.sql(), "fed_food");
  add_.bind(1, place->second);
  add_.bind(2, code);
  add_.bind(3, food);
  add_.run();
  return place->second;
}

const std::string& FedFoods::codeOf(long long number) {
  if (const auto known = codes_.find(number); known != codes_.end()) return known->second;
  while (read_.step()) codes_.insert_or_assign(read_.number(0), read_.text(1));
  return codes_[number];
}

void FedFoods::ask() {
  (void)read_.step();
  read_.reset();
}

std::optional<long long> groupNumber(Collection::Inner& inner, const std::string& code) {
  PreparedStatement find(inner.connection, "SELECT id FROM animal_group WHERE code = ?");
  find.bind(1, code);
  return find.runForNumber();
}

long long milligrams(quantity::Grams mass) {
  return std::llround(mass.value() * kMilligramsPerGram);
}

quantity::Grams gramsOf(long long milligrams) {
  return quantity::Grams(static_cast<double>(milligrams) / kMilligramsPerGram);
}

}  // namespace tarebowl::store
