// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/sums.h"

#include "core/food/compound.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <string_view>

namespace tarebowl::food {

namespace {

constexpr std::array kPhyticAtoms{Atoms{Element::Carbon, 6}, Atoms{Element::Hydrogen, 18},
                                  Atoms{Element::Oxygen, 24}, Atoms{Element::Phosphorus, 6}};
constexpr Compound kPhyticAcid{"phytic acid", "C6H18O24P6", kPhyticAtoms};

NutrientId idOf(std::string_view tagname) {
  return findByTagname(tagname).value();
}

SumPart part(std::string_view tagname, double factor = 1.0) {
  return {.nutrient = idOf(tagname), .factor = factor};
}

SumPart minorPart(std::string_view tagname) {
  return {.nutrient = idOf(tagname), .needed = false};
}

std::vector<NutrientSum> makeSums() {
  const double phosphorusOfPhytate = massShare(kPhyticAcid, Element::Phosphorus);
  return {
      {idOf("AAS"), {part("MET"), part("CYS")}},
      {idOf("XPHETYR"), {part("PHE"), part("TYR")}},
      {idOf("XEPADHA"), {part("F20D5N3"), part("F22D6N3")}},
      {idOf("FAPUN3"),
       {part("F18D3N3"), part("F20D5N3"), part("F22D5N3"), part("F22D6N3"), minorPart("F20D3N3")}},
      {idOf("FAPUN6"),
       {part("F18D2N6"), part("F20D4N6"), minorPart("F18D3CN6"), minorPart("F20D2CN6"),
        minorPart("F20D3N6")}},
      {idOf("XPNPHY"), {part("P"), part("PHYTAC", -phosphorusOfPhytate)}},
  };
}

std::string sourceOf(const std::vector<std::string>& known, const std::vector<std::string>& unknown) {
  const std::string text = fmt::format("worked out from {}", fmt::join(known, ", "));
  return unknown.empty() ? text : fmt::format("{}; {} unknown", text, fmt::join(unknown, ", "));
}

/// Adds a part to the sum; false where it is unknown.
bool add(NutrientValue& sum, const SumPart& part, const Composition& parts) {
  const NutrientValue* value = parts.find(part.nutrient);
  if (value == nullptr) return false;
  const double amount = sum.amount.value() + part.factor * value->amount.value();
  sum.amount = quantity::AsFedContent(amount);
  if (sum.sd && value->sd)
    sum.sd = quantity::AsFedContent(sum.sd->value() + std::abs(part.factor) * value->sd->value());
  else
    sum.sd.reset();
  return true;
}

}  // namespace

std::span<const NutrientSum> nutrientSums() {
  static const std::vector<NutrientSum> kSums = makeSums();
  return kSums;
}

std::optional<NutrientValue> workOut(const NutrientSum& sum, const Composition& parts) {
  NutrientValue value{.sd = quantity::AsFedContent(0.0)};
  std::vector<std::string> known;
  std::vector<std::string> unknown;
  bool takesOff = false;
  for (const SumPart& part : sum.parts) {
    const std::string& tagname = describe(part.nutrient).tagname;
    takesOff = takesOff || part.factor < 0.0;
    if (add(value, part, parts))
      known.push_back(tagname);
    else if (part.needed)
      unknown.push_back(tagname);
  }
  if (known.empty() || value.amount.value() < 0.0 || (takesOff && !unknown.empty())) return std::nullopt;
  if (!unknown.empty()) {
    value.qualifier = Qualifier::AtLeast;
    value.sd.reset();
  }
  value.source = sourceOf(known, unknown);
  return value;
}

void addSums(Derivation& derivation) {
  const Composition parts = derivation.composition();
  for (const NutrientSum& sum : nutrientSums()) {
    if (parts.find(sum.sum) != nullptr) continue;
    auto value = workOut(sum, parts);
    // A bound that somebody stated goes before one that was worked out.
    if (!value || (value->qualifier == Qualifier::AtLeast && derivation.find(sum.sum) != nullptr)) continue;
    std::erase_if(derivation.values, [&](const DerivedValue& it) { return it.nutrient == sum.sum; });
    derivation.values.push_back(
        {.nutrient = sum.sum, .value = std::move(*value), .by = DerivedBy::SumOfParts});
  }
  std::ranges::sort(derivation.values, {}, &DerivedValue::nutrient);
}

}  // namespace tarebowl::food
