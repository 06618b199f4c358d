// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/exchange/table_columns.h"

#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// Reads the cells of one value and keeps account of what cannot be read.
class ValueReader {
 public:
  /// The arguments must outlive it.
  ValueReader(const TableMapping& mapping, ImportPlan& plan, const ImportOptions& options);

  /// Where the parts of a value stand in a record; value is always there.
  struct Places {
    std::size_t value = 0;
    std::string title{};
    std::optional<std::size_t> sd{};
    double sdScale = 1.0;  ///< to the value's unit
    std::optional<std::size_t> standardError{};
    std::optional<std::size_t> count{};
    std::optional<std::size_t> qualifier{};
    std::optional<std::size_t> source{};
  };

  /// Adds the value to the food, or says why not.
  void read(const TableRow& row, const Places& places, const ValueReading& reading, ImportedFood& food);
  /// The value as it is stated; nothing where there is none or it is refused, which is remarked on.
  [[nodiscard]] std::optional<food::StatedValue> readStated(const TableRow& row, const Places& places,
                                                            const ValueReading& reading);

  void remark(ImportIssue issue, Remark remark);
  void remark(ImportIssue issue, const TableRow& row, std::size_t column, std::string_view title = {});
  [[nodiscard]] ImportPlan& plan() { return plan_; }

 private:
  [[nodiscard]] std::string sourceIn(std::string_view cell) const;
  bool readQualifier(const TableRow& row, const Places& places, food::StatedValue& stated);
  bool readCount(const TableRow& row, const Places& places, food::StatedValue& stated);
  bool readScatter(const TableRow& row, const Places& places, food::StatedValue& stated);
  /// Nothing: the cell is refused. An empty one is no number.
  std::optional<std::optional<double>> readPart(const TableRow& row, std::size_t column);

  const TableMapping& mapping_;
  DecimalMark mark_;
  ImportPlan& plan_;
  const ImportOptions& options_;
};

}  // namespace tarebowl::exchange
