// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "core/solver/solve.h"

#include <chrono>
#include <cstdint>

namespace tarebowl::diet {

/// Time and nodes that a search may take, and what it has taken of them.
class RotationEffort {
 public:
  explicit RotationEffort(const RotationOptions& options);

  [[nodiscard]] bool isOver() const;
  [[nodiscard]] std::int64_t most() const { return most_; }    ///< nodes that may be taken in all
  [[nodiscard]] std::int64_t nodes() const { return nodes_; }  ///< that are taken
  [[nodiscard]] const std::stop_token& stop() const { return stop_; }
  [[nodiscard]] std::chrono::steady_clock::duration time() const;
  void spend(std::int64_t nodes) { nodes_ += nodes; }
  /// Of the nodes and of the time that is left, so much; on one thread.
  [[nodiscard]] solver::Limits limits(std::int64_t nodes, double ofTime = 1.0) const;

 private:
  std::chrono::steady_clock::time_point start_;
  std::chrono::steady_clock::time_point deadline_;
  std::int64_t most_ = 0;
  std::int64_t nodes_ = 0;
  std::stop_token stop_;
};

}  // namespace tarebowl::diet
