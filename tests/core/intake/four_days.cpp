// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/intake/four_days.h"

#include "tests/core/diet/bowls.h"
#include "tests/core/intake/feeding.h"

namespace tarebowl::intake::testing {

std::vector<EatenBowl> fourDaysOfKale() {
  const std::vector<WaterPan> pans = {pan(100, 80)};
  const PanBook book(pans);
  std::vector<EatenBowl> bowls;
  for (const Remains& left :
       {Remains(weighed(32)), Remains(weighed(64)), Remains(NotWeighed{}), Remains(weighed(48))}) {
    FedBowl bowl = bowlOf({fed("kale", 160, left)}, dayAfter("2026-09-01", static_cast<int>(bowls.size())));
    bowl.animals = 2;
    bowls.push_back(eatenFrom(bowl, book, static_cast<std::uint32_t>(bowls.size())));
  }
  return bowls;
}

diet::BalanceProblem kaleAgainstCalcium(double least) {
  diet::BalanceProblem made;
  made.foods = {foodOf("kale", 90, 200, 50)};
  made.targets = {
      diet::testing::target("CA", {.min = least}, quantity::Unit::Milligram, quantity::Basis::Day)};
  return made;
}

}  // namespace tarebowl::intake::testing
