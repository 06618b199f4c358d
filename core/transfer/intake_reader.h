// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/intake/eaten.h"
#include "core/intake/from_records.h"
#include "core/store/feeding_reading.h"
#include "core/store/larder_reading.h"
#include "core/transfer/held_days.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <unordered_set>
#include <vector>

namespace tarebowl::transfer {

/// Food groups of which the house states that they neither dry nor draw water overnight, so that they need no
/// pan: powders (house rule, no source).
[[nodiscard]] std::vector<std::string> classesWithoutPans();

/// Reads what groups were fed and ate, stretch after stretch of days; each food is read once, and the pans of
/// a place and stretch once for all groups that stand there.
class IntakeReader {
 public:
  /// place: the group's section, where its pans stand; empty where it is not known yet, as askFor() need not
  /// know it. Of the foods all values are read, with their sources.
  IntakeReader(const store::Collection& collection, std::string group, std::string place);
  /// Of no group yet. Of the foods nothing is known but these nutrients, and what dry matter and energy are
  /// worked out from.
  IntakeReader(const store::Collection& collection, std::span<const food::NutrientId> nutrients);
  void turnTo(std::string group, std::string place);

  struct Stretch {
    std::vector<intake::FedBowl> fed{};      ///< in order of days and bowls
    std::vector<intake::EatenBowl> eaten{};  ///< one for each of them
    std::size_t pans = 0;                    ///< of these days and those around them that may be borrowed
    std::size_t pansOfDays = 0;              ///< of these days alone
    std::string diet{};                      ///< that the last bowl was fed by
    std::optional<quantity::Date> fedOn{};   ///< the day of that bowl
  };
  /// Both days are in it. Pans are those of the place, a week around the days too, to borrow from. A reading
  /// is as fine as the finest of these days: a scale that showed 12.3 g shows tenths. Throws StoreError.
  [[nodiscard]] Stretch read(quantity::Date from, quantity::Date to);

  /// Keeps the bowls of these days, and their pans, in memory, so that stretches among them are not asked one
  /// by one. Of a group that it does not turn from, and for no more days than memory bears. Throws
  /// StoreError.
  void hold(quantity::Date from, quantity::Date to);

  /// Within a job that reads together: asks ahead what read() will ask. Returns what is known of it so far.
  store::CountedBowlReader::Fed askFor(quantity::Date from, quantity::Date to);

  /// Foods of all that was read so far, by their codes; nothing for one that the collection does not hold.
  [[nodiscard]] const std::map<std::string, std::optional<diet::DietFood>>& foods() const { return foods_; }

 private:
  const std::optional<diet::DietFood>& food(const std::string& code);
  [[nodiscard]] intake::FoodKind kindOf(const std::string& code, quantity::Grams step);
  /// Pans that stood in a place around a stretch, and how many they are.
  struct Pans {
    std::string place{};
    quantity::Date from{};
    quantity::Date to{};
    quantity::Grams step{};
    std::size_t count = 0;
    std::size_t ofDays = 0;
    intake::PanBook book;
  };
  [[nodiscard]] bool holds(quantity::Date from, quantity::Date to) const {
    return held_ && held_->hold(from, to);
  }
  void readBowls(quantity::Date from, quantity::Date to,
                 const std::function<void(const intake::CountedBowl&)>& take);
  [[nodiscard]] store::CountedBowlReader::Fed fedIn(quantity::Date from, quantity::Date to);
  /// All foods of what is held, where it is, so that they are asked once.
  void expectFoods(const store::CountedBowlReader::Fed& fed);
  [[nodiscard]] std::vector<intake::ControlPan> pansAround(quantity::Date from, quantity::Date to) const;
  const Pans& pansOf(quantity::Date from, quantity::Date to, quantity::Grams step);

  const store::Collection& collection_;
  store::CountedBowlReader bowls_;
  store::NamedFoodReader foodOf_;
  std::string group_;
  std::string place_;
  bool turns_ = false;  ///< from group to group: the pans of a place are asked once for all who stand there
  std::map<std::string, std::optional<diet::DietFood>> foods_;
  std::unordered_set<std::string> askedFor_;  ///< foods, once for all groups and stretches
  std::optional<Pans> pans_;                  ///< the last that were read
  std::optional<HeldDays> held_;
};

}  // namespace tarebowl::transfer
