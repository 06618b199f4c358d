// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/change_log.h"
#include "core/store/opening.h"

#include <string>
#include <utility>

namespace tarebowl::store {

/// Runs one verb: a transaction, its errors as StoreError, nothing kept in memory of what was rolled back.
template <class Work>
auto write(Collection& collection, Work&& work) {
  Collection::Inner& inner = collection.inner();
  return guarded(inner.file(), [&] {
    WriteTransaction transaction(inner.connection);
    try {
      auto result = work(inner);
      transaction.commit();
      return result;
    } catch (...) {
      inner.components.forget();
      throw;
    }
  });
}

[[noreturn]] inline void refuse(const Collection::Inner& inner, std::string why) {
  throw StoreError(StoreErrorCode::Refused, inner.file(), std::move(why));
}

}  // namespace tarebowl::store
