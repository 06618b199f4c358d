// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

/// Counts what a piece of work holds at a time. The allocation functions of this test program are replaced
/// by counting ones; the database engine, which has its own, is asked.
namespace tarebowl::transfer {

class AllocationPeak {
 public:
  /// Begins at what is held now.
  AllocationPeak();
  /// Bytes held at most since then, beyond what was held at the beginning.
  [[nodiscard]] std::size_t ofProgram() const;
  [[nodiscard]] std::size_t ofEngine() const;

 private:
  std::size_t programBefore_;
  std::size_t engineBefore_;
};

}  // namespace tarebowl::transfer
