// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/component_list.h"
#include "core/store/connection.h"
#include "core/store/migration.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>

namespace tarebowl::store {

/// An entry of the change log, as far as it tells one from another.
struct LogPlace {
  long long number = 0;  ///< 0: the log is empty
  std::string at{};
  std::string verb{};
};

/// What a Collection holds, for the rooms of store.
class Collection::Inner {
 public:
  explicit Inner(std::unique_ptr<Connection> opened) : opened_(std::move(opened)), connection(*opened_) {}

  [[nodiscard]] static Collection wrap(std::unique_ptr<Inner> inner);
  [[nodiscard]] soci::session& sql() { return connection.sql(); }
  [[nodiscard]] const std::filesystem::path& file() const { return connection.file(); }

 private:
  std::unique_ptr<Connection> opened_;

 public:
  Connection& connection;
  ComponentList components;
  std::optional<LogPlace> seen{};  ///< up to where others' changes are known
  int roundOfAsking = 0;           ///< within a reading (reading.h); 0: nothing is asked ahead
  bool wouldAskAhead = false;      ///< the job came to a place where it could be
};

/// As Collection::create and open, over another list of migrations: for tests.
[[nodiscard]] Collection createWith(const std::filesystem::path& file, const Author& author,
                                    const OpenOptions& options, std::span<const Migration> steps);
[[nodiscard]] Collection openWith(const std::filesystem::path& file, const std::string& at,
                                  const OpenOptions& options, std::span<const Migration> steps);

/// The schema that a list of steps ends with.
[[nodiscard]] int newest(std::span<const Migration> steps);

/// Raises the schema to the last of the steps, each in a transaction of its own.
void raiseSchema(Connection& connection, std::span<const Migration> steps);

/// The entry in the log with which a collection begins.
void recordCreation(Collection::Inner& inner, const Author& author);

}  // namespace tarebowl::store
