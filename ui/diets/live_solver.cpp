// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/live_solver.h"

#include <QMetaObject>

#include <exception>
#include <utility>

namespace tarebowl::ui {
namespace {

/// While a person waits, a good answer with its gap now is worth more than a proof later.
constexpr std::chrono::milliseconds kPatience{4000};

}  // namespace

LiveSolver::LiveSolver(Function solve, QObject* parent)
    : QObject(parent),
      solve_(std::move(solve)),
      thread_([this](const std::stop_token& quit) { work(quit); }) {}

LiveSolver::~LiveSolver() {
  thread_.request_stop();
  const std::lock_guard lock(mutex_);
  running_.request_stop();
}

void LiveSolver::request(diet::BalanceProblem problem) {
  busy_ = true;
  {
    const std::lock_guard lock(mutex_);
    running_.request_stop();
    waiting_ = Job{++newest_, std::move(problem)};
  }
  wake_.notify_one();
}

void LiveSolver::cancel() {
  busy_ = false;
  ++newest_;
  const std::lock_guard lock(mutex_);
  running_.request_stop();
  waiting_.reset();
}

void LiveSolver::work(const std::stop_token& quit) {
  while (!quit.stop_requested()) {
    std::stop_source running;
    const std::optional<Job> job = nextJob(quit, running);
    if (!job) return;
    diet::DietSolution solution = solveSafely(*job, running.get_token());
    if (running.stop_requested()) continue;
    QMetaObject::invokeMethod(
        this, [this, number = job->number, solution = std::move(solution)] { announce(number, solution); },
        Qt::QueuedConnection);
  }
}

std::optional<LiveSolver::Job> LiveSolver::nextJob(const std::stop_token& quit, std::stop_source& running) {
  std::unique_lock lock(mutex_);
  if (!wake_.wait(lock, quit, [this] { return waiting_.has_value(); })) return std::nullopt;
  running_ = running;
  return std::exchange(waiting_, std::nullopt);
}

diet::DietSolution LiveSolver::solveSafely(const Job& job, const std::stop_token& stop) const {
  try {
    return solve_(job.problem, diet::SolveOptions{.deadline = kPatience, .stop = stop});
  } catch (const std::exception& error) {
    diet::DietSolution failed;
    failed.status = diet::DietStatus::Failed;
    failed.reason = error.what();
    return failed;
  }
}

void LiveSolver::announce(quint64 number, const diet::DietSolution& solution) {
  if (number != newest_) return;
  busy_ = false;
  emit solved(solution);
}

}  // namespace tarebowl::ui
