// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/counted_bowl.h"
#include "core/intake/tolerance.h"
#include "core/store/collection.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Reading feeding days. Every call throws StoreError; what a call returns is a snapshot.
namespace tarebowl::store {

/// Of a section, group by group by their codes; all sections where none is named.
[[nodiscard]] std::vector<intake::Bowl> bowlsOfDay(const Collection& collection, quantity::Date day,
                                                   const std::optional<std::string>& section = std::nullopt);
/// Both days are in it.
[[nodiscard]] std::vector<intake::Bowl> bowlsOfGroup(const Collection& collection, const std::string& group,
                                                     quantity::Date from, quantity::Date to);
/// What is known of a bowl beside what was in it.
struct BowlGiven {
  quantity::Date day{};
  std::string meal{};
  std::string diet{};  ///< it was fed by; empty: none
  int version = 0;     ///< of that diet
};
/// In the order of days and bowls; both days are in it.
[[nodiscard]] std::vector<BowlGiven> bowlsGiven(const Collection& collection, const std::string& group,
                                                quantity::Date from, quantity::Date to);
/// One bowl with everything in it; nothing where the sheet has none.
[[nodiscard]] std::optional<intake::Bowl> findBowl(const Collection& collection, const intake::BowlKey& key);

/// Reads what counts of bowls: one after another, so that years of them take no more room than a day. Kept
/// for further readings, it need not find its way to words and foods again; the collection must outlive it.
class CountedBowlReader {
 public:
  explicit CountedBowlReader(const Collection& collection);
  CountedBowlReader(CountedBowlReader&& other) noexcept;
  CountedBowlReader& operator=(CountedBowlReader&& other) noexcept;
  ~CountedBowlReader();

  /// In the order of groups, days and bowls. group: all where none is named.
  void read(const std::optional<std::string>& group, quantity::Date from, quantity::Date to,
            const std::function<void(const intake::CountedBowl&)>& take);

  /// What read() of a group tells of diet and foods, for a tenth of the work: so it is known what is going to
  /// be asked next. A food that was swapped for another is among them.
  struct Fed {
    std::vector<std::string> foods{};         ///< by their codes, each once
    std::string diet{};                       ///< that the last bowl with a diet was fed by
    std::optional<quantity::Date> lastDay{};  ///< of that bowl
  };
  [[nodiscard]] Fed fed(const std::string& group, quantity::Date from, quantity::Date to);

 private:
  class Inner;
  std::unique_ptr<Inner> inner_;
};

/// Pans that stood in one place, with what a correction is worked out from: no times, nobody's name.
[[nodiscard]] std::vector<intake::ControlPan> pansOfPlace(const Collection& collection,
                                                          const std::string& place, quantity::Date from,
                                                          quantity::Date to);

/// The same of the place where a group's pans stand: its section, which need not be known.
[[nodiscard]] std::vector<intake::ControlPan> pansOfGroup(const Collection& collection,
                                                          const std::string& group, quantity::Date from,
                                                          quantity::Date to);

/// The first and the last day of these on which the group has a bowl; nothing where it has none.
struct FedSpan {
  quantity::Date first{};
  quantity::Date last{};
};
[[nodiscard]] std::optional<FedSpan> fedSpan(const Collection& collection, const std::string& group,
                                             quantity::Date from, quantity::Date to);

/// The rule of weighing of the house, or the default.
[[nodiscard]] intake::ToleranceRule toleranceRule(const Collection& collection);

}  // namespace tarebowl::store
