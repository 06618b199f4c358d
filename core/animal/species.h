// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace tarebowl::animal {

/// What a species lives on, in the words of the trade.
enum class FeedingType {
  Carnivore,
  Piscivore,
  Insectivore,
  Omnivore,
  Frugivore,
  Nectarivore,
  Folivore,
  Grazer,
  Granivore
};

/// A species of the collection. No two have the same code.
struct Species {
  std::string code{};            ///< "red-ruffed-lemur"
  std::string name{};            ///< "Red ruffed lemur"
  std::string scientificName{};  ///< "Varecia rubra"
  FeedingType feedingType = FeedingType::Omnivore;
  /// The groups of animals it belongs to, the widest first: "mammal", "primate", "lemur". Cautions, model
  /// species and energy choices speak of them.
  std::vector<std::string> taxa{};
  std::string note{};
  bool invented = false;
  bool operator==(const Species&) const = default;
};

}  // namespace tarebowl::animal
