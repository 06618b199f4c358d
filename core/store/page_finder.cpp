// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/page_finder.h"

#include <algorithm>
#include <utility>

namespace tarebowl::store {

namespace {

/// Where the schema says that a table or an index stands.
struct Place {
  std::string name{};
  bool isTable = false;
  std::uint32_t root = 0;
};

/// A row of the schema: type, name, table, first page, text.
std::optional<Place> placeIn(const PageRow& row) {
  if (row.values.size() != 5) return std::nullopt;
  const auto* type = std::get_if<std::string>(&row.values[0]);
  const auto* name = std::get_if<std::string>(&row.values[1]);
  const auto* root = std::get_if<std::int64_t>(&row.values[3]);
  if (type == nullptr || name == nullptr || root == nullptr || *root <= 1) return std::nullopt;
  if (*type != "table" && *type != "index") return std::nullopt;
  return Place{*name, *type == "table", static_cast<std::uint32_t>(*root)};
}

bool fits(const SoughtColumn& column, const PageValue& value) {
  using Type = SoughtColumn::Type;
  if (std::holds_alternative<std::monostate>(value)) return column.mayBeMissing || column.isRowid;
  if (column.isRowid) return false;
  if (std::holds_alternative<std::string>(value)) return column.type == Type::Text;
  if (std::holds_alternative<double>(value)) return column.type == Type::Real;
  return column.type != Type::Text;  // a real number that is whole is kept as one
}

bool fits(const SoughtTable& table, const PageRow& row) {
  if (row.values.size() != table.columns.size() || row.rowid.has_value() == table.isClustered) return false;
  for (std::size_t i = 0; i < row.values.size(); ++i)
    if (!fits(table.columns[i], row.values[i])) return false;
  return true;
}

std::size_t fitting(const TreePage& page, const SoughtTable& table) {
  return static_cast<std::size_t>(
      std::ranges::count_if(page.rows, [&](const PageRow& row) { return fits(table, row); }));
}

class Finder {
 public:
  Finder(PageFile& file, std::span<const SoughtTable> tables)
      : file_(file), tables_(tables), seen_(std::size_t{file.pageCount()} + 1) {}

  FoundTables find() {
    for (const std::uint32_t page : file_.freePages())
      if (page < seen_.size()) seen_[page] = true;
    findPlaces();
    for (const Place& place : places_) {
      const SoughtTable* const table = place.isTable ? sought(place.name) : nullptr;
      found_.hasAny = found_.hasAny || table != nullptr;
      walk(place.root, table);
    }
    for (const SoughtTable& table : tables_)
      if (std::ranges::none_of(places_, [&](const Place& p) { return p.isTable && p.name == table.name; }))
        found_.tables[table.name].whereUnknown = true;
    takeOrphans();
    return std::move(found_);
  }

 private:
  [[nodiscard]] const SoughtTable* sought(const std::string& name) const {
    const auto found = std::ranges::find(tables_, name, &SoughtTable::name);
    return found == tables_.end() ? nullptr : &*found;
  }

  /// Marks the page; false where it was met before or is none.
  bool enter(std::uint32_t page) {
    if (page == 0 || page >= seen_.size() || seen_[page]) return false;
    seen_[page] = true;
    return true;
  }

  void findPlaces() {
    std::vector<std::uint32_t> waiting{1};
    bool isWhole = true;
    while (!waiting.empty()) {
      const std::uint32_t number = waiting.back();
      waiting.pop_back();
      const auto page = enter(number) ? file_.treePage(number) : std::nullopt;
      isWhole = isWhole && page && page->unreadable == 0 && page->hasRowids;
      if (!page) continue;
      waiting.insert(waiting.end(), page->children.begin(), page->children.end());
      takePlaces(*page);
    }
    if (!isWhole) findPlacesAnywhere();
  }

  /// Rows of the schema look like no other rows.
  void findPlacesAnywhere() {
    for (std::uint32_t number = 2; number < seen_.size(); ++number) {
      const auto page = seen_[number] ? std::nullopt : file_.treePage(number);
      if (page && page->isLeaf && page->hasRowids && !page->rows.empty() &&
          std::ranges::all_of(page->rows, [](const PageRow& row) { return isOfSchema(row); })) {
        seen_[number] = true;
        takePlaces(*page);
      }
    }
  }

  static bool isOfSchema(const PageRow& row) {
    const auto* type = row.values.size() == 5 ? std::get_if<std::string>(&row.values[0]) : nullptr;
    return type != nullptr && (*type == "table" || *type == "index" || *type == "trigger");
  }

  void takePlaces(const TreePage& page) {
    for (const PageRow& row : page.rows) {
      auto place = placeIn(row);
      if (place && std::ranges::find(places_, place->name, &Place::name) == places_.end())
        places_.push_back(std::move(*place));
    }
  }

  /// Follows a tree from its first page; of a table, its rows are kept.
  void walk(std::uint32_t root, const SoughtTable* table) {
    std::vector<std::uint32_t> waiting{root};
    while (!waiting.empty()) {
      const std::uint32_t number = waiting.back();
      waiting.pop_back();
      const auto page = enter(number) ? file_.treePage(number) : std::nullopt;
      const bool isOfTree = page && (table == nullptr || page->hasRowids != table->isClustered);
      if (!isOfTree) {
        if (page) seen_[number] = false;  // of another tree
        if (table != nullptr) ++found_.tables[table->name].unreadable;
        continue;
      }
      waiting.insert(waiting.end(), page->children.begin(), page->children.end());
      if (table != nullptr && (page->isLeaf || table->isClustered))
        keep(number, *page, *table);
      else if (table != nullptr)
        found_.tables[table->name].unreadable += page->unreadable;
    }
  }

  void keep(std::uint32_t number, const TreePage& page, const SoughtTable& table) {
    FoundTable& found = found_.tables[table.name];
    found.pages.push_back(number);
    found.unreadable += page.unreadable + page.rows.size() - fitting(page, table);
  }

  /// Pages to which no tree leads: the branch that led there is damaged.
  void takeOrphans() {
    std::vector<const SoughtTable*> damaged;
    for (const SoughtTable& table : tables_) {
      const auto found = found_.tables.find(table.name);
      if (found != found_.tables.end() && (found->second.unreadable > 0 || found->second.whereUnknown))
        damaged.push_back(&table);
    }
    if (damaged.empty()) return;
    for (std::uint32_t number = 2; number < seen_.size(); ++number) {
      const auto page = seen_[number] ? std::nullopt : file_.treePage(number);
      if (page && page->isLeaf && !page->rows.empty()) adopt(number, *page, damaged);
    }
  }

  void adopt(std::uint32_t number, const TreePage& page, const std::vector<const SoughtTable*>& damaged) {
    std::vector<const SoughtTable*> candidates;
    for (const SoughtTable* table : damaged)
      if (fitting(page, *table) == page.rows.size()) candidates.push_back(table);
    if (candidates.size() == 1) return keep(number, page, *candidates.front());
    ++found_.pagesWithoutTable;
  }

  PageFile& file_;
  std::span<const SoughtTable> tables_;
  std::vector<bool> seen_;
  std::vector<Place> places_;
  FoundTables found_;
};

}  // namespace

FoundTables findTables(PageFile& file, std::span<const SoughtTable> tables) {
  return Finder(file, tables).find();
}

std::vector<FoundRow> rowsOn(PageFile& file, std::uint32_t number, const SoughtTable& table) {
  std::vector<FoundRow> rows;
  const auto page = file.treePage(number);
  if (!page) return rows;
  const bool isDoubtful = page->unreadable > 0 || fitting(*page, table) < page->rows.size();
  for (const PageRow& row : page->rows) {
    if (!fits(table, row)) continue;
    rows.push_back({.values = row.values, .isDoubtful = isDoubtful});
    for (std::size_t i = 0; i < table.columns.size(); ++i)
      if (table.columns[i].isRowid) rows.back().values[i] = row.rowid.value();
  }
  return rows;
}

}  // namespace tarebowl::store
