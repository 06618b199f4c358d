// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/intake/feeding_records.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// What a section's kitchen prepares on a day: bowls from the diets in force, and what they come to.
namespace tarebowl::intake {

/// What the kitchen must know of a food.
struct KitchenFood {
  std::string code{};
  std::string name{};
  std::string form{};
  std::string group{};
  quantity::Grams step{1};
  std::optional<quantity::Grams> unitMass{};
  double edibleFraction = 1.0;     ///< of what is bought
  std::string raw{};               ///< code of the food that it is cooked from; empty: it is not cooked
  std::optional<double> yield{};   ///< grams cooked per gram raw
  double rawEdibleFraction = 1.0;  ///< of that raw food
  std::string rawName{};
  bool inStock = true;
  bool known = true;  ///< false: the collection has no such food; its code stands for its name
};
using FoodLookup = std::function<KitchenFood(const std::string& code)>;

/// A diet as it is in force on a day.
struct DietOfDay {
  diet::NamedDiet diet{};
  diet::DietVersion version{};
  /// What was fed before, while the version is phased in; empty where nothing was.
  std::vector<diet::DietLine> linesBefore{};
  /// Where a rotation has chosen the day: these lines instead of the version's own.
  std::optional<std::vector<diet::DietLine>> dayPlan{};
};

struct GroupOfDay {
  std::string code{};
  std::string name{};
  std::string section{};
  std::optional<int> animals{};                   ///< unknown: no bowl can be weighed
  std::optional<quantity::Kilograms> bodyMass{};  ///< of one animal
  std::vector<DietOfDay> diets{};
};

/// The lines of a diet on a day, per animal: the day's plan where there is one, or else the version's own,
/// mixed with what was fed before while it is phased in (diet/phase_in.h), meal by meal.
struct LinesOfDay {
  std::vector<diet::DietLine> lines{};
  int phaseDay = 0;  ///< 1 … phaseInDays while it is phased in; 0: not
};
[[nodiscard]] LinesOfDay linesOn(const DietOfDay& diet, quantity::Date day, const FoodLookup& foodOf);

/// One bowl and what stands beside it on the sheet.
struct PrepBowl {
  Bowl bowl{};
  std::string groupName{};
  std::optional<quantity::Kilograms> bodyMass{};
  std::string purpose{};  ///< "treat", "enrichment" …; empty: the bowl itself
  int phaseDay = 0;
  int phaseDays = 0;
  std::vector<diet::Allowance> allowances{};  ///< given without weighing, per animal
  bool opened = false;                        ///< it stands on the day's sheet
  [[nodiscard]] quantity::Grams total() const;
};

/// Which bowl of a group's day each of `bowls` is among those that were written down before, by position;
/// nothing for one that is new. The same meal, diet and label first; then, of a diet's bowls, the same meal
/// and purpose: a label names the group and the diet, and those may have another name by now. Each is found
/// once.
[[nodiscard]] std::vector<std::optional<std::size_t>> sameBowls(std::span<const Bowl> bowls,
                                                                std::span<const Bowl> there);

/// A bowl for each diet, meal and purpose, in the order in which the diet names them; nothing that weighs 0.
/// Empty where the number of animals is not known or 0.
[[nodiscard]] std::vector<PrepBowl> bowlsOf(const GroupOfDay& group, quantity::Date day,
                                            const FoodLookup& foodOf);

/// What the bowls need of one food.
struct KitchenTotal {
  KitchenFood food{};
  quantity::Grams amount{};  ///< as it goes into the bowls
  std::size_t bowls = 0;
  std::string preparations{};  ///< as the bowls say it, parted by "; "
  std::optional<quantity::Grams>
      raw{};  ///< to be cooked; nothing where it is not cooked or its yield is not known
  std::optional<quantity::Grams> bought{};  ///< with peel and stalk, where that is more
};
/// By food group, then by name. What was swapped out is not needed.
[[nodiscard]] std::vector<KitchenTotal> totalsOf(std::span<const PrepBowl> bowls, const FoodLookup& foodOf);

/// Foods that come out of the freezer a day ahead, and live ones that are fed well before they are food.
[[nodiscard]] bool isThawed(const KitchenFood& food);
[[nodiscard]] bool isLive(const KitchenFood& food);
/// By what it is cooked from, or by its form where nobody said that: steamed, boiled, baked, cooked.
[[nodiscard]] bool isCooked(const KitchenFood& food);

/// Why a group of the section has no bowl.
enum class NoBowl { NoDiet, HeadcountUnknown, NoAnimals, NothingPlanned };
struct GroupWithoutBowl {
  std::string group{};
  std::string name{};
  NoBowl why = NoBowl::NoDiet;
};

/// Of a group for which bowlsOf makes none; nothing where nobody is there to be fed.
[[nodiscard]] std::optional<NoBowl> noBowlOf(const GroupOfDay& group);

/// Everything on a section's sheet.
struct PrepSheet {
  std::string section{};
  quantity::Date day{};
  std::vector<PrepBowl> bowls{};
  std::vector<KitchenTotal> totals{};
  std::vector<KitchenTotal> thawForTomorrow{};
  std::vector<KitchenTotal> gutLoadForTomorrow{};
  std::vector<GroupWithoutBowl> withoutBowl{};
  std::vector<std::string> cautions{};  ///< of the foods in the bowls, for those who eat them
  bool invented = false;
};

}  // namespace tarebowl::intake
