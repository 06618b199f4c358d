// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::animal {

enum class Sex { Unknown, Female, Male };

/// The stages of life that targets and energy needs distinguish.
enum class LifeStage { Unweaned, Growing, Adult, Pregnant, Lactating, Senior };

/// From this day on, until the next entry, the animal is in this stage.
struct StageEntry {
  quantity::Date from{};
  LifeStage stage = LifeStage::Adult;
  bool operator==(const StageEntry&) const = default;
};

/// One animal, by the name or number of the house.
struct Individual {
  std::string code{};     ///< the house's name or number; unique in a collection
  std::string species{};  ///< Species::code
  Sex sex = Sex::Unknown;
  std::optional<quantity::Date> born{};
  bool birthEstimated = false;
  std::optional<quantity::Date> arrived{};
  std::optional<quantity::Date> left{};  ///< the first day on which it is not there any more
  bool died = false;                     ///< it left by death
  std::vector<StageEntry> stages{};      ///< by date; Adult before the first
  std::string note{};
  bool invented = false;
  bool operator==(const Individual&) const = default;
};

/// A birth after a death, a departure before the arrival, stages out of order or before birth.
enum class IndividualProblem {
  NoCode,
  NoSpecies,
  BornAfterLeaving,
  ArrivedAfterLeaving,
  BornAfterArriving,
  StagesNotInOrder,
  StageBeforeBirth,
  DiedWithoutDay
};

/// Everything that is wrong with it, the gravest first; empty where nothing is.
[[nodiscard]] std::vector<IndividualProblem> problemsWith(const Individual& individual);

[[nodiscard]] LifeStage stageOn(const Individual& individual, quantity::Date day);

}  // namespace tarebowl::animal
