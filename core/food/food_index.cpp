// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/food_index.h"

#include "core/food/folding.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <tuple>

namespace tarebowl::food {

namespace {

// How far a match is from what was meant.
constexpr int kBeginsName = 0;
constexpr int kBeginsWord = 1;
constexpr int kInsideName = 3;
constexpr int kBeginsWordElsewhere = 6;
constexpr int kInsideElsewhere = 8;

/// Folded words, each after one space.
std::string spaced(const std::string& text) {
  std::string result;
  for (const std::string& word : wordsOf(folded(text))) result += ' ' + word;
  return result;
}

/// word: with a space before it.
std::optional<int> distance(const std::string& word, const std::string& name, const std::string& elsewhere) {
  const std::string_view bare = std::string_view(word).substr(1);
  if (name.find(bare) != std::string::npos) {
    const auto place = name.find(word);
    if (place == std::string::npos) return kInsideName;
    return place == 0 ? kBeginsName : kBeginsWord;
  }
  if (elsewhere.find(word) != std::string::npos) return kBeginsWordElsewhere;
  if (elsewhere.find(bare) != std::string::npos) return kInsideElsewhere;
  return std::nullopt;
}

struct Hit {
  int distance;
  std::size_t length;
  std::size_t place;  // alphabetical
  // clang-tidy 14 takes the comparison's 0 for a pointer.
  // NOLINTNEXTLINE(modernize-use-nullptr)
  auto operator<=>(const Hit&) const = default;
};

std::vector<std::string> spacedWords(std::string_view text) {
  std::vector<std::string> words = wordsOf(folded(text));
  for (std::string& word : words) word.insert(word.begin(), ' ');
  return words;
}

}  // namespace

FoodIndex::FoodIndex(std::vector<FoodLine> foods) {
  std::vector<std::string> names;
  names.reserve(foods.size());
  for (const FoodLine& food : foods) names.push_back(spaced(food.name));
  std::vector<std::size_t> order(foods.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::sort(order, [&](std::size_t a, std::size_t b) {
    return std::tie(names[a], foods[a].name, foods[a].form, foods[a].id) <
           std::tie(names[b], foods[b].name, foods[b].form, foods[b].id);
  });
  for (const std::size_t i : order) {
    elsewhere_.push_back(spaced(foods[i].form + ' ' + foods[i].group + ' ' + foods[i].code));
    names_.push_back(std::move(names[i]));
    foods_.push_back(std::move(foods[i]));
  }
}

std::vector<FoodLine> FoodIndex::find(std::string_view text, std::size_t most) const {
  const std::vector<std::string> words = spacedWords(text);
  std::vector<Hit> hits;
  for (std::size_t i = 0; i < foods_.size(); ++i) {
    int total = 0;
    const bool all = std::ranges::all_of(words, [&](const std::string& word) {
      const auto away = distance(word, names_[i], elsewhere_[i]);
      total += away.value_or(0);
      return away.has_value();
    });
    if (all) hits.push_back({total, words.empty() ? 0 : names_[i].size(), i});
  }
  const auto count = static_cast<std::ptrdiff_t>(std::min(most, hits.size()));
  std::ranges::partial_sort(hits, hits.begin() + count);
  std::vector<FoodLine> found;
  found.reserve(static_cast<std::size_t>(count));
  for (auto hit = hits.begin(); hit != hits.begin() + count; ++hit) found.push_back(foods_[hit->place]);
  return found;
}

}  // namespace tarebowl::food
