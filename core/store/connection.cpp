// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include "core/store/engine_error.h"
#include "core/store/table_rows.h"

#include <fmt/format.h>

namespace tarebowl::store {

void rethrow(const std::filesystem::path& place, const soci::soci_error& error) {
  EngineError meant = meaningOf(error);
  throw StoreError(meant.code, place,
                   meant.isClear ? meant.words : fmt::format("{} ({})", meant.words, error.what()));
}

bool isRefusal(const soci::soci_error& error) {
  return meaningOf(error).code == StoreErrorCode::Refused;
}

std::unique_ptr<TableFilling> Connection::fill(const TableShape& table) {
  return std::make_unique<TableWriter>(*this, table);
}

WriteTransaction::WriteTransaction(Connection& connection)
    : connection_(connection), inner_(connection.isWriting_), entriesBefore_(connection.ownEntries_.size()) {
  if (connection.access() != Connection::Access::ReadWrite)
    throw StoreError(StoreErrorCode::NoPermission, connection.file(),
                     "is open for reading only; nothing was written");
  connection.refuseLost();
  if (inner_)
    connection.sql() << "SAVEPOINT part";
  else
    connection.beginWriting();
  connection.isWriting_ = true;
}

WriteTransaction::~WriteTransaction() {
  if (!open_) return;
  connection_.isWriting_ = inner_;
  if (connection_.ownEntries_.size() > entriesBefore_) connection_.ownEntries_.resize(entriesBefore_);
  try {
    connection_.sql() << (inner_ ? "ROLLBACK TO part" : "ROLLBACK");
    if (inner_) connection_.sql() << "RELEASE part";
  } catch (const soci::soci_error&) {  // NOLINT(bugprone-empty-catch): the engine has rolled back by itself
  }
}

void WriteTransaction::commit() {
  if (inner_) {
    connection_.sql() << "RELEASE part";
  } else {
    connection_.refuseLost();
    connection_.commit();
  }
  connection_.isWriting_ = inner_;
  open_ = false;
}

}  // namespace tarebowl::store
