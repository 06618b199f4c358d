// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/food.h"
#include "core/food/sample.h"
#include "core/store/collection.h"
#include "core/store/food_records.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::store {

/// The table that is imported. name and a food's code in it are what make importing it twice change nothing.
struct ImportSource {
  std::string name{};  ///< "SR28"; not empty
  food::SampleOrigin origin = food::SampleOrigin::Publication;
  std::string fileName{};  ///< for the change log
  std::string fileHash{};  ///< for the change log, any text
};

/// A food of the table. `food` is used where the collection has none of its code yet; `sample` says source,
/// date, lab, method, batch and note (its origin and values are not read). A table that names the publication
/// of each value gives one of these for each; where sample.source is empty the table itself is the source.
/// sample.sourceCode names the food in that source and must not be empty.
struct ImportedFood {
  food::Food food{};
  food::Sample sample{};
};

/// A component that values are stated of: one of ours or a column that this program does not know yet and
/// keeps.
enum class ComponentId : std::int64_t {};

/// One value, as food::SampleValue.
struct ImportedValue {
  ComponentId component{};
  food::SampleContent amount{};
  std::optional<double> sd{};
  std::optional<int> count{};
  food::Qualifier qualifier = food::Qualifier::Equal;
  std::optional<food::Reported> reported{};
};

struct ImportCounts {
  std::size_t foodsAdded = 0;
  std::size_t samplesAdded = 0;
  std::size_t samplesChanged = 0;    ///< were there, with other values
  std::size_t samplesUnchanged = 0;  ///< were there, with the same values
  std::size_t valuesAdded = 0;
  std::size_t valuesChanged = 0;
  std::size_t valuesUnchanged = 0;
  std::size_t valuesTwice = 0;  ///< stated a second time in this import and left out
  bool operator==(const ImportCounts&) const = default;
};

/// Writes a table of foods in one transaction, with one entry in the change log. Memory does not grow with
/// the table. Nothing is written before commit(); an import that is destroyed before it (cancelled, a dry
/// run, failed) leaves no trace. It holds the collection's write lock while it lives. Every call throws
/// StoreError.
class FoodImport {
 public:
  FoodImport(Collection& collection, ImportSource source, Author author);
  ~FoodImport();
  FoodImport(const FoodImport&) = delete;
  FoodImport& operator=(const FoodImport&) = delete;

  [[nodiscard]] ComponentId component(food::NutrientId nutrient);
  /// A column without a tagname of ours: kept under this name with this unit, not shown yet.
  [[nodiscard]] ComponentId component(std::string_view name, std::string_view unit);

  /// Finds the food's sample from an earlier import, or adds it, with its food where that is new. Values of
  /// one food may come at any time; those of one sample in a row are fastest.
  [[nodiscard]] SampleId sample(const ImportedFood& food);

  enum class Outcome { Added, Changed, Unchanged, Twice };
  Outcome add(SampleId sample, const ImportedValue& value);

  /// As far as it got; samplesUnchanged and samplesChanged are complete only at the end.
  [[nodiscard]] ImportCounts counts() const;
  ImportCounts commit();
  /// The entry that commit() left in the change log; nothing before it, or where it changed nothing.
  [[nodiscard]] std::optional<std::int64_t> change() const;

 private:
  class Inner;
  std::unique_ptr<Inner> inner_;
};

}  // namespace tarebowl::store
