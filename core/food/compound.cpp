// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/compound.h"

#include <array>

namespace tarebowl::food {

namespace {

using enum Element;

constexpr std::array<double, 5> kMasses{1.008, 12.011, 15.999, 30.973762, 40.078};

constexpr std::array kCarbonate{Atoms{Calcium, 1}, Atoms{Carbon, 1}, Atoms{Oxygen, 3}};
constexpr std::array kDicalcium{Atoms{Calcium, 1}, Atoms{Hydrogen, 1}, Atoms{Phosphorus, 1},
                                Atoms{Oxygen, 4}};
constexpr std::array kDicalciumDihydrate{Atoms{Calcium, 1}, Atoms{Hydrogen, 5}, Atoms{Phosphorus, 1},
                                         Atoms{Oxygen, 6}};
constexpr std::array kTricalcium{Atoms{Calcium, 3}, Atoms{Phosphorus, 2}, Atoms{Oxygen, 8}};
constexpr std::array kMonocalciumHydrate{Atoms{Calcium, 1}, Atoms{Hydrogen, 6}, Atoms{Phosphorus, 2},
                                         Atoms{Oxygen, 9}};

constexpr std::array<Compound, 5> kCalciumSalts{{
    {"calcium carbonate (pure limestone)", "CaCO3", kCarbonate},
    {"dicalcium phosphate", "CaHPO4", kDicalcium},
    {"dicalcium phosphate dihydrate", "CaHPO4.2H2O", kDicalciumDihydrate},
    {"tricalcium phosphate", "Ca3(PO4)2", kTricalcium},
    {"monocalcium phosphate monohydrate", "Ca(H2PO4)2.H2O", kMonocalciumHydrate},
}};

}  // namespace

double molarMass(Element element) {
  return kMasses[static_cast<std::size_t>(element)];
}

std::span<const Compound> calciumSalts() {
  return kCalciumSalts;
}

double molarMass(const Compound& compound) {
  double mass = 0.0;
  for (const auto& [element, count] : compound.atoms) mass += count * molarMass(element);
  return mass;
}

double massShare(const Compound& compound, Element element) {
  double mass = 0.0;
  for (const auto& atoms : compound.atoms)
    if (atoms.element == element) mass += atoms.count * molarMass(element);
  return mass / molarMass(compound);
}

}  // namespace tarebowl::food
