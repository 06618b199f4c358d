// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <condition_variable>
#include <exception>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <utility>

namespace tarebowl::ui {

/// Long work on a thread of its own, one piece at a time, with progress. A newer piece replaces an older one,
/// whether that still waits or already runs; only what the newest came to is told, on the thread that owns
/// this object.
class Errand : public QObject {
  Q_OBJECT
 public:
  /// What the work is given: when to stop, and where to say how far it is (0 … 1).
  struct Terms {
    std::stop_token stop{};
    std::function<void(double)> progress{};
  };

  explicit Errand(QObject* parent = nullptr);
  ~Errand() override;

  /// work(terms) runs on the errand's thread, then(its result) on this one. Work that throws is announced by
  /// failed() instead.
  template <class Work, class Then>
  void run(Work work, Then then) {
    start([work = std::move(work), then = std::move(then)](const Terms& terms) {
      auto result = std::make_shared<decltype(work(terms))>(work(terms));
      return std::function<void()>([result, then] { then(std::move(*result)); });
    });
  }
  /// Drops what waits or runs; nothing will be told of it.
  void cancel();
  /// Asks the work to end early; what it came to by then is told.
  void stop();
  [[nodiscard]] bool isBusy() const { return busy_; }

 signals:
  void progressed(double share);
  void failed(const std::exception_ptr& error);

 private:
  using Task = std::function<std::function<void()>(const Terms&)>;
  struct Job {
    quint64 number = 0;
    Task task;
    std::stop_source stop{};
  };
  void start(Task task);
  void loop(const std::stop_token& quit);
  [[nodiscard]] std::optional<Job> nextJob(const std::stop_token& quit);
  void carryOut(const Job& job);
  void tell(quint64 number, std::function<void()> what);

  quint64 newest_ = 0;        // this object's thread only
  bool busy_ = false;         // this object's thread only
  std::stop_source running_;  // of the newest; this object's thread only

  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::optional<Job> waiting_;  // guarded by mutex_
  std::jthread thread_;         // last: it uses all of the above
};

}  // namespace tarebowl::ui
