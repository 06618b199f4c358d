// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/unit.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::food {

enum class NutrientGroup {
  Proximate,
  Fibre,
  Carbohydrate,
  Energy,
  Mineral,
  TraceElement,
  Vitamin,
  AminoAcid,
  FattyAcid,
  AntiNutrient
};

/// The word used in files: "trace element".
[[nodiscard]] std::string_view symbolOf(NutrientGroup group);

/// A component of food, named by its FAO/INFOODS tagname (Klensin et al. 1989 and later lists, an open
/// standard).
struct Nutrient {
  std::string tagname;
  std::string name;     ///< trade's word, e.g. "Crude protein"
  quantity::Unit unit;  ///< the one unit in which amounts of it are stored
  NutrientGroup group;
  int decimals = 1;                   ///< digits after the point when shown in its unit
  std::vector<std::string> synonyms;  ///< how labs and tables call it ("Ether extract", "EE")
  std::vector<std::string>
      otherTagnames{};  ///< further tagnames of the same component ("TOCPHA"), read like the first
};

/// Index into the list of known nutrients. Only this module makes valid ones.
class NutrientId {
 public:
  explicit constexpr NutrientId(std::size_t index) : index_(index) {}
  [[nodiscard]] constexpr std::size_t index() const { return index_; }
  // clang-tidy 14 takes the comparison's 0 for a pointer.
  // NOLINTNEXTLINE(modernize-use-nullptr)
  constexpr auto operator<=>(const NutrientId&) const = default;

 private:
  std::size_t index_;
};

/// The known nutrients, from resources/data/nutrients.json: constant data, read once.
[[nodiscard]] std::span<const Nutrient> allNutrients();
[[nodiscard]] const Nutrient& describe(NutrientId id);

/// By tagname (exact, upper case) or an alternative tagname; nothing if unknown.
[[nodiscard]] std::optional<NutrientId> findByTagname(std::string_view tagname);
/// By any synonym, tagname or name, ignoring case, spaces and punctuation.
[[nodiscard]] std::optional<NutrientId> findBySynonym(std::string_view label);
/// The known tagname with the least edit distance: for "did you mean".
[[nodiscard]] std::string_view nearestTagname(std::string_view text);

/// The nutrients that formulas name. Their order of definition is not their index.
namespace nutrients {
[[nodiscard]] NutrientId water();
[[nodiscard]] NutrientId protein();
[[nodiscard]] NutrientId fat();
[[nodiscard]] NutrientId ash();
[[nodiscard]] NutrientId crudeFibre();                ///< FIBC
[[nodiscard]] NutrientId totalDietaryFibre();         ///< FIBTG
[[nodiscard]] NutrientId carbohydrateByDifference();  ///< CHOCDF
[[nodiscard]] NutrientId alcohol();                   ///< ALC, ethanol
[[nodiscard]] NutrientId starch();
[[nodiscard]] NutrientId sugar();
[[nodiscard]] NutrientId energy();  ///< ENERC, kcal ME
[[nodiscard]] NutrientId calcium();
[[nodiscard]] NutrientId phosphorus();
}  // namespace nutrients

}  // namespace tarebowl::food
