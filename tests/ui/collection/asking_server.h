// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <thread>

namespace tarebowl::ui {

/// A server, as far as to the password: it asks everybody for one and accepts none. On a thread of its own,
/// for the window may be waiting.
class AskingServer {
 public:
  AskingServer();
  ~AskingServer();
  AskingServer(const AskingServer&) = delete;
  AskingServer& operator=(const AskingServer&) = delete;

  [[nodiscard]] std::filesystem::path address() const;

 private:
  int listening_;
  int port_ = 0;
  std::thread thread_;
};

}  // namespace tarebowl::ui
