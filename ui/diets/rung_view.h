// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"
#include "ui/diets/diet_draft.h"
#include "ui/shared/energy_unit.h"

#include <QString>

#include <optional>

/// In which unit and against which basis a ladder is read. What targets mean, and what is edited, stays as it
/// was stated: a bound on another basis is what it comes to in this bowl.
namespace tarebowl::ui {

enum class LadderOrder {
  Trouble,  ///< short and over first
  Table,    ///< as the targets were stated
  Name
};

struct LadderView {
  LadderOrder order = LadderOrder::Trouble;
  std::optional<quantity::Basis> basis{};  ///< nothing: each target on its own
  EnergyUnit energy = EnergyUnit::Kilocalorie;
  bool asOffered = false;  ///< nothing of what is offered is left
  bool operator==(const LadderView&) const = default;
};

/// The problem in which all that is offered is eaten.
[[nodiscard]] diet::BalanceProblem asOffered(diet::BalanceProblem problem);
/// Whether some food is known to be left in part.
[[nodiscard]] bool isLeftInPart(const diet::BalanceProblem& problem);

/// What the bowl comes to on each basis a day; nothing where a food in it has no value.
struct BowlAmounts {
  std::optional<double> kilogramsAsFed{};
  std::optional<double> kilogramsDryMatter{};
  std::optional<double> thousandKilocalories{};
};
[[nodiscard]] BowlAmounts amountsOf(const diet::BalanceProblem& problem, const diet::Diet& grams);

/// What a rung's number is multiplied by, and the unit it has then.
struct RungScale {
  double factor = 1.0;
  QString unit{};
};
[[nodiscard]] RungScale scaleOf(const diet::BalanceProblem& problem, RungRef rung, const BowlAmounts& bowl,
                                const LadderView& view);

}  // namespace tarebowl::ui
