// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/prep_sheet.h"
#include "core/store/collection.h"

#include <iosfwd>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::app {

/// Sheets of a day, section by section, and what is wrong with the lines of a table. The collection must
/// outlive them.
class DaySheets {
 public:
  DaySheets(const store::Collection& collection, quantity::Date day, std::string table);

  struct Place {
    const intake::PrepBowl* bowl = nullptr;
    const intake::BowlItem* item = nullptr;  ///< nothing for the bowl as a whole
  };
  /// A food by its code or the number of its item, "*" for the bowl as a whole. Nothing where the sheet has
  /// no such place; then it is told.
  std::optional<Place> find(std::size_t line, const std::string& group, int bowl, const std::string& food);
  std::nullopt_t wrong(std::size_t line, const std::string& what);
  /// Writes to err what was found, if anything.
  [[nodiscard]] bool isRight(std::ostream& err) const;
  void open(store::Collection& collection, const store::Author& author) const;

 private:
  const intake::PrepSheet& sheetOf(const std::string& section);

  const store::Collection& collection_;
  quantity::Date day_;
  std::string table_;
  std::map<std::string, intake::PrepSheet> sheets_;
  std::vector<std::string> told_;
};

}  // namespace tarebowl::app
