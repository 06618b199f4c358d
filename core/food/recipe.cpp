// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/recipe.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace tarebowl::food {
namespace {

using quantity::AsFedContent;

bool saysHowMuch(const NutrientValue& value) {
  return value.qualifier == Qualifier::Equal || value.qualifier == Qualifier::Trace;
}

/// One nutrient of the whole mix, gathered part by part.
class MixedValue {
 public:
  void add(const NutrientValue* value, double share) {
    const bool isFloor = value != nullptr && value->qualifier == Qualifier::AtLeast;
    if (value == nullptr || (!saysHowMuch(*value) && !isFloor)) {
      whole_ = false;
      return;
    }
    known_ = true;
    whole_ = whole_ && !isFloor;
    amount_ += share * value->amount.value();
    if (value->sd) {
      scatters_ = true;
      variance_ += std::pow(share * value->sd->value(), 2);
    }
  }
  [[nodiscard]] bool isKnown() const { return known_; }
  [[nodiscard]] bool isWhole() const { return known_ && whole_; }
  [[nodiscard]] NutrientValue value(const std::string& source) const {
    NutrientValue mixed{.amount = AsFedContent(amount_), .source = source};
    if (scatters_) mixed.sd = AsFedContent(std::sqrt(variance_));
    if (!whole_) mixed.qualifier = Qualifier::AtLeast;
    return mixed;
  }

 private:
  double amount_ = 0.0;
  double variance_ = 0.0;
  bool known_ = false;
  bool whole_ = true;
  bool scatters_ = false;
};

std::string sourceOf(const Recipe& recipe) {
  return fmt::format("worked out from a recipe of {} part{}{}{}", recipe.parts.size(),
                     recipe.parts.size() == 1 ? "" : "s", recipe.source.empty() ? "" : ": ", recipe.source);
}

std::set<NutrientId> statedIn(std::span<const Composition> compositions) {
  std::set<NutrientId> stated;
  for (const Composition& composition : compositions)
    for (const NutrientId nutrient : composition.knownNutrients()) stated.insert(nutrient);
  return stated;
}

/// As weighed in, before anything is lost.
Composition asWeighedIn(const Recipe& recipe, std::span<const Composition> compositions) {
  quantity::Grams whole(0);
  for (const RecipePart& part : recipe.parts) whole += part.mass;
  Composition result;
  for (const NutrientId nutrient : statedIn(compositions)) {
    MixedValue mixed;
    for (std::size_t i = 0; i < recipe.parts.size(); ++i)
      mixed.add(compositions[i].find(nutrient), recipe.parts[i].mass / whole);
    // Half a water content is none: dry matter is worked out from it.
    if (nutrient == nutrients::water() ? mixed.isWhole() : mixed.isKnown())
      result.set(nutrient, mixed.value(sourceOf(recipe)));
  }
  return result;
}

RecipeProblem asRecipeProblem(CookingProblem problem) {
  switch (problem) {
    case CookingProblem::YieldNotAboveZero:
      return RecipeProblem::YieldNotAboveZero;
    case CookingProblem::FactorOutOfRange:
      return RecipeProblem::FactorOutOfRange;
    case CookingProblem::MoreThanFood:
      break;
  }
  return RecipeProblem::MoreThanFood;
}

/// What happens to the mix after it was weighed in.
Cooking cookingOf(const Recipe& recipe) {
  return {.rawCode = "the mix",
          .massYield = recipe.massYield,
          .retentions = recipe.retentions,
          .source = recipe.source};
}

bool findCycle(std::vector<std::string>& chain, std::set<std::string>& done,
               const std::function<std::vector<std::string>(const std::string&)>& partsOf) {
  for (const std::string& part : partsOf(chain.back())) {
    const bool closes = std::ranges::find(chain, part) != chain.end();
    chain.push_back(part);
    if (closes) return true;
    if (done.insert(part).second && findCycle(chain, done, partsOf)) return true;
    chain.pop_back();
  }
  return false;
}

}  // namespace

std::optional<RecipeProblem> problemWith(const Recipe& recipe) {
  if (recipe.parts.empty()) return RecipeProblem::NoParts;
  for (const RecipePart& part : recipe.parts)
    if (!std::isfinite(part.mass.value()) || part.mass.value() <= 0.0) return RecipeProblem::MassNotAboveZero;
  if (const auto problem = problemWith(cookingOf(recipe))) return asRecipeProblem(*problem);
  return std::nullopt;
}

std::variant<Composition, RecipeProblem> mix(const Recipe& recipe,
                                             std::span<const Composition> compositions) {
  if (const auto problem = problemWith(recipe)) return *problem;
  Composition weighedIn = asWeighedIn(recipe, compositions);
  if (recipe.massYield == 1.0 && recipe.retentions.empty()) return weighedIn;
  auto made = cook(weighedIn, cookingOf(recipe));
  if (const auto* problem = std::get_if<CookingProblem>(&made)) return asRecipeProblem(*problem);
  return std::get<Composition>(std::move(made));
}

std::optional<std::vector<std::string>> madeFromCycle(
    const std::string& code, const std::function<std::vector<std::string>(const std::string&)>& partsOf) {
  std::vector<std::string> chain{code};
  std::set<std::string> done{code};
  if (!findCycle(chain, done, partsOf)) return std::nullopt;
  return std::vector<std::string>(std::ranges::find(chain, chain.back()), chain.end());
}

}  // namespace tarebowl::food
