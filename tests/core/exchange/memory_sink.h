// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/food/vitamin_units.h"

#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>

namespace tarebowl::exchange {

/// A collection for tests: what was imported, by code or name. As a real one it takes the same value again
/// for unchanged.
class MemorySink : public ImportSink {
 public:
  FoodOutcome put(const ImportedFood& food) override {
    const std::string key = food.code.empty() ? food.name : food.code;
    const bool known = foods.contains(key);
    FoodOutcome outcome;
    for (std::size_t i = 0; i < food.values.size(); ++i) putValue(key, food.values[i], i, outcome);
    for (std::size_t i = 0; i < food.others.size(); ++i) {
      const ImportedOther& other = food.others[i];
      const bool isNew = others[key].emplace(other.name, other.stated).second;
      ++(isNew ? outcome.valuesNew : outcome.valuesUnchanged);
    }
    const bool nothingNew = outcome.valuesNew + outcome.valuesChanged == 0;
    outcome.change = !known ? FoodChange::New : nothingNew ? FoodChange::Unchanged : FoodChange::Changed;
    foods.emplace(key, food);
    return outcome;
  }
  /// Another import begins.
  void commit() { put_.clear(); }

  using Kept = std::map<food::NutrientId, food::StatedValue>;
  std::map<std::string, ImportedFood> foods;
  std::map<std::string, Kept> values;
  std::map<std::string, std::map<std::string, food::StatedValue>> others;

  [[nodiscard]] const food::StatedValue& value(const std::string& food, const std::string& tagname) const {
    return values.at(food).at(food::findByTagname(tagname).value());
  }
  /// In the nutrient's own unit per 100 of its basis.
  [[nodiscard]] double per100(const std::string& food, const std::string& tagname) const {
    const auto& stated = value(food, tagname);
    return stated.amount * food::toOwnUnitFactor(food::findByTagname(tagname).value(), stated.unit).value() *
           100.0 / stated.per;
  }

 private:
  static bool same(const food::StatedValue& a, const food::StatedValue& b) {
    const auto parts = [](const food::StatedValue& it) {
      return std::tie(it.amount, it.sd, it.unit, it.per, it.basis, it.sampleCount, it.qualifier, it.source);
    };
    return parts(a) == parts(b);
  }

  void putValue(const std::string& key, const ImportedValue& value, std::size_t place, FoodOutcome& outcome) {
    if (!put_.emplace(key, value.nutrient).second) {
      outcome.saidTwice.push_back(place);
      return;
    }
    Kept& kept = values[key];
    const auto [before, isNew] = kept.emplace(value.nutrient, value.stated);
    const bool unchanged = !isNew && same(before->second, value.stated);
    before->second = value.stated;
    ++(isNew ? outcome.valuesNew : unchanged ? outcome.valuesUnchanged : outcome.valuesChanged);
  }

  std::set<std::pair<std::string, food::NutrientId>> put_;
};

}  // namespace tarebowl::exchange
