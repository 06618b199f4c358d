// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

#include <functional>
#include <optional>
#include <string>

namespace tarebowl::ui {

/// A server asks for a password. Whoever puts the question to a person answers it once, soon or late; where
/// nobody wants to know any more, it is withdrawn and deleted.
class PasswordQuestion : public QObject {
  Q_OBJECT
 public:
  /// Nothing: the person would rather not.
  using Answer = std::function<void(std::optional<std::string> typed)>;
  PasswordQuestion(QString address, Answer take, QObject* parent = nullptr);
  ~PasswordQuestion() override;

  [[nodiscard]] const QString& address() const { return address_; }
  /// Of several answers the first counts; then it is deleted, soon.
  void answer(std::optional<std::string> typed);

 signals:
  void withdrawn();

 private:
  QString address_;
  Answer take_;
};

}  // namespace tarebowl::ui
