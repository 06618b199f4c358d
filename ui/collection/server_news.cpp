// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/server_news.h"

#include <QMetaObject>

#include <utility>

namespace tarebowl::ui {

ServerNews::ServerNews(const std::filesystem::path& address, store::PasswordAsker password, QObject* parent)
    : QObject(parent),
      watch_(address, std::move(password), [this](store::ServerWatch::News news, int writer) {
        QMetaObject::invokeMethod(
            this, [this, news, writer] { take(news, writer); }, Qt::QueuedConnection);
      }) {}

void ServerNews::take(store::ServerWatch::News news, int writer) {
  if (news == store::ServerWatch::News::Written) return emit written(writer);
  isListening_ = news == store::ServerWatch::News::Listening;
  emit listeningChanged();
}

}  // namespace tarebowl::ui
