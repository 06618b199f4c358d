// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/day_sheets.h"

#include "core/store/animal_reading.h"
#include "core/transfer/kitchen_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <utility>

namespace tarebowl::app {

DaySheets::DaySheets(const store::Collection& collection, quantity::Date day, std::string table)
    : collection_(collection), day_(day), table_(std::move(table)) {}

std::optional<DaySheets::Place> DaySheets::find(std::size_t line, const std::string& group, int bowl,
                                                const std::string& food) {
  const auto stored = store::findGroup(collection_, group);
  if (!stored) return wrong(line, "there is no group " + group);
  const intake::PrepSheet& sheet = sheetOf(stored->record.section);
  const auto found = std::ranges::find(sheet.bowls, intake::BowlKey{group, day_, bowl},
                                       [](const intake::PrepBowl& b) { return b.bowl.key; });
  if (found == sheet.bowls.end())
    return wrong(line, fmt::format("{} has no bowl {} on {}", group, bowl, quantity::isoDate(day_)));
  if (food == "*") return Place{&*found};
  for (const intake::BowlItem& item : found->bowl.items)
    if (!item.swappedOut && (item.food == food || std::to_string(item.item) == food))
      return Place{&*found, &item};
  return wrong(line, fmt::format("bowl {} of {} has no food {}", bowl, group, food));
}

std::nullopt_t DaySheets::wrong(std::size_t line, const std::string& what) {
  told_.push_back(fmt::format("{}: line {}: {}", table_, line, what));
  return std::nullopt;
}

bool DaySheets::isRight(std::ostream& err) const {
  for (const std::string& line : told_) err << line << '\n';
  return told_.empty();
}

void DaySheets::open(store::Collection& collection, const store::Author& author) const {
  for (const auto& [section, sheet] : sheets_) transfer::openDay(collection, sheet, author);
}

const intake::PrepSheet& DaySheets::sheetOf(const std::string& section) {
  const auto known = sheets_.find(section);
  if (known != sheets_.end()) return known->second;
  return sheets_.emplace(section, transfer::readPrepSheet(collection_, section, day_)).first->second;
}

}  // namespace tarebowl::app
