// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/study_plan_page.h"
#include "core/store/collection.h"

#include <optional>
#include <string>
#include <variant>

namespace tarebowl::transfer {

/// How well the mean of a group's intake is to be known.
struct StudyAsked {
  std::string group{};
  std::optional<food::NutrientId> nutrient{};  ///< nothing: grams as fed, of all foods
  quantity::Date first{};                      ///< of the study
  double precision = 0.1;                      ///< half of the interval, as a share of the mean; above 0
  double confidence = 0.95;                    ///< between 0 and 1
};

/// Why there is no plan.
struct NoStudyPlan {
  enum class Why {
    NoGroup,
    NoBowl,        ///< in the week before, so that nobody knows what is fed
    TooFewDays,    ///< below two of the days before are known in full
    NothingEaten,  ///< their mean is 0: no share of it is a precision
    OutOfReach     ///< more than ten years would be needed
  };
  Why why = Why::NoGroup;
  std::size_t daysKnown = 0;
};

/// Planned by how the group's own days differed in the eight weeks before the study, with foods and pans as
/// they were fed in the last of them (house rules, no source). Throws StoreError.
[[nodiscard]] std::variant<exchange::StudyPlanToWrite, NoStudyPlan> planIntakeStudy(
    const store::Collection& collection, const StudyAsked& asked);

}  // namespace tarebowl::transfer
