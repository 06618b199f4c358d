// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string_view>
#include <vector>

namespace tarebowl::food {

/// How metabolizable energy (ME) of a food is worked out from its own proximates.
///  Given            ENERC as stated.
///  Atwater          4 PROCNT + 9 FAT + 4 CHOCDF (Atwater general factors).
///  ModifiedAtwater  3.5 PROCNT + 8.5 FAT + 3.5 NFE (AAFCO; the form in Code of Maryland
///  Regulations 15.18.09.11). Dog2006, Cat2006 National Research Council 2006, four steps: GE, energy
///  digestibility, DE, ME. PoultryAmen      0.1551 CP + 0.3431 EE + 0.1669 starch + 0.1301 sugar, MJ/kg with
///  % as fed (WPSA; Reg. (EC) 152/2009 VII).
enum class EnergyMethod { Given, Atwater, ModifiedAtwater, Dog2006, Cat2006, PoultryAmen };

[[nodiscard]] std::optional<EnergyMethod> parseEnergyMethod(std::string_view text);
[[nodiscard]] std::string_view symbolOf(EnergyMethod method);

/// A carbohydrate or NFE below this (g per 100 g) is not measurement scatter: the food's proximates are
/// wrong.
inline constexpr double kLowestCredibleCarbohydrate = -10.0;

struct EnergyEstimate {
  std::optional<quantity::Kilocalories> per100g;  ///< nothing: a term is unknown, see missing
  std::vector<NutrientId> missing;                ///< the unknown terms
  std::optional<double> nitrogenFreeExtract;      ///< g per 100 g, where the method uses it; may be negative
  bool fibreTakenAsZero = false;         ///< neither FIBC nor FIBTG is known and the method needs one
  bool negativeCarbohydrate = false;     ///< CHOCDF or NFE below 0: kept, worth a warning
  bool implausibleCarbohydrate = false;  ///< below kLowestCredibleCarbohydrate: to be refused
};

[[nodiscard]] EnergyEstimate estimateEnergy(EnergyMethod method, const Composition& composition);

/// Kilocalories per gram, for foods whose protein, fat and carbohydrate have factors of their own.
struct AtwaterFactors {
  double protein = 4.0;
  double fat = 9.0;
  double carbohydrate = 4.0;
  double alcohol = 0.0;
};
/// 4/9/4 and 6.93 per gram of alcohol (the factor that reproduces SR28's energies).
inline constexpr AtwaterFactors kGeneralAtwaterWithAlcohol{4.0, 9.0, 4.0, 6.93};

/// Energy of 100 g by these factors; nothing where protein, fat or carbohydrate is unknown. Alcohol nobody
/// stated is none.
[[nodiscard]] std::optional<quantity::Kilocalories> atwaterEnergy(const Composition& composition,
                                                                  const AtwaterFactors& factors);

/// CHOCDF as stated or 100 - WATER - PROCNT - FAT - ASH; not clamped at 0.
[[nodiscard]] std::optional<double> carbohydrateByDifference(const Composition& composition);
/// CHOCDF - FIBC, or - FIBTG where FIBC is unknown, or - 0 where both are; not clamped at 0.
[[nodiscard]] std::optional<double> nitrogenFreeExtract(const Composition& composition);

}  // namespace tarebowl::food
