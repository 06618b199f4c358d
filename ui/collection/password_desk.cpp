// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/password_desk.h"

#include "ui/shared/paths.h"

#include <QMetaObject>
#include <QThread>

#include <condition_variable>
#include <mutex>
#include <utility>

namespace tarebowl::ui {

/// What the desk shares with those who ask.
struct PasswordDesk::Counter {
  struct Asked {
    bool isAnswered = false;
    std::optional<std::string> typed{};
  };

  std::mutex mutex{};
  std::condition_variable answered{};
  PasswordDesk* desk = nullptr;  ///< null once it is closed

  std::optional<std::string> ask(const std::filesystem::path& address,
                                 const std::shared_ptr<Counter>& shared) {
    std::unique_lock lock(mutex);
    // Who answers cannot wait for the answer.
    if (desk == nullptr || QThread::currentThread() == desk->thread()) return std::nullopt;
    const auto asked = std::make_shared<Asked>();
    const PasswordQuestion::Answer take = [shared, asked](std::optional<std::string> typed) {
      {
        const std::lock_guard taking(shared->mutex);
        asked->typed = std::move(typed);
        asked->isAnswered = true;
      }
      shared->answered.notify_all();
    };
    // The desk is there as long as the lock is held; what is posted to it goes with it.
    QMetaObject::invokeMethod(
        desk, [to = desk, text = toText(address), take] { to->show(text, take); }, Qt::QueuedConnection);
    answered.wait(lock, [&] { return asked->isAnswered || desk == nullptr; });
    return asked->typed;
  }
};

PasswordDesk::PasswordDesk(Show show, QObject* parent)
    : QObject(parent), show_(std::move(show)), counter_(std::make_shared<Counter>()) {
  counter_->desk = this;
}

PasswordDesk::~PasswordDesk() {
  close();
}

store::PasswordAsker PasswordDesk::asker() const {
  return store::askedOnce(
      [counter = counter_](const std::filesystem::path& address) { return counter->ask(address, counter); });
}

void PasswordDesk::close() {
  {
    const std::lock_guard lock(counter_->mutex);
    counter_->desk = nullptr;
  }
  counter_->answered.notify_all();
  qDeleteAll(findChildren<PasswordQuestion*>());
}

void PasswordDesk::show(const QString& address, const PasswordQuestion::Answer& answer) {
  {
    const std::lock_guard lock(counter_->mutex);
    if (counter_->desk == nullptr) return;
  }
  auto* question = new PasswordQuestion(address, answer, this);
  show_(*question);
}

}  // namespace tarebowl::ui
