// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/together.h"

#include "core/store/write.h"

namespace tarebowl::store {

void together(Collection& collection, const std::function<void()>& verbs) {
  write(collection, [&](Collection::Inner& /*unused*/) {
    verbs();
    return true;
  });
}

}  // namespace tarebowl::store
