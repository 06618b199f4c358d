// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/calcium_review.h"
#include "core/health/look_back.h"
#include "core/health/observation.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// What leaves the program about an animal's health: a calcium review and a look-back, as JSON and as a page.
namespace tarebowl::exchange {

struct MassLine {
  quantity::Date day{};
  std::string who{};
  double kilograms = 0.0;
};
struct BloodLine {
  quantity::Date day{};
  std::string who{};
  health::BloodValue value{};
};
struct DietLine {
  quantity::Date day{};
  std::string diet{};
  int version = 0;
};

/// Whom it is about, and what the collection calls its foods.
struct HealthSubjectLine {
  std::string name{};
  std::string group{};       ///< code
  std::string individual{};  ///< code; empty: the group
  std::string species{};
  int animals = 1;
  std::optional<double> bodyMass{};  ///< kg per animal
  bool sharesItsBowl = false;        ///< one animal of several at one bowl
  bool invented = false;
  std::map<std::string, std::string> foodNames{};  ///< by code
  [[nodiscard]] std::string foodName(const std::string& code) const;
};

struct CalciumPage {
  HealthSubjectLine subject{};
  health::CalciumReview review{};
  std::string profile{};  ///< whose targets: "code version"; empty: none in force
  std::vector<MassLine> masses{};
  std::vector<BloodLine> blood{};
  std::vector<DietLine> diets{};
  std::vector<std::string> sources{};  ///< of the calcium and phosphorus values of the foods
};

struct LookBackPage {
  HealthSubjectLine subject{};
  health::SignKind kind = health::SignKind::Faeces;
  quantity::Date from{};
  quantity::Date to{};
  health::LookBack lookBack{};
  health::LookBackRule rule{};
};

/// "tarebowl-calcium/1".
[[nodiscard]] std::string writeCalcium(const CalciumPage& page);
/// "tarebowl-look-back/1".
[[nodiscard]] std::string writeLookBack(const LookBackPage& page);

/// One page for the medical file.
[[nodiscard]] std::string calciumPageAsHtml(const CalciumPage& page);
/// A table with its counts, for the file too.
[[nodiscard]] std::string lookBackPageAsHtml(const LookBackPage& page);

}  // namespace tarebowl::exchange
