// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/food/vitamin_units.h"

#include <map>
#include <string>
#include <tuple>

namespace tarebowl::exchange {

/// A collection for tests: what was imported, by code or name. As a real one it takes the same value again
/// for unchanged.
class MemorySink : public ImportSink {
 public:
  [[nodiscard]] FoodOutcome weigh(const ImportedFood& food) override { return compare(food, false); }
  FoodOutcome put(const ImportedFood& food) override { return compare(food, true); }

  using Kept = std::map<food::NutrientId, food::StatedValue>;
  std::map<std::string, ImportedFood> foods;
  std::map<std::string, Kept> values;

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

  FoodOutcome compare(const ImportedFood& food, bool keep) {
    const std::string key = food.code.empty() ? food.name : food.code;
    FoodOutcome outcome;
    const bool known = foods.contains(key);
    const auto before = values.find(key);
    for (const ImportedValue& value : food.values) {
      const bool there = before != values.end() && before->second.contains(value.nutrient);
      if (!there) {
        ++outcome.valuesNew;
      } else if (same(before->second.at(value.nutrient), value.stated)) {
        ++outcome.valuesUnchanged;
      } else {
        ++outcome.valuesChanged;
      }
    }
    const bool nothingNew = outcome.valuesNew + outcome.valuesChanged == 0;
    outcome.change = !known ? FoodChange::New : nothingNew ? FoodChange::Unchanged : FoodChange::Changed;
    if (!keep) return outcome;
    foods.emplace(key, food);
    for (const ImportedValue& value : food.values) values[key][value.nutrient] = value.stated;
    return outcome;
  }
};

}  // namespace tarebowl::exchange
