// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_clock.h"

#include "core/store/opening.h"
#include "core/store/row_query.h"
#include "core/store/server_address.h"

#include <fmt/format.h>

namespace tarebowl::store {

using std::chrono::seconds;

seconds aheadOfServer(const Collection& collection, const std::function<Instant()>& clock) {
  if (!isServerAddress(collection.file())) return seconds(0);
  return guarded(collection.file(), [&] {
    const Instant before = clock();
    RowQuery rows(collection.inner().connection,
                  "SELECT CAST(EXTRACT(EPOCH FROM clock_timestamp()) * 1000 AS BIGINT)");
    long long server = 0;
    (void)rows.next(server);
    const Instant halfWay = before + (clock() - before) / 2;
    const auto here = std::chrono::round<std::chrono::milliseconds>(halfWay.time_since_epoch());
    return std::chrono::round<seconds>(here - std::chrono::milliseconds(server));
  });
}

void refuseOtherTime(const Collection& collection, const std::function<Instant()>& clock) {
  const seconds ahead = aheadOfServer(collection, clock);
  if (ahead <= kClocksAgree && ahead >= -kClocksAgree) return;
  const auto minutes = std::chrono::round<std::chrono::minutes>(std::chrono::abs(ahead)).count();
  throw StoreError(
      StoreErrorCode::Refused, collection.file(),
      fmt::format(
          "this machine's clock and the server's disagree, and what was written now would stand at a wrong "
          "time. Nothing was written: set the clock, and do it again ({} min {})",
          minutes, ahead > seconds(0) ? "ahead of the server" : "behind the server"));
}

}  // namespace tarebowl::store
