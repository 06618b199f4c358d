// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace tarebowl::store {

/// What a verb left: the thing with its new revision, and the entry of the log, by which it is undone.
struct Written {
  std::int64_t id = 0;
  int revision = 0;
  std::int64_t change = 0;
};

}  // namespace tarebowl::store
