// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/collection_checks.h"

#include "core/food/robust.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace tarebowl::food {

namespace {

using Findings = std::vector<FoodFinding>;

double yearsBetween(quantity::Date from, quantity::Date to) {
  constexpr double kDaysPerYear = 365.2425;
  return static_cast<double>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count()) /
         kDaysPerYear;
}

/// A food's positive contents of one nutrient on dry matter, where both are known.
struct GroupValue {
  std::size_t food;
  double value;
};

/// Names without case, spaces and punctuation.
std::string plainName(const CheckedFood& food) {
  std::string plain;
  for (const char c : food.name + "\x1f" + food.form) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte > 127 || std::isalnum(byte) != 0 || c == '\x1f')
      plain += static_cast<char>(byte > 127 ? c : std::tolower(byte));
  }
  return plain;
}

class CollectionCheck {
 public:
  CollectionCheck(std::span<const CheckedFood> foods, quantity::Date today,
                  const CollectionCheckLimits& limits)
      : foods_(foods), today_(today), limits_(limits) {}

  Findings run() {
    for (std::size_t i = 0; i < foods_.size(); ++i) checkAlone(i);
    compareInGroups();
    findTwins();
    std::ranges::stable_sort(findings_, {}, &FoodFinding::food);
    return std::move(findings_);
  }

 private:
  void add(std::size_t food, CheckCode code, std::vector<NutrientId> nutrients, double found,
           double against) {
    findings_.push_back(
        {.food = food, .finding = {code, Severity::Warning, std::move(nutrients), found, against}});
  }

  void checkAlone(std::size_t i) {
    const CheckedFood& food = foods_[i];
    for (Finding& finding : checkComposition(food.composition, limits_.within))
      findings_.push_back({.food = i, .finding = std::move(finding)});
    checkMinerals(i);
    for (const NutrientId id : food.composition.knownNutrients()) {
      const NutrientValue& value = *food.composition.find(id);
      if (value.qualifier == Qualifier::AtLeast || value.qualifier == Qualifier::AtMost)
        add(i, CheckCode::GuaranteeAsMean, {id}, value.amount.value(), value.amount.value());
    }
    if (!food.newestSample) return;
    const double years = yearsBetween(*food.newestSample, today_);
    if (years > limits_.staleYears) add(i, CheckCode::Stale, {}, years, limits_.staleYears);
  }

  /// Ash is what is left of the minerals, mostly as oxides and carbonates, so it weighs more than they do.
  /// Chlorine, iodine and selenium are left out: they leave with the smoke.
  void checkMinerals(std::size_t i) {
    constexpr std::array<std::string_view, 9> kMinerals{"CA", "P", "MG", "K", "NA", "FE", "ZN", "CU", "MN"};
    const Composition& composition = foods_[i].composition;
    const auto ash = composition.amountPer100g(nutrients::ash());
    if (!ash) return;
    std::vector<NutrientId> ids{nutrients::ash()};
    double sum = 0.0;
    for (const std::string_view tagname : kMinerals) {
      const NutrientId id = findByTagname(tagname).value();
      const auto milligrams = composition.amountPer100g(id);
      if (!milligrams) continue;
      sum += *milligrams / 1000.0;
      ids.push_back(id);
    }
    if (sum > *ash * (1.0 + limits_.mineralsShare) + limits_.mineralsAmount)
      add(i, CheckCode::MineralsOverAsh, std::move(ids), sum, *ash);
  }

  void compareInGroups() {
    std::map<std::string_view, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < foods_.size(); ++i)
      if (!foods_[i].group.empty()) groups[foods_[i].group].push_back(i);
    for (const auto& [name, members] : groups) {
      if (members.size() < limits_.smallestGroup) continue;
      for (std::size_t n = 0; n < allNutrients().size(); ++n) compareNutrient(members, NutrientId(n));
      compareRatio(members);
    }
  }

  /// What a content is compared per: fatty acids per fat and amino acids per protein, because their profile
  /// is what foods of a group share; all else per dry matter. In the nutrient's unit per 100 g of it.
  static std::optional<double> shareOf(const Composition& composition, NutrientId id) {
    const auto amount = composition.amountPer100g(id);
    if (!amount || !(*amount > 0.0)) return std::nullopt;
    const NutrientGroup group = describe(id).group;
    std::optional<double> whole;
    if (group == NutrientGroup::FattyAcid) {
      whole = composition.amountPer100g(nutrients::fat());
    } else if (group == NutrientGroup::AminoAcid) {
      whole = composition.amountPer100g(nutrients::protein());
    } else if (const auto dryMatter = composition.dryMatter()) {
      whole = 100.0 * dryMatter->value();
    }
    // In next to nothing of the whole, the last printed digit is the share.
    constexpr double kLeastWhole = 1.0;
    if (!whole || *whole < kLeastWhole) return std::nullopt;
    return 100.0 * *amount / *whole;
  }

  void compareNutrient(const std::vector<std::size_t>& members, NutrientId id) {
    if (id == nutrients::water()) return;  // dry matter rests on it
    std::vector<GroupValue> values;
    for (const std::size_t i : members)
      if (const auto share = shareOf(foods_[i].composition, id)) values.push_back({i, *share});
    judge(values, [&](const GroupValue& value, const RobustScatter& scatter) {
      const double distance = std::log(value.value) - scatter.median;
      const double toSlip = std::abs(distance) - std::log(1000.0);
      const bool slip =
          std::abs(toSlip) < limits_.slipZ * scatter.spread && std::abs(toSlip) < std::log(limits_.slipWidth);
      if (!slip && distance < std::log(limits_.farFactor)) return;
      report(value, scatter, slip ? CheckCode::UnitSlip : CheckCode::FarFromGroup, {id}, values.size());
    });
  }

  void compareRatio(const std::vector<std::size_t>& members) {
    std::vector<GroupValue> values;
    for (const std::size_t i : members) {
      const auto calcium = foods_[i].composition.amountPer100g(nutrients::calcium());
      const auto phosphorus = foods_[i].composition.amountPer100g(nutrients::phosphorus());
      if (calcium && phosphorus && *calcium > 0.0 && *phosphorus > 0.0)
        values.push_back({i, *calcium / *phosphorus});
    }
    judge(values, [&](const GroupValue& value, const RobustScatter& scatter) {
      if (std::abs(std::log(value.value) - scatter.median) < std::log(limits_.ratioFactor)) return;
      report(value, scatter, CheckCode::RatioFarFromGroup, {nutrients::calcium(), nutrients::phosphorus()},
             values.size());
    });
  }

  /// Contents scatter by factors rather than by amounts, so their logarithms are judged.
  template <class Judge>
  void judge(const std::vector<GroupValue>& values, Judge judgeValue) {
    if (values.size() < limits_.smallestGroup) return;
    std::vector<double> logarithms;
    logarithms.reserve(values.size());
    for (const GroupValue& value : values) logarithms.push_back(std::log(value.value));
    const auto scatter = robustScatter(logarithms);
    if (!scatter) return;
    for (std::size_t k = 0; k < values.size(); ++k)
      if (std::abs(robustZ(logarithms[k], *scatter)) > limits_.robustZ) judgeValue(values[k], *scatter);
  }

  void report(const GroupValue& value, const RobustScatter& scatter, CheckCode code,
              std::vector<NutrientId> ids, std::size_t groupSize) {
    add(value.food, code, std::move(ids), value.value, std::exp(scatter.median));
    findings_.back().robustZ = robustZ(std::log(value.value), scatter);
    findings_.back().groupSize = groupSize;
  }

  void findTwins() {
    std::unordered_map<std::string, std::size_t> byName;
    std::unordered_multimap<std::size_t, std::size_t> byComposition;
    for (std::size_t i = 0; i < foods_.size(); ++i) {
      if (const auto [place, isNew] = byName.emplace(plainName(foods_[i]), i); !isNew) {
        add(i, CheckCode::SameName, {}, 0.0, 0.0);
        findings_.back().other = place->second;
      }
      const auto known = foods_[i].composition.knownNutrients();
      if (known.size() < limits_.leastAlike) continue;
      const std::size_t hash = hashOf(foods_[i].composition, known);
      const auto [first, last] = byComposition.equal_range(hash);
      const auto twin =
          std::find_if(first, last, [&](const auto& entry) { return areEqual(entry.second, i); });
      if (twin != last) {
        add(i, CheckCode::SameComposition, {}, 0.0, 0.0);
        findings_.back().other = twin->second;
      } else {
        byComposition.emplace(hash, i);
      }
    }
  }

  static std::size_t hashOf(const Composition& composition, const std::vector<NutrientId>& known) {
    std::size_t hash = known.size();
    for (const NutrientId id : known)
      hash = hash * 1'000'003 + std::hash<double>()(*composition.amountPer100g(id)) + id.index();
    return hash;
  }

  [[nodiscard]] bool areEqual(std::size_t a, std::size_t b) const {
    const auto known = foods_[a].composition.knownNutrients();
    if (known != foods_[b].composition.knownNutrients()) return false;
    return std::ranges::all_of(known, [&](NutrientId id) {
      return foods_[a].composition.amountPer100g(id) == foods_[b].composition.amountPer100g(id);
    });
  }

  std::span<const CheckedFood> foods_;
  quantity::Date today_;
  const CollectionCheckLimits& limits_;
  Findings findings_;
};

}  // namespace

std::vector<FoodFinding> checkFoods(std::span<const CheckedFood> foods, quantity::Date today,
                                    const CollectionCheckLimits& limits) {
  return CollectionCheck(foods, today, limits).run();
}

}  // namespace tarebowl::food
