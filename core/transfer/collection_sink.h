// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/store/food_import.h"

#include <cstdint>
#include <optional>
#include <string>
#include <unordered_map>

namespace tarebowl::transfer {

/// An import into a collection: one transaction, taken back unless it is committed. What a table says of a
/// food becomes a sample for each source that it names. Things that are no nutrients of ours are kept under
/// the table's name for them.
class CollectionSink : public exchange::ImportSink {
 public:
  CollectionSink(store::Collection& collection, store::ImportSource source, store::Author author);

  exchange::FoodOutcome put(const exchange::ImportedFood& food) override;
  /// The entry in the change log, by which it is undone; nothing where the table changed nothing.
  std::optional<std::int64_t> commit();

 private:
  /// The sample of the food at hand from a source; the table's own where that is empty.
  [[nodiscard]] store::SampleId sampleFrom(const std::string& source);
  [[nodiscard]] store::ImportedValue asStored(const exchange::ImportedValue& value);
  [[nodiscard]] store::ImportedValue asStored(const exchange::ImportedOther& other);
  void add(store::SampleId sample, const store::ImportedValue& value, std::size_t place,
           exchange::FoodOutcome& outcome);

  store::FoodImport import_;
  std::unordered_map<std::size_t, store::ComponentId> components_;  ///< by nutrient
  std::unordered_map<std::string, store::ComponentId> others_;      ///< by name
  store::ImportedFood food_;                                        ///< at hand
  std::unordered_map<std::string, store::SampleId> samples_;        ///< of the food at hand, by source
};

}  // namespace tarebowl::transfer
