// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/errand.h"

#include <QMetaObject>

namespace tarebowl::ui {
namespace {

constexpr int kProgressSteps = 1000;

}  // namespace

Errand::Errand(QObject* parent)
    : QObject(parent), thread_([this](const std::stop_token& quit) { loop(quit); }) {}

Errand::~Errand() {
  thread_.request_stop();
  running_.request_stop();
}

void Errand::start(Task task) {
  busy_ = true;
  running_.request_stop();
  running_ = std::stop_source();
  {
    const std::lock_guard lock(mutex_);
    waiting_ = Job{++newest_, std::move(task), running_};
  }
  wake_.notify_one();
}

void Errand::cancel() {
  busy_ = false;
  ++newest_;
  running_.request_stop();
  const std::lock_guard lock(mutex_);
  waiting_.reset();
}

void Errand::stop() {
  running_.request_stop();
}

void Errand::loop(const std::stop_token& quit) {
  while (!quit.stop_requested()) {
    const std::optional<Job> job = nextJob(quit);
    if (!job || quit.stop_requested()) return;
    carryOut(*job);
  }
}

std::optional<Errand::Job> Errand::nextJob(const std::stop_token& quit) {
  std::unique_lock lock(mutex_);
  if (!wake_.wait(lock, quit, [this] { return waiting_.has_value(); })) return std::nullopt;
  return std::exchange(waiting_, std::nullopt);
}

void Errand::carryOut(const Job& job) {
  int told = -1;
  const Terms terms{job.stop.get_token(), [&, this](double share) {
                      const int step = static_cast<int>(share * kProgressSteps);
                      if (step == std::exchange(told, step)) return;
                      tell(job.number, [this, share] { emit progressed(share); });
                    }};
  std::function<void()> then;
  try {
    then = job.task(terms);
  } catch (...) {
    then = [this, error = std::current_exception()] { emit failed(error); };
  }
  tell(job.number, [this, then] {
    busy_ = false;
    then();
  });
}

void Errand::tell(quint64 number, std::function<void()> what) {
  QMetaObject::invokeMethod(
      this,
      [this, number, what = std::move(what)] {
        if (number == newest_) what();
      },
      Qt::QueuedConnection);
}

}  // namespace tarebowl::ui
