// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/food_label.h"

#include <gtest/gtest.h>

#include <tuple>

namespace tarebowl::ui {
namespace {

TEST(FoodLabels, SayTheFormOnce) {
  const std::tuple<const char*, const char*, const char*, const char*> rows[] = {
      {"Endive, raw", "raw", "Endive", "raw"},
      {"House crickets, adult", "live", "House crickets, adult", "live"},
      {"Hen's egg, hard-boiled", "boiled", "Hen's egg, hard-boiled", ""},
      {"Insect-eater pellet (invented)", "dry", "Insect-eater pellet", "dry (invented)"},
      {"Limestone powder (invented product)", "powder", "Limestone powder", "(invented)"},
      {"Kale", "", "Kale", ""},
      {"Mouse (fuzzy)", "thawed", "Mouse", "thawed (fuzzy)"},
      {"raw", "raw", "raw", ""},
      {"(invented)", "dry", "(invented)", "dry"},
  };
  for (const auto& [name, form, expectedName, expectedRemark] : rows) {
    diet::DietFood food;
    food.name = name;
    food.form = form;
    food.invented = food.name.find("(invented") != std::string::npos;
    const FoodLabel label = foodLabel(food);
    EXPECT_EQ(label.name.toStdString(), expectedName);
    EXPECT_EQ(label.remark.toStdString(), expectedRemark) << name;
  }
}

}  // namespace
}  // namespace tarebowl::ui
