// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explanation.h"
#include "core/diet/remedies.h"
#include "ui/diets/diet_draft.h"

#include <QString>

#include <string>
#include <variant>
#include <vector>

/// What would settle a diet that misses its targets, each ready to be tried on the draft. Foods and rules go
/// by their ids: a suggestion stays sound while other foods come and go.
namespace tarebowl::ui {

/// A food more; inPlaceOf, where not empty, is the id of one that leaves the diet for it.
struct AddedFood {
  diet::DietFood food;
  quantity::Grams amount;
  std::string inPlaceOf{};
};
/// More of a food than its maximum or its lock allows.
struct RaisedFood {
  std::string food;
  quantity::Grams amount;
};
struct MovedBound {
  std::string rule;
  diet::BoundSide side = diet::BoundSide::Min;
  double to = 0.0;
};
struct MovedChoice {
  std::string group;
  diet::BoundSide side = diet::BoundSide::Min;
  int to = 0;
};

struct Suggestion {
  QString words;   ///< "Add 0.4 g Limestone powder"
  QString effect;  ///< "closes the gap", "leaves 12 % of it"
  std::variant<AddedFood, RaisedFood, MovedBound, MovedChoice> act;
};

/// What was worked out for a draft: the remedies with the food that each of them is of, and the least that
/// single bounds must give way.
struct SuggestedFacts {
  struct FoodRemedy {
    diet::Remedy remedy;
    diet::DietFood food;
  };
  std::vector<FoodRemedy> remedies{};
  std::vector<diet::LeastChange> changes{};
  double shortfall = 0.0;   ///< of the answer that they are to better
  bool impossible = false;  ///< the hard rules contradict each other
};

/// Those that close the gap first. What the draft cannot try (a choice of the targets) is left out.
[[nodiscard]] std::vector<Suggestion> suggestionsFrom(const DietDraft& draft, const SuggestedFacts& facts);

/// The rung of a rule of the problem; nothing where it has none of this id.
[[nodiscard]] std::optional<RungRef> rungOfRule(const diet::BalanceProblem& problem, const std::string& id);

}  // namespace tarebowl::ui
