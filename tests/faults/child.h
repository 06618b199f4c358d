// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <chrono>
#include <functional>
#include <vector>

namespace tarebowl::faults {

/// Work in a process of its own, which tells its parent numbers and may be killed at any moment. A number
/// that was told was told before the death: the pipe keeps it.
class Child {
 public:
  using Tell = std::function<void(int)>;
  explicit Child(const std::function<void(const Tell&)>& work);
  ~Child();
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  /// Waits for the first number, then kills the child so much later as with kill -9.
  void killAfter(std::chrono::microseconds delay);
  /// Everything told until the child ended.
  std::vector<int> told();
  /// Whether it ended by itself without an error that the work let through.
  bool endedWell();

 private:
  void readOn(bool once);
  void wait();

  pid_t pid_ = 0;
  int pipe_ = -1;
  bool running_ = true;
  int status_ = 0;
  std::vector<int> told_;
};

}  // namespace tarebowl::faults
