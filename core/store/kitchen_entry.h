// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
#include "core/store/collection.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// One thing that somebody in the kitchen writes down of a bowl, complete in itself: it can be written at
/// once, or kept and written later, elsewhere.
namespace tarebowl::store {

enum class Noted { Weight, Leftover, Remainder };

/// kind and lost: of a leftover alone.
struct NotedValue {
  std::optional<intake::LeftoverKind> kind{};
  std::optional<quantity::Grams> grams{};
  std::optional<quantity::Grams> lost{};
  bool operator==(const NotedValue&) const = default;
};

struct SignedValue {
  NotedValue value{};
  intake::Signed by{};
  bool operator==(const SignedValue&) const = default;
};

struct KitchenEntry {
  std::int64_t id = 0;  ///< drawn at random, above 0: by it the entry is known again wherever it is sent
  std::string section{};
  intake::Bowl bowl{};                 ///< as the sheet showed it, without what was written of it
  std::vector<intake::Bowl> beside{};  ///< of the sheet, opened with it where they are not yet
  Noted noted = Noted::Weight;
  int item = 0;  ///< of the bowl; 0: of a remainder
  NotedValue value{};
  std::string reason{};              ///< of a correction
  std::optional<NotedValue> seen{};  ///< what counted there when this was written
  Author author{};                   ///< who wrote it, and when

  [[nodiscard]] const std::string& food() const;  ///< of the item; empty of a remainder
};

/// What counts of a food of the bowl, or of all foods together; nothing where nothing is written.
[[nodiscard]] std::optional<SignedValue> valueThatCounts(const intake::Bowl& bowl, int item, Noted noted);

/// Whether exactly this was written there: by the same hand, in the same second.
[[nodiscard]] bool isWritten(const intake::Bowl& bowl, int item, Noted noted, const SignedValue& what);

/// A bowl as a sheet plans it, without what was written of it or given instead.
[[nodiscard]] intake::Bowl asPlanned(intake::Bowl bowl);

}  // namespace tarebowl::store
