// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"
#include "core/exchange/imported_food.h"
#include "core/exchange/table_input.h"

#include <array>
#include <cstddef>
#include <functional>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::exchange {

enum class FoodChange { New, Changed, Unchanged };

/// What putting a food into a collection did.
struct FoodOutcome {
  FoodChange change = FoodChange::New;
  std::size_t valuesNew = 0;
  std::size_t valuesChanged = 0;
  std::size_t valuesUnchanged = 0;
  /// Places in the food's values, and after them in its others, that this import had put before.
  std::vector<std::size_t> saidTwice{};
  bool operator==(const FoodOutcome&) const = default;
};

/// Where imported foods go: a transaction that is kept or taken back as a whole. A food that is there already
/// with the same values is left alone.
class ImportSink {
 public:
  ImportSink() = default;
  ImportSink(const ImportSink&) = delete;
  ImportSink& operator=(const ImportSink&) = delete;
  virtual ~ImportSink() = default;
  virtual FoodOutcome put(const ImportedFood& food) = 0;
};

/// A food that the plan names.
struct PlannedFood {
  std::size_t line = 0;
  std::string code{};
  std::string name{};
  std::size_t values = 0;
  FoodOutcome outcome{};
};

struct ImportOptions {
  std::stop_token stop{};
  std::function<void(double)> progress{};  ///< 0 … 1, called now and then
  std::size_t firstOfEachKind = 20;        ///< how many foods and remarks of a kind are kept
  /// Told of every food and every remark, kept or not.
  std::function<void(const PlannedFood&)> onFood{};
  std::function<void(ImportIssue, const Remark&)> onRemark{};
};

/// What an import will do, or has done: everything in the table is counted under one of these.
struct ImportPlan {
  std::size_t records = 0;             ///< after the header, without blank ones
  std::array<std::size_t, 3> foods{};  ///< by FoodChange
  std::size_t valuesNew = 0;
  std::size_t valuesChanged = 0;
  std::size_t valuesUnchanged = 0;
  std::size_t valuesOther = 0;   ///< of these: of nutrients that are unknown here, kept under their names
  std::size_t nothingKnown = 0;  ///< blank cells and such as "-" and "n.d."
  std::size_t zerosUnknown = 0;  ///< where the mapping says that 0 is what nobody measured
  std::array<RemarkGroup, kImportIssues> remarks{};  ///< by ImportIssue
  std::vector<PlannedFood> firstFoods{};
  bool stopped = false;

  [[nodiscard]] const RemarkGroup& of(ImportIssue issue) const {
    return remarks.at(static_cast<std::size_t>(issue));
  }
  [[nodiscard]] std::size_t valuesRead() const { return valuesNew + valuesChanged + valuesUnchanged; }
  /// Values that the table states and that are not taken: unknown here and without a unit, named in the
  /// mapping, or said before.
  [[nodiscard]] std::size_t valuesLeftOut() const {
    return of(ImportIssue::UnknownNutrient).count + of(ImportIssue::LeftOut).count +
           of(ImportIssue::SaidTwice).count;
  }
  [[nodiscard]] bool isRefused() const;
  /// Read to its end, nothing refused, and something in it.
  [[nodiscard]] bool mayBeWritten() const;
};

/// Reads the whole table into the sink and says what that does. To plan, the caller takes the sink back; to
/// import, it keeps it, but only where the plan may be written. Memory does not grow with the table, but for
/// some bytes per food of a wide table, by which a second record of it is seen. Throws FormatError where the
/// table cannot be read at all, and what the sink throws.
[[nodiscard]] ImportPlan importTable(const TableInput& table, const TableMapping& mapping, ImportSink& sink,
                                     const ImportOptions& options = {});

/// The first refusal as a FormatError for a message of one line; name is the table's.
[[noreturn]] void throwFirstRefusal(const ImportPlan& plan, const std::string& name);

}  // namespace tarebowl::exchange
