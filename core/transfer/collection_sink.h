// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/store/food_import.h"

#include <cstdint>
#include <optional>
#include <unordered_map>

namespace tarebowl::transfer {

/// An import into a collection: one transaction, taken back unless it is committed.
class CollectionSink : public exchange::ImportSink {
 public:
  CollectionSink(store::Collection& collection, store::ImportSource source, store::Author author);

  exchange::FoodOutcome put(const exchange::ImportedFood& food) override;
  /// The entry in the change log, by which it is undone; nothing where the table changed nothing.
  std::optional<std::int64_t> commit();

 private:
  void putValue(store::SampleId sample, const exchange::ImportedValue& value, std::size_t place,
                exchange::FoodOutcome& outcome);

  store::FoodImport import_;
  std::unordered_map<std::size_t, store::ComponentId> components_;  ///< by nutrient
};

}  // namespace tarebowl::transfer
