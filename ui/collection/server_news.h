// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/server_watch.h"

#include <QObject>

namespace tarebowl::ui {

/// What a store::ServerWatch is told, on the thread of the window.
class ServerNews : public QObject {
  Q_OBJECT
 public:
  ServerNews(const std::filesystem::path& address, store::PasswordAsker password, QObject* parent = nullptr);
  [[nodiscard]] bool isListening() const { return isListening_; }

 signals:
  void written(int writer);
  /// The connection was lost, or came about (again).
  void listeningChanged();

 private:
  void take(store::ServerWatch::News news, int writer);

  bool isListening_ = false;
  store::ServerWatch watch_;  // last: it tells this
};

}  // namespace tarebowl::ui
