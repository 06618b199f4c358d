// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace tarebowl::store {

/// What is peculiar about a server (test_server).
struct Peculiar {
  std::filesystem::path certificate{};  ///< it listens on a port, too, and shows this one there
  std::string smallDisk{};              ///< "40m": the size of the disk of its tablespace small_disk
};

/// A PostgreSQL server for one test alone, as long as it lives.
class OwnServer {
 public:
  /// folder: where it notes its address.
  OwnServer(const std::filesystem::path& folder, const Peculiar& peculiar);
  ~OwnServer();
  OwnServer(const OwnServer&) = delete;
  OwnServer& operator=(const OwnServer&) = delete;

  /// Whether it came about; a disk in memory cannot be made everywhere.
  [[nodiscard]] bool runs() const { return runs_; }
  /// It dies without a word, and is started again on what it had written.
  void dieAndComeBack();
  /// The database postgres, by the server's socket, as its owner, who needs no password there.
  [[nodiscard]] std::filesystem::path address() const;
  /// Another one of its databases.
  [[nodiscard]] std::filesystem::path address(const std::string& database) const;
  /// By its port, over TLS; further: the rest of the address ("&sslmode=…").
  [[nodiscard]] std::filesystem::path overTls(const std::string& host, const std::string& further) const;

 private:
  std::filesystem::path note_;
  int port_ = 0;
  bool runs_ = false;
};

}  // namespace tarebowl::store
