// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/server_address.h"

#include <filesystem>
#include <functional>
#include <memory>

namespace tarebowl::store {

/// Tells at once that somebody wrote into a collection on a server. It listens on a connection and a thread
/// of its own, which sleeps until the server says something; a connection that is lost it takes up again, as
/// often as it must, with longer and longer rests between.
class ServerWatch {
 public:
  enum class News {
    Listening,  ///< from here on; what was written before, since it was lost, nobody was told of
    Written,
    Lost
  };
  /// writer: the connection that wrote, as the server numbers them. Called on the watch's own thread.
  using Tell = std::function<void(News news, int writer)>;

  /// password: of an address that was opened before, so that nobody is asked.
  ServerWatch(std::filesystem::path address, PasswordAsker password, Tell tell);
  /// Without waiting for the server; nothing is told any more.
  ~ServerWatch();
  ServerWatch(const ServerWatch&) = delete;
  ServerWatch& operator=(const ServerWatch&) = delete;

 private:
  class Inner;
  std::unique_ptr<Inner> inner_;
};

}  // namespace tarebowl::store
