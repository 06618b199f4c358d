// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/child.h"

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <exception>
#include <stdexcept>
#include <thread>

namespace tarebowl::faults {

namespace {

[[noreturn]] void runAndEnd(int pipe, const std::function<void(const Child::Tell&)>& work) {
  try {
    work([pipe](int number) {
      if (::write(pipe, &number, sizeof number) != sizeof number) ::_exit(3);
    });
  } catch (const std::exception&) {
    ::_exit(2);
  }
  ::_exit(0);
}

}  // namespace

Child::Child(const std::function<void(const Tell&)>& work) {
  std::array<int, 2> ends{};
  if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
  pid_ = ::fork();
  if (pid_ < 0) throw std::runtime_error("no process");
  if (pid_ == 0) {
    ::close(ends[0]);
    runAndEnd(ends[1], work);
  }
  ::close(ends[1]);
  pipe_ = ends[0];
}

Child::~Child() {
  if (running_) ::kill(pid_, SIGKILL);
  wait();
  ::close(pipe_);
}

void Child::readOn(bool once) {
  int number = 0;
  while (::read(pipe_, &number, sizeof number) == sizeof number) {
    told_.push_back(number);
    if (once) return;
  }
}

void Child::wait() {
  if (running_) ::waitpid(pid_, &status_, 0);
  running_ = false;
}

void Child::killAfter(std::chrono::microseconds delay) {
  readOn(true);
  std::this_thread::sleep_for(delay);
  ::kill(pid_, SIGKILL);
}

std::vector<int> Child::told() {
  readOn(false);
  wait();
  return told_;
}

bool Child::endedWell() {
  (void)told();
  return WIFEXITED(status_) && WEXITSTATUS(status_) == 0;
}

}  // namespace tarebowl::faults
