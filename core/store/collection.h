// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"
#include "core/store/touched.h"

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>

namespace tarebowl::store {

/// Who does something and when, for the change log. at: ISO 8601 UTC, "2026-11-25T07:30:00Z".
struct Author {
  std::string who{};
  std::string at{};
};

struct OpenOptions {
  enum class Access {
    ReadWrite,
    ReadOnly,
    AsAllowed  ///< for writing; for reading where the file or its folder cannot be written
  };
  enum class Check { AfterUncleanEnd, Always };
  Access access = Access::ReadWrite;
  Check check = Check::AfterUncleanEnd;        ///< when the whole file is read through for damage
  std::chrono::milliseconds patience{10'000};  ///< how long another's write is waited for
  /// Asked where a server wants a password that is not at hand (~/.pgpass); nothing: it is not known.
  std::function<std::optional<std::string>(const std::filesystem::path& address)> password{};
};

/// A collection, open in this window or command: a file, NAME.tarebowl, or what several desks share on a
/// server (server_address.h). Several may have it open at once: reading never waits, a write waits for
/// another's write. One object is for one thread; a worker opens its own.
class Collection {
 public:
  /// A new, empty collection; the file must not exist, nor a collection in the database. Throws StoreError.
  [[nodiscard]] static Collection create(const std::filesystem::path& file, const Author& author,
                                         const OpenOptions& options = {});
  /// Opens a collection, and first raises an older schema, after a backup; one on a server is raised by
  /// upgradeServer alone. at: the time, for the backup's name. Throws StoreError; a file that is no
  /// collection, or newer than this program, is not touched.
  [[nodiscard]] static Collection open(const std::filesystem::path& file, const std::string& at,
                                       const OpenOptions& options = {});

  ~Collection();
  Collection(Collection&&) noexcept;
  Collection& operator=(Collection&&) noexcept;
  Collection(const Collection&) = delete;
  Collection& operator=(const Collection&) = delete;

  [[nodiscard]] const std::filesystem::path& file() const;  ///< or the address
  [[nodiscard]] int schemaVersion() const;
  /// False where it is open for reading only: every verb then refuses (NoPermission).
  [[nodiscard]] bool mayWrite() const;
  /// Whether another connection has written since the last call, or since opening; or another file was put in
  /// this one's place. Cheap: meant to be asked often.
  [[nodiscard]] bool changedElsewhere();
  /// The same, with what was touched, as the change log says; at first nothing: it begins to look. writers:
  /// connections that wrote, as a ServerWatch was told, which may be sooner than this one is.
  [[nodiscard]] std::optional<Touched> changesElsewhere(std::span<const int> writers = {});
  /// Reads the whole file through; throws StoreError (Damaged) with the first thing found. A server looks
  /// after its files itself.
  void checkIntegrity();

  class Inner;
  [[nodiscard]] Inner& inner() const { return *inner_; }  ///< for the rooms of store

 private:
  explicit Collection(std::unique_ptr<Inner> inner);
  enum class Heard { Nothing, Write, Replacement };
  bool tookReplacement();
  Heard listen(std::span<const int> writers);
  std::unique_ptr<Inner> inner_;
};

/// The schema that this program reads and writes.
[[nodiscard]] int currentSchemaVersion();

}  // namespace tarebowl::store
