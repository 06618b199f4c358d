// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>

namespace tarebowl::store {

/// One connection to one file, with everything that is SQLite's alone: pragmas, locks, copies.
class SqliteConnection final : public Connection {
 public:
  SqliteConnection(std::filesystem::path file, Access access, std::chrono::milliseconds patience);

  [[nodiscard]] std::unique_ptr<EngineStatement> prepare(const std::string& sql) override;
  [[nodiscard]] std::vector<std::string> translated(std::string_view migration) const override;
  [[nodiscard]] int schemaVersion() override;
  void setSchemaVersion(int version) override;
  [[nodiscard]] bool heardOfWrite() override;
  /// Whether the file that was opened no longer stands under its name.
  [[nodiscard]] bool isLost() override;
  void refuseLost() override;
  void takeUpAgain() override;
  [[nodiscard]] bool beginReading() override;
  void endReading() noexcept override;

  void markAsCollection();
  /// Journal beside the file: readers and one writer at once, every commit synced to disk.
  void keepLog();
  /// Moves what stands in the journal into the file; false where something keeps part of it from it.
  bool emptyLog();
  [[nodiscard]] bool isReadOnly();
  enum class Depth { Quick, Thorough };  ///< Quick leaves out whether indexes agree with their tables
  /// Reads the file through; the first thing that is wrong with it, if any.
  [[nodiscard]] std::optional<std::string> firstDamage(Depth depth);
  /// A complete, compact copy; `copy` must not exist.
  void copyTo(const std::filesystem::path& copy);
  /// Makes this file hold what `source` holds, in one transaction; other connections see it as a change.
  void takeContentOf(SqliteConnection& source);

 private:
  void setUp();
  [[nodiscard]] bool hasNoSession();
  void beginWriting() override;
  void commit() override;
  /// What tells whether somebody wrote; grows with another's write.
  [[nodiscard]] long long dataVersion();

  std::chrono::milliseconds patience_;
  long long seenVersion_ = 0;
  /// When the file was last written, where nothing else tells that somebody wrote (Access::Still).
  std::filesystem::file_time_type seenTime_{};
};

}  // namespace tarebowl::store
