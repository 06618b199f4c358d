// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/live_solver.h"

#include <QMetaObject>

#include <exception>
#include <iterator>
#include <utility>

namespace tarebowl::ui {
namespace {

/// A hand that moves wants a good bowl within the frame, a hand that stops a better one; a hand that rests
/// can wait for the proof. Each go searches anew: the goes before cost a sixteenth of it at most.
constexpr std::chrono::milliseconds kPatience[] = {
    std::chrono::milliseconds(8), std::chrono::milliseconds(250), std::chrono::milliseconds(4000)};

bool isClosed(const diet::DietSolution& solution) {
  const bool hasBowl =
      solution.status == diet::DietStatus::Balanced || solution.status == diet::DietStatus::Compromise;
  return hasBowl ? solution.provenGap <= 0.0 : solution.status != diet::DietStatus::Stopped;
}

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
    if (quit.stop_requested()) return;
    solveInGoes(*job, running.get_token());
  }
}

void LiveSolver::solveInGoes(const Job& job, const std::stop_token& stop) {
  for (const std::chrono::milliseconds patience : kPatience) {
    diet::DietSolution solution = solveSafely(job, {.deadline = patience, .stop = stop});
    if (stop.stop_requested()) return;
    const bool last = isClosed(solution) || patience == std::end(kPatience)[-1];
    if (!last && solution.grams.empty()) continue;
    QMetaObject::invokeMethod(
        this, [=, this, number = job.number] { announce(number, solution, last); }, Qt::QueuedConnection);
    if (last) return;
  }
}

std::optional<LiveSolver::Job> LiveSolver::nextJob(const std::stop_token& quit, std::stop_source& running) {
  std::unique_lock lock(mutex_);
  if (!wake_.wait(lock, quit, [this] { return waiting_.has_value(); })) return std::nullopt;
  running_ = running;
  return std::exchange(waiting_, std::nullopt);
}

diet::DietSolution LiveSolver::solveSafely(const Job& job, const diet::SolveOptions& options) const {
  try {
    return solve_(job.problem, options);
  } catch (const std::exception& error) {
    diet::DietSolution failed;
    failed.status = diet::DietStatus::Failed;
    failed.reason = error.what();
    return failed;
  }
}

void LiveSolver::announce(quint64 number, const diet::DietSolution& solution, bool last) {
  if (number != newest_) return;
  busy_ = !last;
  emit solved(solution);
}

}  // namespace tarebowl::ui
