// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/measure.h"
#include "core/intake/eaten.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

/// Days taken together: what a chart of years shows in one point.
namespace tarebowl::intake {

/// One food, grams of all animals. Offered and eaten are of the days on which everything is known, so that
/// one can be held against the other.
struct StretchFood {
  std::string food{};
  double offered = 0.0;
  double eaten = 0.0;
  std::size_t bowls = 0;  ///< with this food whose leftover of it is known
  std::size_t bowlsNotKnown = 0;
};

/// How the mean day of a stretch stands against a rule, per animal.
struct StretchValue {
  std::string id{};  ///< of the target or ratio
  std::optional<double> offered{};
  std::optional<double> eaten{};  ///< nothing where no day is known
  double sd = 0.0;                ///< of eaten: weighing, water, parts by eye, and composition
  double coverage = 1.0;          ///< of eaten
  bool atLeast = false;           ///< some food's value is unknown and could only add
  diet::TargetState state = diet::TargetState::Unknown;  ///< of eaten
};

struct IntakeStretch {
  quantity::Date from{};
  quantity::Date until{};
  std::size_t days = 0;        ///< with a bowl
  std::size_t daysKnown = 0;   ///< on which what was eaten is known of every food
  std::size_t bowls = 0;       ///< of all these days
  std::size_t bowlsKnown = 0;  ///< of the days that are known: what stands behind the numbers
  double animalDays = 0.0;     ///< of the days that are known: one for each animal on each day
  std::vector<StretchFood> foods{};
  std::vector<StretchValue> values{};
};

/// The targets and ratios of a problem, over its foods, ready to be worked out for one stretch after another.
class Followed {
 public:
  /// Foods are taken as eaten whole: bowls say what is eaten.
  explicit Followed(diet::BalanceProblem problem);

  /// bowls: of these days and in order. Where no day is known, what was offered is of all days. What is eaten
  /// of a food counts as no less than nothing. To first order, as Uncertain.
  [[nodiscard]] IntakeStretch over(quantity::Date from, quantity::Date until,
                                   std::span<const EatenBowl> bowls) const;

  /// What one animal ate on a day: grams of everything, then a value for each rule. Nothing where not all of
  /// the day is known.
  [[nodiscard]] std::vector<std::optional<double>> onDay(std::span<const EatenBowl> bowls) const;

 private:
  struct Grams;
  [[nodiscard]] Grams gramsOf(std::span<const EatenBowl> bowls) const;
  [[nodiscard]] std::size_t placeOf(const std::string& food) const;
  [[nodiscard]] double measuringSd(const diet::Measure& measure, const Grams& grams, double value,
                                   std::span<const EatenBowl> bowls) const;

  diet::BalanceProblem problem_;
  std::vector<diet::Measure> measures_;
  std::unordered_map<std::string, std::size_t> places_;
};

}  // namespace tarebowl::intake
