// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/password_question.h"

#include <utility>

namespace tarebowl::ui {

PasswordQuestion::PasswordQuestion(QString address, Answer take, QObject* parent)
    : QObject(parent), address_(std::move(address)), take_(std::move(take)) {}

PasswordQuestion::~PasswordQuestion() {
  if (std::exchange(take_, {})) emit withdrawn();
}

void PasswordQuestion::answer(std::optional<std::string> typed) {
  const Answer take = std::exchange(take_, {});
  if (!take) return;
  take(std::move(typed));
  deleteLater();
}

}  // namespace tarebowl::ui
