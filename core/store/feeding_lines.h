// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
#include "core/store/feeding_words.h"

#include <optional>
#include <string>

/// Lines of feeding sheets as they stand in the file, for the verbs. Inside the running transaction.
namespace tarebowl::store {

/// Where a line stands.
struct LinePlace {
  long long group = 0;
  int day = 0;
  int bowl = 0;
  int item = 0;
};

/// Which of the three things that are written of a bowl.
enum class EntryKind { Weight = 0, Leftover = 1, Remainder = 2 };

/// What is written, whatever it is of: kind and lost are of leftovers alone.
struct EntryValue {
  std::optional<int> leftKind{};
  std::optional<long long> mg{};
  std::optional<long long> lost{};
};

/// One verb's way to the lines of the sheet.
class FeedingLines {
 public:
  FeedingLines(Collection::Inner& inner, const Author& author);

  /// Throws StoreError (Refused) where the sheet has no such bowl.
  [[nodiscard]] LinePlace placeOf(const intake::BowlKey& key);
  /// … no such food, or one that another was given in place of.
  [[nodiscard]] LinePlace placeOf(const intake::ItemKey& key);

  void addBowl(long long group, const intake::Bowl& bowl, std::optional<long long> version);
  void addLine(const LinePlace& place, const intake::BowlItem& item);
  /// Writes the first entry; false where there is one.
  [[nodiscard]] bool writeFirst(EntryKind kind, const LinePlace& place, const EntryValue& value);
  /// Writes one after the first. reason: empty for a second one.
  void writeLater(EntryKind kind, const LinePlace& place, const EntryValue& value, const std::string& reason);

 private:
  [[nodiscard]] long long secondsOf(int day) const;

  Collection::Inner& inner_;
  const Author& author_;
  FeedingWords words_;
  FedFoods foods_;
  PreparedStatement bowl_, line_, weight_, leftover_, rest_, later_, findBowl_, findLine_;
  std::unordered_map<std::string, long long> groups_;
};

/// "bowl 1 of tenrecs on 2026-11-25".
[[nodiscard]] std::string nameOf(const intake::BowlKey& key);

}  // namespace tarebowl::store
