// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/calcium_review.h"
#include "core/health/look_back.h"
#include "core/store/health_verbs.h"
#include "core/transfer/intake_period.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// What was seen, weighed and eaten, on one time axis: a snapshot of the collection.
namespace tarebowl::transfer {

/// A group as a whole, or one animal with the bowl of its group.
struct HealthSubject {
  std::string group{};
  std::string individual{};  ///< empty: the group as a whole
  bool operator==(const HealthSubject&) const = default;
};

struct MassSeen {
  std::string who{};  ///< code of the animal or group
  quantity::Date day{};
  double kilograms = 0.0;
};

/// A condition score with the ends of its scale.
struct ConditionSeen {
  std::string who{};
  quantity::Date day{};
  std::string scale{};  ///< its name
  double score = 0.0;
  double lowest = 1.0;
  double highest = 9.0;
};

/// From this day on the bowls were fed by this version of a diet.
struct DietBegun {
  quantity::Date day{};
  std::string diet{};  ///< empty: fed as before there were diets
  int version = 0;
};

struct HealthPeriod {
  HealthSubject subject{};
  std::string name{};  ///< of the animal or the group
  quantity::Date from{};
  quantity::Date to{};
  IntakePeriod intake{};
  std::vector<health::BowlEaten> bowls{};                ///< for look-backs
  std::vector<store::StoredObservation> observations{};  ///< of the subject and, of a group, of its members
  std::vector<MassSeen> masses{};                        ///< in order of days
  std::vector<ConditionSeen> conditions{};               ///< the same
  std::optional<quantity::Kilograms> bodyMass{};         ///< per animal, on the last day
  std::vector<DietBegun> diets{};
  std::map<quantity::Date, int> animals{};
  std::map<std::string, std::string> foodNames{};  ///< by code
  [[nodiscard]] bool sharesItsBowl() const {
    return !subject.individual.empty() && intake.group.headcount.value_or(1) > 1;
  }
};

/// Both days are in it. Nothing where there is no such group or animal, or the animal was in no group on the
/// last day. Throws StoreError.
[[nodiscard]] std::optional<HealthPeriod> readHealth(const store::Collection& collection,
                                                     const HealthSubject& subject, quantity::Date from,
                                                     quantity::Date to);

/// The last day up to `until` on which anything was written down of a subject: a bowl of its group, what was
/// seen of it or of a member of the group on that day, a mass, a condition score. Nothing where nothing was.
[[nodiscard]] std::optional<quantity::Date> lastRecordOf(const store::Collection& collection,
                                                         const HealthSubject& subject, quantity::Date until);

/// What a review is asked beside the period.
struct CalciumAsked {
  std::string supplement{};  ///< code of a food; empty: none
  double retained = 1.0;     ///< of the supplement, and of every dust among the bowls' foods
  double eaten = 1.0;        ///< of what is retained
};
/// Dusts are foods of classesWithoutPans(). Targets are those of the group in force on the last day.
[[nodiscard]] health::CalciumReview calciumOf(const store::Collection& collection, const HealthPeriod& period,
                                              const CalciumAsked& asked);

/// When a bowl of a meal counts as given, in minutes after midnight: morning 8, noon 12, afternoon 15,
/// evening 17, night 20 o'clock, and 8 where nobody said. House rule, no source.
[[nodiscard]] int givenAt(const std::string& meal);

/// Days on which somebody looked for a kind of sign, the sign among them. Faeces and appetite are looked for
/// where they were written down; anything else on all days of the period. What was found in the morning
/// counts as found at 8, before that day's first bowl.
[[nodiscard]] std::vector<health::LookedOn> looksFor(const HealthPeriod& period, health::SignKind kind);

/// From a sign on a day of the period. Nothing where no such sign was seen on that day.
[[nodiscard]] std::optional<health::LookBack> lookBackFrom(const HealthPeriod& period, health::SignKind kind,
                                                           quantity::Date day,
                                                           const health::LookBackRule& rule = {});

}  // namespace tarebowl::transfer
