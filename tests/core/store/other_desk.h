// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <chrono>
#include <thread>

namespace tarebowl::store {

/// A file shows another's write at once; a server tells of it in its own time.
inline bool hearsOfWrite(Collection& collection) {
  constexpr int kMostTries = 3000;
  for (int tries = 0; tries < kMostTries; ++tries) {
    if (collection.changedElsewhere()) return true;
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  return false;
}

}  // namespace tarebowl::store
