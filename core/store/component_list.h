// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/store/connection.h"

#include <soci/soci.h>

#include <cstdint>
#include <optional>
#include <string_view>
#include <unordered_map>

namespace tarebowl::store {

/// The numbers under which a collection keeps values of a nutrient. They belong to the file: the program's
/// own numbering changes with its list of nutrients.
class ComponentList {
 public:
  /// The number of a nutrient, given one where it has none yet (inside a write transaction).
  [[nodiscard]] std::int64_t numberOf(soci::session& sql, food::NutrientId nutrient);
  [[nodiscard]] std::int64_t numberOf(soci::session& sql, std::string_view tagname, std::string_view unit);
  /// Reads the list, where nothing of it is known yet: so that it is asked with what is asked first.
  void learn(Connection& connection);
  /// Nothing for a component that this program does not know.
  [[nodiscard]] std::optional<food::NutrientId> nutrientOf(Connection& connection, std::int64_t number);
  /// After a rollback: numbers given in it are no longer there.
  void forget();

 private:
  void readAll(Connection& connection);

  std::unordered_map<std::size_t, std::int64_t> numbers_;                        // by nutrient
  std::unordered_map<std::int64_t, std::optional<food::NutrientId>> nutrients_;  // by number
};

}  // namespace tarebowl::store
