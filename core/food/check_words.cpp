// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/check_words.h"

#include <stdexcept>

namespace tarebowl::food {

CheckWords wordsOf(CheckCode code) {
  switch (code) {
    case CheckCode::ValueOverFood:
      return {"{Nutrient} is more than the food: {found} in 100 g.",
              "Look for a slip of the unit or of the basis."};
    case CheckCode::ProximatesOverWhole:
      return {"The known proximates add up to {number} g in 100 g.",
              "Some are probably on dry matter; check the basis of each."};
    case CheckCode::ProximatesDoNotClose:
      return {"Proximates do not close: {number} g of 100 g.",
              "Check the water value first, then the sources: they may be of different foods."};
    case CheckCode::PartsOverWhole:
      return {"{parts} ({found}) are more than their whole, {nutrient} ({against}).",
              "Parts and whole come from different samples, or a unit slipped."};
    case CheckCode::NegativeCarbohydrate:
      return {"Carbohydrate is below zero: {found}.",
              "Usual for insects, where chitin is counted twice; otherwise check the proximates."};
    case CheckCode::EnergyDisagrees:
      return {"Energy is stated as {found}; the proximates give {against}.",
              "Check whether kJ were read as kcal, and gross energy as metabolizable."};
    case CheckCode::ScatterWiderThanValue:
      return {"{Nutrient} scatters more than it is: ± {found}.",
              "One of its samples is probably wrong; look at each, and at their number."};
    case CheckCode::MineralsOverAsh:
      return {"The minerals add up to more than the ash: {number} g over {limit} g.",
              "Check the unit of the largest, then the ash."};
    case CheckCode::GuaranteeAsMean:
      return {"A guaranteed bound stands for a mean: {nutrient}.", "A laboratory's value would settle it."};
    case CheckCode::UnitSlip:
      return {"{Nutrient} is about a thousand times off its group: {found} beside {against}.",
              "Look for a slip of the unit."};
    case CheckCode::FarFromGroup:
      return {"{Nutrient} is far from its group: {found} beside {against}.",
              "Check the value, and whether the food is in the right group."};
    case CheckCode::RatioFarFromGroup:
      return {"Ca:P is far from its group: {number} beside {limit}.", "Check both values."};
    case CheckCode::SameName:
      return {"{other} has the same name and form.", "Keep one of them, or tell them apart."};
    case CheckCode::SameComposition:
      return {"{other} has the same composition.", "One of them was probably copied."};
    case CheckCode::Stale:
      return {"The newest sample is {number} years old.", "Sample it again."};
  }
  throw std::invalid_argument("a check without words");
}

std::string withFacts(std::string_view words, const std::function<std::string(std::string_view)>& fact) {
  std::string text;
  for (auto open = words.find('{'); open != std::string_view::npos; open = words.find('{')) {
    const auto close = words.find('}', open);
    if (close == std::string_view::npos) throw std::invalid_argument("an open brace in the words of a check");
    text += words.substr(0, open);
    text += fact(words.substr(open + 1, close - open - 1));
    words.remove_prefix(close + 1);
  }
  return text += words;
}

}  // namespace tarebowl::food
