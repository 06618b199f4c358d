// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/server_address.h"
#include "ui/shared/password_question.h"

#include <QObject>

#include <functional>
#include <memory>

namespace tarebowl::ui {

/// Where threads that open a collection ask for its password, and the window answers. A thread waits until a
/// person has answered or the desk is closed: then the password is not known, at once and from there on, so
/// that who closes the window or opens another collection may wait for the thread.
class PasswordDesk : public QObject {
  Q_OBJECT
 public:
  /// Puts a question to a person without waiting for the answer; called on the desk's own thread.
  using Show = std::function<void(PasswordQuestion& question)>;
  explicit PasswordDesk(Show show, QObject* parent = nullptr);
  ~PasswordDesk() override;

  /// For any thread but the desk's own; may outlive the desk.
  [[nodiscard]] store::PasswordAsker asker() const;
  /// Takes back what is asked, and answers whoever waits: not known.
  void close();

 private:
  struct Counter;
  void show(const QString& address, const PasswordQuestion::Answer& answer);

  Show show_;
  std::shared_ptr<Counter> counter_;
};

}  // namespace tarebowl::ui
