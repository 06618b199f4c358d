// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/clerk.h"

#include <QMetaObject>

#include <exception>

namespace tarebowl::ui {

Clerk::Clerk(LarderOpener opener, QObject* parent)
    : QObject(parent),
      opener_(std::move(opener)),
      thread_([this](const std::stop_token& quit) { work(quit); }) {}

Clerk::~Clerk() {
  thread_.request_stop();
}

void Clerk::enqueue(Task task, bool idle) {
  ++(idle ? unansweredIdle_ : unanswered_);
  {
    const std::lock_guard lock(mutex_);
    (idle ? waitingIdle_ : waiting_).push_back(std::move(task));
  }
  wake_.notify_one();
  if (!idle) emit busyChanged();
}

void Clerk::work(const std::stop_token& quit) {
  while (!quit.stop_requested()) {
    Task task;
    bool idle = false;
    {
      std::unique_lock lock(mutex_);
      if (!wake_.wait(lock, quit, [this] { return !waiting_.empty() || !waitingIdle_.empty(); })) break;
      idle = waiting_.empty();
      auto& queue = idle ? waitingIdle_ : waiting_;
      task = std::move(queue.front());
      queue.pop_front();
    }
    QMetaObject::invokeMethod(
        this, [this, then = carryOut(task), idle] { answer(then, idle); }, Qt::QueuedConnection);
  }
  larder_.reset();  // closed where it was opened
}

std::function<void()> Clerk::carryOut(const Task& task) {
  try {
    if (!larder_) larder_ = opener_();
    return task(*larder_);
  } catch (const Refusal& refusal) {
    return [this, refusal] { emit refused(refusal); };
  } catch (const std::exception& error) {
    return [this, refusal = Refusal(QString::fromUtf8(error.what()))] { emit refused(refusal); };
  }
}

void Clerk::answer(const std::function<void()>& then, bool idle) {
  --(idle ? unansweredIdle_ : unanswered_);
  then();
  if (!idle) emit busyChanged();
}

}  // namespace tarebowl::ui
