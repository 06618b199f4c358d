// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/eaten.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::intake {

struct Interval {
  double low = 0.0;
  double high = 0.0;
};

/// Why a food has no alpha.
enum class ChoiceState {
  Known,
  AllEaten,       ///< in more than half of its bowls nothing was left of it: ln 0, and surely picked early
  NothingEaten,   ///< nothing was eaten of any food
  RarelyOffered,  ///< in less than half of the bowls
  Alone           ///< fewer than two foods can be compared
};

struct FoodChoice {
  std::string food{};
  ChoiceState state = ChoiceState::Known;
  std::optional<double> alpha{};       ///< of the foods that have one; they sum to 1
  std::optional<Interval> interval{};  ///< of alpha; from three bowls
  std::optional<double> ivlev{};       ///< E over all bowls with this food, for comparison
  double offered = 0.0;                ///< grams in bowls whose leftovers are known
  double eaten = 0.0;
  std::size_t bowls = 0;          ///< in which it was offered and its leftover is known
  std::size_t bowlsAllEaten = 0;  ///< in which nothing was left of it
};

/// Which foods are picked first.
struct Choice {
  std::vector<FoodChoice> foods{};  ///< those with an alpha first, the largest first
  std::size_t bowls = 0;            ///< behind alpha
  std::size_t bowlsEmptied = 0;     ///< left out of it: one of its foods was eaten up there
  std::size_t bowlsNotKnown = 0;  ///< left out: a leftover is not known, or one of its foods was not offered
  double neutral = 0.0;           ///< 1 / m: alpha where nothing is preferred
};

struct ChoiceRule {
  double confidence = 0.95;
  std::vector<std::string> leaveOut{};         ///< foods that are not to be compared
  std::vector<std::string> leaveOutClasses{};  ///< nor these: what is dusted on cannot be picked
};

/// Manly's alpha with depletion, the one for a bowl that is not refilled (Manly 1974; Chesson 1978, both from
/// memory): alpha_i = D_i / sum of D_j, D_i = sum over bowls of -ln(1 - eaten / offered). The foods compared
/// are those offered in at least half of the bowls and not eaten up in more than half of theirs; the bowls
/// those in which all of them were offered, are known, and none was eaten up. A negative eaten (an error of
/// weighing) counts as it is.
/// The interval: alpha is a ratio of sums over bowls; its variance is that of the residuals
/// D_ib - alpha_i sum_j D_jb, B / (B - 1) times (linearised), on the logit scale, with Student's t of B - 1.
/// No random numbers. Simulation: choice_test.cpp states the coverage.
/// bowls: with the same foods side by side, as those of one label.
[[nodiscard]] Choice choiceIn(std::span<const EatenBowl> bowls, const ChoiceRule& rule = {});

/// For each label in the order in which they first come: foods of a morning's bowl do not vie with those of
/// the evening's.
struct BowlChoice {
  std::string label{};
  Choice choice{};
};
[[nodiscard]] std::vector<BowlChoice> choiceByLabel(std::span<const EatenBowl> bowls,
                                                    const ChoiceRule& rule = {});

/// The same for one stretch of days after another, each `days` long from the first bowl; bowls ordered by
/// day. Stretches without a bowl are left out.
struct ChoicePeriod {
  quantity::Date from{};
  quantity::Date until{};
  Choice choice{};
};
[[nodiscard]] std::vector<ChoicePeriod> choiceOverTime(std::span<const EatenBowl> bowls, int days,
                                                       const ChoiceRule& rule = {});

}  // namespace tarebowl::intake
