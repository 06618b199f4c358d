// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"
#include "core/store/collection.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

/// A desk's own copy of what the kitchen needs of a collection on a server: a collection file with the foods,
/// groups and diets, and with what was fed on the days around today. The kitchen goes on from it while the
/// server is away (station_outbox.h). Nothing that the desk wrote is lost when the copy is taken anew. Every
/// call throws StoreError.
namespace tarebowl::store {

/// The person's own folder of such files: that of their programs' data, as the system names it.
[[nodiscard]] std::filesystem::path stationFolder();
/// Where the copy of a collection lies in it.
[[nodiscard]] std::filesystem::path stationFile(const std::filesystem::path& folder,
                                                const std::filesystem::path& address);

/// Opens the desk's file, and makes it where there is none: only its owner may read it.
[[nodiscard]] Collection openStation(const std::filesystem::path& file, const Author& author);

/// What a desk's file is a copy of.
struct StationCopy {
  std::string server{};  ///< its address
  quantity::Date from{};
  quantity::Date until{};  ///< both in it
  std::string takenAt{};   ///< ISO 8601 UTC

  [[nodiscard]] bool has(quantity::Date day) const { return from <= day && day <= until; }
};
/// Nothing where none was taken yet.
[[nodiscard]] std::optional<StationCopy> stationCopy(const Collection& station);

enum class CopyExtent {
  All,
  Kitchen  ///< what was fed, swaps, pans, lots: where nothing else was touched since the last time
};

/// What a server holds for a desk, all of it as of one moment.
class ServerRows {
 public:
  /// today: of the days around it. at: now.
  [[nodiscard]] static ServerRows read(Collection& server, quantity::Date today, CopyExtent extent,
                                       const std::string& at);

 private:
  friend void takeCopy(Collection& station, const ServerRows& rows);
  struct Content;
  std::shared_ptr<const Content> content_;
};

/// Makes the copy what the server is, and writes what still waits upon it again. One transaction, which
/// writes no more than what differs.
void takeCopy(Collection& station, const ServerRows& rows);

}  // namespace tarebowl::store
