// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/intake/study_plan.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// The plan of an intake study, as a file, a page to hang up in the kitchen, or lines of text.
namespace tarebowl::exchange {

inline constexpr std::string_view kStudyPlanFormat = "tarebowl-study-plan/1";

struct StudyPlanToWrite {
  std::string group{};
  std::string groupName{};
  std::string section{};
  bool invented = false;
  std::optional<food::NutrientId> nutrient{};  ///< nothing: grams as fed, of all foods
  quantity::Date first{};                      ///< of the study
  quantity::Date learnedFrom{};                ///< the days whose variation it is planned by
  quantity::Date learnedUntil{};
  intake::StudyPlan plan{};
  std::map<std::string, std::string> foodNames{};  ///< by code
  [[nodiscard]] quantity::Date last() const {
    return std::chrono::sys_days(first) + std::chrono::days(plan.days - 1);
  }
};

/// "Calcium, mg per animal and day".
[[nodiscard]] std::string subjectText(const StudyPlanToWrite& plan);
/// How many days and why, a sentence each.
[[nodiscard]] std::vector<std::string> reasonsOf(const StudyPlanToWrite& plan);
/// What the kitchen does on each of the days, a sentence each.
[[nodiscard]] std::vector<std::string> stepsOf(const StudyPlanToWrite& plan);

[[nodiscard]] std::string studyPlanAsJson(const StudyPlanToWrite& plan);
[[nodiscard]] std::string studyPlanAsText(const StudyPlanToWrite& plan);
/// A page of its own, style included; every text is escaped.
[[nodiscard]] std::string studyPlanAsHtml(const StudyPlanToWrite& plan);

}  // namespace tarebowl::exchange
