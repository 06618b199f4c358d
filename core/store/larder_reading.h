// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/food/food.h"
#include "core/store/collection.h"

#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::store {

/// Which foods, and what of them.
struct LarderWish {
  /// Nothing else is known of the foods that are read; their sources neither.
  std::vector<food::NutrientId> nutrients{};
  std::function<bool(const food::Food&)> wants{};  ///< by its own row, cautions aside
  std::stop_token stop{};                          ///< fewer foods where it was asked for
};

/// Foods as diets take them (asDietFood), thousands at a time: amounts and scatter of the nutrients asked for
/// are those of knowFood(). In the order in which the foods were added. Throws StoreError.
[[nodiscard]] std::vector<diet::DietFood> readLarder(const Collection& collection, const LarderWish& wish);

/// Whether values say where they come from.
enum class ValueSources { LeftOut, Kept };

/// The same of foods that are named one after another. The collection must outlive it.
class NamedFoodReader {
 public:
  NamedFoodReader(const Collection& collection, const std::vector<food::NutrientId>& nutrients,
                  ValueSources sources = ValueSources::LeftOut);
  NamedFoodReader(NamedFoodReader&& other) noexcept;
  NamedFoodReader& operator=(NamedFoodReader&& other) noexcept;
  ~NamedFoodReader();

  /// These are going to be named: a server is asked for all of them together, within a reading (reading.h).
  /// Throws StoreError.
  void expect(const std::vector<std::string>& codes);
  /// Nothing where the collection has no food of this code. Throws StoreError.
  [[nodiscard]] std::optional<diet::DietFood> find(const std::string& code);

 private:
  class Inner;
  std::unique_ptr<Inner> inner_;
};

}  // namespace tarebowl::store
