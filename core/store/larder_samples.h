// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/sample.h"
#include "core/store/code_list.h"
#include "core/store/larder_reading.h"
#include "core/store/opening.h"
#include "core/store/prepared_statement.h"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

/// Samples as diets take them: no more of each than the nutrients that are asked for. Inside guarded().
namespace tarebowl::store {

/// Which component of the collection is which nutrient, and which of them are read: those asked for, the
/// parts of sums that were asked for, and what values on dry matter or per energy are read with.
class WantedComponents {
 public:
  WantedComponents(Collection::Inner& inner, const std::vector<food::NutrientId>& asked);

  [[nodiscard]] std::optional<food::NutrientId> find(long long component) const;
  [[nodiscard]] bool wasAsked(food::NutrientId nutrient) const { return asked_.contains(nutrient); }

 private:
  std::set<food::NutrientId> asked_;
  std::map<long long, food::NutrientId> nutrients_;
};

class LarderSamples {
 public:
  LarderSamples(Collection::Inner& inner, const std::vector<food::NutrientId>& nutrients,
                ValueSources sources);

  /// Of a food by its number; asked for where load() has not read them.
  [[nodiscard]] std::vector<food::Sample> of(long long food);
  [[nodiscard]] const WantedComponents& components() const { return components_; }

  /// Asks for the samples of all foods of a list in two statements (reading.h), for load().
  static void ask(Collection::Inner& inner, const CodeList& foods);
  /// Reads them. numbers: of the foods of the list that the collection holds.
  void load(const CodeList& foods, std::span<const long long> numbers);

 private:
  [[nodiscard]] food::Sample sampleIn(const PreparedStatement& row) const;
  [[nodiscard]] std::optional<food::SampleValue> valueIn(const PreparedStatement& row) const;
  void readValues(long long food, const std::vector<long long>& ids, std::vector<food::Sample>& samples);

  Collection::Inner& inner_;
  ValueSources sources_;
  WantedComponents components_;
  PreparedStatement samples_;
  PreparedStatement values_;
  std::map<long long, std::vector<food::Sample>> loaded_;  ///< by their foods' numbers
};

}  // namespace tarebowl::store
