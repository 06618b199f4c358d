// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/contents.h"

namespace tarebowl::intake {

namespace {

/// Sources are numbered by thing and food; 0 and 1 are mass and dry matter, nutrients follow.
constexpr std::uint32_t kFoodsAtMost = 1U << 20U;
constexpr std::uint32_t kMass = 0;
constexpr std::uint32_t kDryMatter = 1;
constexpr std::uint32_t kFirstNutrient = 2;

/// The foods as eaten whole.
std::vector<diet::DietFood> whole(std::span<const diet::DietFood> foods) {
  std::vector<diet::DietFood> list(foods.begin(), foods.end());
  for (diet::DietFood& food : list) food.eatenFraction = 1.0;
  return list;
}

}  // namespace

Contents::Contents(std::span<const diet::DietFood> foods, const diet::Supply& supply,
                   const diet::Supply& dryMatter, std::uint32_t thing) {
  for (std::size_t i = 0; i < foods.size(); ++i) {
    const auto row = static_cast<Eigen::Index>(i);
    Content content;
    content.source = thing * kFoodsAtMost + static_cast<std::uint32_t>(i);
    content.weightPerGram = dryMatter.known[row] ? dryMatter.perGram[row] : 1.0;
    if (supply.known[row]) {
      content.perGram = supply.perGram[row];
      content.sdPerGram = supply.sdPerGram[row];
    }
    byFood_.emplace(foods[i].id, content);
  }
}

Contents Contents::ofMass(std::span<const diet::DietFood> foods) {
  const auto list = whole(foods);
  const diet::FoodList all(list, food::EnergyMethod::ModifiedAtwater);
  return {list, massSupply(all), dryMatterSupply(all), kMass};
}

Contents Contents::ofDryMatter(std::span<const diet::DietFood> foods) {
  const auto list = whole(foods);
  const diet::FoodList all(list, food::EnergyMethod::ModifiedAtwater);
  return {list, dryMatterSupply(all), dryMatterSupply(all), kDryMatter};
}

Contents Contents::ofNutrient(std::span<const diet::DietFood> foods, food::EnergyMethod energyMethod,
                              food::NutrientId nutrient) {
  const auto list = whole(foods);
  const diet::FoodList all(list, energyMethod);
  return {list, nutrientSupply(all, nutrient), dryMatterSupply(all),
          kFirstNutrient + static_cast<std::uint32_t>(nutrient.index())};
}

const Content* Contents::find(const std::string& food) const {
  const auto found = byFood_.find(food);
  return found == byFood_.end() ? nullptr : &found->second;
}

}  // namespace tarebowl::intake
