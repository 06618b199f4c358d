// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/store_error.h"

#include <QObject>
#include <QString>

#include <condition_variable>
#include <deque>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <utility>

namespace tarebowl::ui {

/// Opens a collection; called on the thread that will use it.
using CollectionOpener = std::function<store::Collection()>;

/// Something that was refused or failed, with nothing written. Where another window was faster, both
/// versions.
struct Refusal {
  QString why{};
  QString mine{};
  QString theirs{};
  bool cannotOpen = false;
  bool isEmptyDatabase = false;                   ///< on a server, where a collection can be made
  bool isServerAway = false;                      ///< it does not answer, or hung up
  bool isDamaged = false;                         ///< what can still be read of it can be salvaged
  std::optional<std::filesystem::path> backup{};  ///< a sound copy from before, where one is known
};

/// Reads and writes a collection on a thread of its own, so that the window never waits for the disk. What is
/// asked is answered in order, on the thread that owns this object; what is asked for when idle comes after
/// everything else.
class Clerk : public QObject {
  Q_OBJECT
 public:
  explicit Clerk(CollectionOpener opener, QObject* parent = nullptr);
  ~Clerk() override;

  /// job(store::Collection&) runs on the clerk's thread, then(its result) on this one. A job that throws is
  /// announced by refused() instead.
  template <class Job, class Then>
  void ask(Job job, Then then) {
    enqueue(asTask(std::move(job), std::move(then)), false);
  }
  template <class Job, class Then>
  void askWhenIdle(Job job, Then then) {
    enqueue(asTask(std::move(job), std::move(then)), true);
  }
  /// Something that was asked is not answered yet, idle jobs aside.
  [[nodiscard]] bool isBusy() const { return unanswered_ > 0; }
  [[nodiscard]] bool isIdle() const { return unanswered_ == 0 && unansweredIdle_ == 0; }

 signals:
  void refused(const tarebowl::ui::Refusal& refusal);
  void busyChanged();

 private:
  /// What it returns runs on the owner's thread.
  using Task = std::function<std::function<void()>(store::Collection&)>;

  template <class Job, class Then>
  static Task asTask(Job job, Then then) {
    return [job = std::move(job), then = std::move(then)](store::Collection& collection) {
      auto result = std::make_shared<decltype(job(collection))>(job(collection));
      return std::function<void()>([result, then] { then(std::move(*result)); });
    };
  }
  void enqueue(Task task, bool idle);
  void work(const std::stop_token& quit);
  void answer(const std::function<void()>& then, bool idle);
  [[nodiscard]] std::function<void()> carryOut(const Task& task);

  CollectionOpener opener_;
  int unanswered_ = 0;                             // this object's thread only
  int unansweredIdle_ = 0;                         // this object's thread only
  std::unique_ptr<store::Collection> collection_;  // the clerk's thread only
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::deque<Task> waiting_;      // guarded by mutex_
  std::deque<Task> waitingIdle_;  // guarded by mutex_
  std::jthread thread_;           // last: it uses all of the above
};

/// What went wrong, as a person reads it.
[[nodiscard]] Refusal refusalOf(const std::exception& error);

}  // namespace tarebowl::ui
