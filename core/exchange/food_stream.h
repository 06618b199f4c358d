// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <memory>

namespace tarebowl::exchange {

/// The foods of a table, one after the other.
class FoodStream {
 public:
  /// The arguments must outlive it. Throws FormatError.
  FoodStream(const TableInput& table, const TableMapping& mapping, ImportPlan& plan,
             const ImportOptions& options);
  ~FoodStream();
  FoodStream(const FoodStream&) = delete;
  FoodStream& operator=(const FoodStream&) = delete;

  /// The next food that has values; false at the end, and where a stop was asked for, which the plan then
  /// says. Reports progress. Throws FormatError.
  [[nodiscard]] bool next(ImportedFood& food);

 private:
  class Work;
  std::unique_ptr<Work> work_;
};

}  // namespace tarebowl::exchange
