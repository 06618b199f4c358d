// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/clerk.h"

#include "core/store/backup.h"
#include "core/store/server_address.h"
#include "ui/collection/store_error_text.h"

#include <QMetaObject>

#include <exception>

namespace tarebowl::ui {

namespace {

/// Not what it should be, where a copy from before or what can still be read may help. A file of another
/// program is none that was damaged, unless it has copies of a collection beside it.
bool isUnsound(const store::StoreError& error) {
  using store::StoreErrorCode;
  return error.code() == StoreErrorCode::Damaged || error.code() == StoreErrorCode::Untrusted ||
         (error.code() == StoreErrorCode::NotACollection && error.backup());
}

}  // namespace

Clerk::Clerk(CollectionOpener opener, QObject* parent)
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
  for (;;) {
    Task task;
    bool idle = false;
    {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, quit, [this] { return !waiting_.empty() || !waitingIdle_.empty(); });
      // What was asked for is still done when the window closes: an edit is never lost. What is idle is not.
      if (waiting_.empty() && (quit.stop_requested() || waitingIdle_.empty())) break;
      idle = waiting_.empty();
      auto& queue = idle ? waitingIdle_ : waiting_;
      task = std::move(queue.front());
      queue.pop_front();
    }
    QMetaObject::invokeMethod(
        this, [this, then = carryOut(task), idle] { answer(then, idle); }, Qt::QueuedConnection);
  }
  collection_.reset();  // closed where it was opened
}

std::function<void()> Clerk::carryOut(const Task& task) {
  Refusal refusal;
  try {
    if (!collection_) {
      refusal.cannotOpen = true;
      collection_ = std::make_unique<store::Collection>(opener_());
      refusal.cannotOpen = false;
    }
    return task(*collection_);
  } catch (const std::exception& error) {
    const bool cannotOpen = refusal.cannotOpen;
    refusal = refusalOf(error);
    refusal.cannotOpen = cannotOpen;
    // Opening has looked for one already.
    if (refusal.isDamaged && collection_) refusal.backup = store::newestSoundBackup(collection_->file());
  }
  return [this, refusal] { emit refused(refusal); };
}

void Clerk::answer(const std::function<void()>& then, bool idle) {
  --(idle ? unansweredIdle_ : unanswered_);
  then();
  if (!idle) emit busyChanged();
}

Refusal refusalOf(const std::exception& error) {
  if (const auto* conflict = dynamic_cast<const store::ConflictError*>(&error))
    return {.why = Clerk::tr("This was changed elsewhere since it was read; nothing of yours was written."),
            .mine = QString::fromStdString(conflict->mine()),
            .theirs = QString::fromStdString(conflict->theirs())};
  Refusal refusal{.why = QString::fromUtf8(error.what())};
  if (const auto* told = dynamic_cast<const store::StoreError*>(&error)) {
    refusal.why = storeErrorText(*told);
    refusal.isDamaged = isUnsound(*told);
    refusal.isEmptyDatabase =
        told->code() == store::StoreErrorCode::NotACollection && store::isServerAddress(told->file());
    refusal.isServerAway = told->code() == store::StoreErrorCode::NoServer;
    refusal.backup = told->backup();
  }
  return refusal;
}

}  // namespace tarebowl::ui
