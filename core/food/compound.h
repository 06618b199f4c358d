// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace tarebowl::food {

enum class Element { Hydrogen, Carbon, Oxygen, Phosphorus, Calcium };

/// Standard atomic weight in g/mol (IUPAC, abridged).
[[nodiscard]] double molarMass(Element element);

/// So many atoms of an element in a formula.
struct Atoms {
  Element element;
  int count;
};

/// A pure substance given as a supplement. What is sold may be less pure: the label's or a lab's value goes
/// first.
struct Compound {
  std::string_view name;
  std::string_view formula;
  std::span<const Atoms> atoms;
};

/// Calcium and phosphorus salts used as supplements.
[[nodiscard]] std::span<const Compound> calciumSalts();

/// g/mol.
[[nodiscard]] double molarMass(const Compound& compound);
/// Share of the compound's mass that is this element, 0 … 1.
[[nodiscard]] double massShare(const Compound& compound, Element element);

}  // namespace tarebowl::food
