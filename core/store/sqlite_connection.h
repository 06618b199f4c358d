// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <soci/soci.h>

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>

namespace soci {

/// A column that may be NULL. SOCI gives the functions their names.
template <class T>
struct type_conversion<std::optional<T>> {
  using base_type = typename type_conversion<T>::base_type;
  // NOLINTNEXTLINE(readability-identifier-naming)
  static void from_base(const base_type& in, indicator state, std::optional<T>& out) {
    out.reset();
    if (state == i_null) return;
    T value{};
    type_conversion<T>::from_base(in, state, value);
    out = std::move(value);
  }
  // NOLINTNEXTLINE(readability-identifier-naming)
  static void to_base(const std::optional<T>& in, base_type& out, indicator& state) {
    state = i_null;
    if (in) type_conversion<T>::to_base(*in, out, state);
  }
};

}  // namespace soci

namespace tarebowl::store {

/// What SQLite says, as an error of the store: in the engine's own words only where ours are not clear.
[[noreturn]] void rethrow(const std::filesystem::path& file, const soci::soci_error& error);

/// Whether a rule of the collection (a key, a check, a reference) is what the engine speaks of.
[[nodiscard]] bool isRefusal(const soci::soci_error& error);

/// Runs work that speaks to the engine; its errors become StoreError.
template <class Work>
auto guarded(const std::filesystem::path& file, Work&& work) -> decltype(work()) {
  try {
    return work();
  } catch (const soci::soci_error& error) {
    rethrow(file, error);
  }
}

/// One connection to one file, with everything that is SQLite's alone: pragmas, locks, copies.
class SqliteConnection {
 public:
  /// Still: for reading where not even the journal beside the file can be opened, as in a folder that cannot
  /// be written; somebody else's write shows after readAnew().
  enum class Access { ReadWrite, ReadOnly, Still };
  SqliteConnection(std::filesystem::path file, Access access, std::chrono::milliseconds patience);

  [[nodiscard]] soci::session& sql() { return session_; }
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }

  [[nodiscard]] int schemaVersion();
  void setSchemaVersion(int version);
  void markAsCollection();
  /// Journal beside the file: readers and one writer at once, every commit synced to disk.
  void keepLog();
  /// Moves what stands in the journal into the file; false where something keeps part of it from it.
  bool emptyLog();
  /// Grows when another connection has written.
  [[nodiscard]] long long dataVersion();
  [[nodiscard]] bool isReadOnly();
  [[nodiscard]] Access access() const { return access_; }
  /// Whether the file that was opened no longer stands under its name: what is written then would be found by
  /// nobody.
  [[nodiscard]] bool hasLostFile();
  /// Throws StoreError (Gone) where it does not.
  void refuseLostFile();
  /// Opens the file again, and keeps nothing of what was read of it.
  void readAnew();
  enum class Depth { Quick, Thorough };  ///< Quick leaves out whether indexes agree with their tables
  /// Reads the file through; the first thing that is wrong with it, if any.
  [[nodiscard]] std::optional<std::string> firstDamage(Depth depth);
  /// A complete, compact copy; `copy` must not exist.
  void copyTo(const std::filesystem::path& copy);
  /// Makes this file hold what `source` holds, in one transaction; other connections see it as a change.
  void takeContentOf(SqliteConnection& source);

 private:
  friend class WriteTransaction;
  void setUp();

  std::filesystem::path file_;
  Access access_;
  std::chrono::milliseconds patience_;
  soci::session session_;
  bool isWriting_ = false;
};

/// A transaction that holds the write lock from its start, so that what it reads stays true until it is
/// written. Waits for another's write as long as the connection's patience. Rolls back unless committed.
/// Within another it is a part of it: kept only if that one is, too. Throws StoreError (NoPermission) where
/// the connection is for reading.
class WriteTransaction {
 public:
  explicit WriteTransaction(SqliteConnection& connection);
  ~WriteTransaction();
  WriteTransaction(const WriteTransaction&) = delete;
  WriteTransaction& operator=(const WriteTransaction&) = delete;
  void commit();

 private:
  SqliteConnection& connection_;
  bool inner_ = false;  ///< within another
  bool open_ = true;
};

}  // namespace tarebowl::store
