// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/not_answered.h"
#include "core/store/store_error.h"

#include <soci/soci.h>

#include <cstddef>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

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

class EngineStatement;
class TableFilling;
struct TableShape;

/// What the engine says, as an error of the store: in its own words only where ours are not clear.
[[noreturn]] void rethrow(const std::filesystem::path& place, const soci::soci_error& error);

/// Whether a rule of the collection (a key, a check, a reference) is what the engine speaks of.
[[nodiscard]] bool isRefusal(const soci::soci_error& error);

/// Runs work that speaks to the engine; its errors become StoreError.
template <class Work>
auto guarded(const std::filesystem::path& place, Work&& work) -> decltype(work()) {
  try {
    return work();
  } catch (const soci::soci_error& error) {
    rethrow(place, error);
  }
}

/// One connection to one collection. The SQL that engines have in common goes through sql() and prepare();
/// what an engine does in its own way stands here, and in sqlite_* and postgresql_*.
class Connection {
 public:
  /// Still: of a file, for reading where not even the journal beside it can be opened, as in a folder that
  /// cannot be written; somebody else's write shows after takeUpAgain().
  enum class Access { ReadWrite, ReadOnly, Still };

  virtual ~Connection() = default;
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  /// To be spoken to at once: what is still under way of a reading's answers is taken first.
  [[nodiscard]] soci::session& sql() {
    settle();
    return session_;
  }
  /// Where the collection lies: its file, or its address on a server.
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] Access access() const { return access_; }

  /// A statement that is compiled once and run many times, with ?, ?1 or :name for its places; a name that
  /// comes again is one more place.
  [[nodiscard]] virtual std::unique_ptr<EngineStatement> prepare(const std::string& sql) = 0;
  /// Takes many rows for a table within a transaction, by the engine's quickest way (table_filling.h).
  [[nodiscard]] virtual std::unique_ptr<TableFilling> fill(const TableShape& table);
  /// The statements of a migration as this engine takes them.
  [[nodiscard]] virtual std::vector<std::string> translated(std::string_view migration) const = 0;

  [[nodiscard]] virtual int schemaVersion() = 0;
  virtual void setSchemaVersion(int version) = 0;

  /// Whether another connection has written since the last call, or since opening. Cheap.
  [[nodiscard]] virtual bool heardOfWrite() = 0;
  /// What the engine calls this connection before others; 0 where it has no name for it.
  [[nodiscard]] virtual int number() { return 0; }
  /// Whether what was opened is no longer there: what is written then would be found by nobody.
  [[nodiscard]] virtual bool isLost() = 0;
  /// Throws StoreError (Gone, NoServer) where it is.
  virtual void refuseLost() = 0;
  /// Opens it again, and keeps nothing of what was read of it.
  virtual void takeUpAgain() = 0;

  // For Reading (reading.h).
  /// What is read until the end is as it was at one moment. False within another reading or a transaction,
  /// whose end comes later.
  [[nodiscard]] virtual bool beginReading() = 0;
  virtual void endReading() noexcept = 0;
  /// Whether questions are noted and asked together: where the engine is far enough away to make it worth
  /// while.
  [[nodiscard]] virtual bool gathers() const { return false; }
  /// Whether answers are those of a former moment, as long as the first of them are not fetched: they tell
  /// what is going to be asked, and nothing else.
  [[nodiscard]] virtual bool guesses() const { return false; }
  virtual void fetchAnswers() {}

  /// Entries of the change log that were written over this connection: nobody else's.
  void noteOwnEntry(long long entry) { ownEntries_.push_back(entry); }
  [[nodiscard]] std::vector<long long> takeOwnEntries() { return std::exchange(ownEntries_, {}); }

 protected:
  /// A question has no answer yet: it goes on without rows where several are asked together (AskedTogether),
  /// or else throws NotAnswered.
  void goOnUnanswered() {
    ++unanswered_;
    if (together_ == 0) throw NotAnswered{};
  }
  Connection(std::filesystem::path file, Access access) : file_(std::move(file)), access_(access) {}
  [[nodiscard]] bool isWriting() const { return isWriting_; }
  /// For what asks nothing of it: answers may be under way.
  [[nodiscard]] soci::session& session() { return session_; }

 private:
  friend class WriteTransaction;
  friend class AskedTogether;
  /// Takes the answers that are still under way, so that the engine can be asked something else.
  virtual void settle() {}
  /// Waits for the write lock of the collection, as long as the connection's patience.
  virtual void beginWriting() = 0;
  virtual void commit() = 0;

  std::filesystem::path file_;
  Access access_;
  soci::session session_;
  bool isWriting_ = false;
  std::vector<long long> ownEntries_;
  int together_ = 0;
  std::size_t unanswered_ = 0;
};

/// Several questions of one thing, none of which rests on another's answer: each is asked, though one before
/// it has no answer yet. What lies between must bear that there are no rows.
class AskedTogether {
 public:
  explicit AskedTogether(Connection& connection) : connection_(connection), before_(connection.unanswered_) {
    ++connection_.together_;
  }
  ~AskedTogether() { --connection_.together_; }
  AskedTogether(const AskedTogether&) = delete;
  AskedTogether& operator=(const AskedTogether&) = delete;
  /// Whether one of them has no answer yet.
  [[nodiscard]] bool lacksAnswers() const { return connection_.unanswered_ != before_; }
  /// At their end: throws NotAnswered where one of them has none, unless they are part of others.
  void end() const {
    if (lacksAnswers() && connection_.together_ == 1) throw NotAnswered{};
  }

 private:
  Connection& connection_;
  std::size_t before_;
};

/// A transaction that holds the write lock from its start, so that what it reads stays true until it is
/// written. Waits for another's write as long as the connection's patience. Rolls back unless committed.
/// Within another it is a part of it: kept only if that one is, too. Throws StoreError (NoPermission) where
/// the connection is for reading.
class WriteTransaction {
 public:
  explicit WriteTransaction(Connection& connection);
  ~WriteTransaction();
  WriteTransaction(const WriteTransaction&) = delete;
  WriteTransaction& operator=(const WriteTransaction&) = delete;
  void commit();

 private:
  Connection& connection_;
  bool inner_ = false;  ///< within another
  bool open_ = true;
  std::size_t entriesBefore_;  ///< those after it go with what is rolled back
};

}  // namespace tarebowl::store
