// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/solve.h"

#include <QObject>

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace tarebowl::ui {

/// Solves on a thread of its own while a hand moves. A newer request replaces an older one, whether that
/// still waits or already runs; only answers to the newest are announced, on the thread that owns this
/// object. A problem that is not closed at once is announced with the best bowl so far, and again when it is
/// proved or patience has run out.
class LiveSolver : public QObject {
  Q_OBJECT
 public:
  using Function = std::function<diet::DietSolution(const diet::BalanceProblem&, const diet::SolveOptions&)>;

  explicit LiveSolver(Function solve, QObject* parent = nullptr);
  ~LiveSolver() override;

  void request(diet::BalanceProblem problem);
  /// Drops what waits or runs; nothing will be announced for it.
  void cancel();
  [[nodiscard]] bool isBusy() const { return busy_; }

 signals:
  /// isBusy() tells whether a better answer may follow.
  void solved(const tarebowl::diet::DietSolution& solution);

 private:
  struct Job {
    quint64 number = 0;
    diet::BalanceProblem problem;
  };

  void work(const std::stop_token& quit);
  [[nodiscard]] std::optional<Job> nextJob(const std::stop_token& quit, std::stop_source& running);
  void solveInGoes(const Job& job, const std::stop_token& stop);
  [[nodiscard]] diet::DietSolution solveSafely(const Job& job, const diet::SolveOptions& options) const;
  void announce(quint64 number, const diet::DietSolution& solution, bool last);

  Function solve_;
  quint64 newest_ = 0;  // this object's thread only
  bool busy_ = false;   // this object's thread only

  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::optional<Job> waiting_;  // guarded by mutex_
  std::stop_source running_;    // guarded by mutex_: stops the job at work
  std::jthread thread_;         // last: it uses all of the above
};

}  // namespace tarebowl::ui
