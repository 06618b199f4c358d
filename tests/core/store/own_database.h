// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace tarebowl::store {

/// Whether these tests hold their collections on a server: ctest says where it is, in TAREBOWL_TEST_SERVER,
/// to those with the label `server`.
[[nodiscard]] bool testsAreOnServer();

/// A database for one test on the tests' server (test_server), empty at its start and removed at its end.
class OwnDatabase {
 public:
  explicit OwnDatabase(const std::string& name);
  ~OwnDatabase();
  OwnDatabase(const OwnDatabase&) = delete;
  OwnDatabase& operator=(const OwnDatabase&) = delete;

  /// As its owner.
  [[nodiscard]] const std::filesystem::path& address() const { return address_; }
  /// As somebody else, whom the server must know.
  [[nodiscard]] std::filesystem::path addressOf(const std::string& person) const;
  /// As its owner, with the engine's own words. Throws std::runtime_error with those of the server.
  void run(const std::string& statements) const;

 private:
  std::string name_;
  std::filesystem::path address_;
};

/// Statements by libpq alone, as somebody with psql would send them; what the server said of it, empty where
/// it did as it was told.
[[nodiscard]] std::string refusedTo(const std::filesystem::path& address, const std::string& password,
                                    const std::string& statements);

}  // namespace tarebowl::store
