// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/table_import.h"

#include "core/transfer/collection_sink.h"

namespace tarebowl::transfer {

namespace {

store::ImportSource sourceOf(const FoodTable& table) {
  const std::string& named = table.mapping.source;
  return {.name = named.empty() ? table.file.stem().string() : named,
          .fileName = table.file.filename().string()};
}

}  // namespace

Imported importTable(store::Collection& collection, const FoodTable& table, const store::Author& author,
                     Keep keep, const exchange::ImportOptions& options) {
  CollectionSink sink(collection, sourceOf(table), author);
  Imported imported{.plan = exchange::importTable(table.input, table.mapping, sink, options)};
  if (keep == Keep::WhereItMay && imported.plan.mayBeWritten()) imported.change = sink.commit();
  return imported;
}

}  // namespace tarebowl::transfer
