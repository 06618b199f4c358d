// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"

#include <QTemporaryDir>

#include <string_view>
#include <vector>

namespace tarebowl::ui {

[[nodiscard]] food::NutrientId nutrient(std::string_view tagname);
/// So much per 100 g as fed.
[[nodiscard]] food::SampleValue valueOf(std::string_view tagname, double amount);
[[nodiscard]] food::Sample report(food::SampleOrigin origin, std::string source, const char* date,
                                  std::vector<food::SampleValue> values);

/// A collection in a folder of its own, with three invented foods:
///  Crickets, live   water 70 g; calcium of two own reports, 40 and 50 mg, and of a publication, 90 mg; P 300
///  mg Grubs, live      water 60 g, calcium 900 mg, phosphorus 300 mg, of a publication Kale, raw water 85 g,
///  nothing else
class ExampleCollection {
 public:
  ExampleCollection();
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] CollectionOpener opener() const;
  /// Opens it on the desk and waits until it was read.
  void openOn(FoodDesk& desk) const;

 private:
  QTemporaryDir folder_;
  std::filesystem::path file_;
};

/// A desk with a collection of its own to open.
struct DeskAlone {
  OpenCollection collection{};
  FoodDesk desk{collection};
};

void settle(FoodDesk& desk);
void showFood(FoodDesk& desk, std::string_view name);
[[nodiscard]] FoodId idOf(const FoodDesk& desk, std::string_view name);
[[nodiscard]] std::optional<double> amountOf(const FoodDesk& desk, std::string_view tagname);
[[nodiscard]] SampleId sampleOf(const FoodDesk& desk, std::string_view source);

}  // namespace tarebowl::ui
