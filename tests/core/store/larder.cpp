// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/larder.h"

namespace tarebowl::store {

using quantity::AsFedContent;
using quantity::Grams;

food::NutrientId nutrient(const char* tagname) {
  return food::findByTagname(tagname).value();
}

FoodRecord plain(const std::string& code) {
  FoodRecord record;
  record.food.code = code;
  record.food.name = code;
  return record;
}

FoodRecord pellet() {
  FoodRecord record = plain("pellet-a");
  record.food = {"pellet-a",
                 "Pellet A, süß",
                 "pelleted",
                 "pellet",
                 Grams(2.5),
                 Grams(0.1),
                 0.98,
                 4.2,
                 false,
                 {"iron-storing species", "vitamin D"},
                 "invented; keep dry",
                 true};
  record.overrides = {{nutrient("CA"), AsFedContent(900), AsFedContent(50), "new formula, not analysed yet"},
                      {nutrient("P"), AsFedContent(600), {}, "the same"}};
  record.plan = {{nutrient("CA"), 6}, {nutrient("FE"), 12}};
  return record;
}

food::Sample analysis(const std::string& source, const std::string& date, double calcium) {
  food::Sample sample{.source = source,
                      .date = quantity::parseDate(date),
                      .lab = "Field laboratory",
                      .method = "ICP-OES",
                      .batch = "B 7"};
  food::SampleValue ca{.nutrient = nutrient("CA"), .sd = 12.5, .count = 3};
  ca.amount = AsFedContent(calcium);
  food::SampleValue selenium{.nutrient = nutrient("SE"),
                             .reported = food::Reported{0.05, quantity::Unit::Milligram, 1000.0}};
  selenium.amount = quantity::DryMatterContent(5.0);
  selenium.qualifier = food::Qualifier::BelowQuantification;
  sample.values = {ca, selenium};
  return sample;
}

}  // namespace tarebowl::store
