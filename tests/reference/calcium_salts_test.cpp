// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Calcium and phosphorus in pure salts, from IUPAC atomic weights (Ca 40.078, C 12.011, O 15.999, H 1.008,
// P 30.973762).
#include "core/food/compound.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace tarebowl::reference {
namespace {

using namespace food;

const Compound& salt(std::string_view formula) {
  return *std::ranges::find(calciumSalts(), formula, &Compound::formula);
}

struct Salt {
  const char* formula;
  double calcium;     // % of mass
  double phosphorus;  // % of mass
};
// CaCO3: 40.078 / (40.078 + 12.011 + 3*15.999) = 40.078 / 100.086 = 40.0436 %.
constexpr std::array kSalts{Salt{"CaCO3", 40.0436, 0.0}, Salt{"CaHPO4", 29.4570, 22.7655},
                            Salt{"CaHPO4.2H2O", 23.2896, 17.9990}, Salt{"Ca3(PO4)2", 38.7635, 19.9719},
                            Salt{"Ca(H2PO4)2.H2O", 15.8999, 24.5761}};

TEST(CalciumSalts, HoldTheCalciumAndPhosphorusOfTheirFormula) {
  EXPECT_EQ(calciumSalts().size(), kSalts.size());
  for (const auto& [formula, calcium, phosphorus] : kSalts) {
    EXPECT_NEAR(100.0 * massShare(salt(formula), Element::Calcium), calcium, 5e-5) << formula;
    EXPECT_NEAR(100.0 * massShare(salt(formula), Element::Phosphorus), phosphorus, 5e-5) << formula;
  }
}

// 100 g house crickets (Finke 2002, from memory): Ca 40.7 mg, P 295 mg, Ca:P 0.138. For 1.5:1 they need
// (1.5*295 - 40.7) mg Ca = 401.8 mg, that is 401.8 / 400.436 = 1.003407 g calcium carbonate that stays on
// them.
TEST(CalciumSalts, AHundredGramsOfCricketsNeedOneGramOfCarbonateForOneAndAHalfToOne) {
  const double missing = 1.5 * 295.0 - 40.7;
  const double grams = missing / (1000.0 * massShare(salt("CaCO3"), Element::Calcium));
  EXPECT_NEAR(grams, 1.003407, 5e-7);
}

TEST(CalciumSalts, AllElementsTogetherAreTheWhole) {
  for (const auto& compound : calciumSalts()) {
    double share = 0.0;
    for (const auto element :
         {Element::Hydrogen, Element::Carbon, Element::Oxygen, Element::Phosphorus, Element::Calcium})
      share += massShare(compound, element);
    EXPECT_NEAR(share, 1.0, 1e-12) << compound.formula;
  }
}

}  // namespace
}  // namespace tarebowl::reference
