// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/old_collection.h"

#include "core/store/opening.h"

namespace tarebowl::store {

namespace fs = std::filesystem;

namespace {

std::vector<std::string> textsOf(const Collection& collection, const std::string& query) {
  const soci::rowset<std::string> rows = (collection.inner().sql().prepare << query);
  return {rows.begin(), rows.end()};
}

}  // namespace

std::span<const Migration> upTo(int number) {
  return migrations().first(static_cast<std::size_t>(number));
}

std::vector<std::string> tablesOf(const Collection& collection) {
  return textsOf(collection, "SELECT name FROM main.sqlite_master WHERE type = 'table'");
}

void makeOld(const fs::path& file, int schema, const std::function<void(Collection&)>& fill) {
  const fs::path today = file.string() + ".today";
  {
    Collection filled = Collection::create(today, kKeeper);
    fill(filled);
  }
  const Collection old = createWith(file, kKeeper, {}, upTo(schema));
  guarded(file, [&] {
    soci::session& sql = old.inner().sql();
    sql << "PRAGMA foreign_keys = OFF";
    sql << "ATTACH DATABASE '" + today.string() + "' AS today";
    for (const std::string& table : tablesOf(old))
      sql << "INSERT OR IGNORE INTO main." + table + " SELECT * FROM today." + table;
    sql << "DETACH DATABASE today";
  });
  fs::remove(today);
}

std::vector<std::string> schemaOf(const Collection& collection) {
  return textsOf(
      collection,
      "SELECT type || ' ' || name || ' ' || COALESCE(sql, '') FROM sqlite_master ORDER BY type, name");
}

}  // namespace tarebowl::store
