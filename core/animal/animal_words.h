// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/body_mass.h"
#include "core/animal/caution.h"
#include "core/animal/condition_score.h"
#include "core/animal/energy_derivation.h"
#include "core/animal/individual.h"
#include "core/animal/species.h"
#include "core/animal/target_profile.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

/// The words by which files, a collection and the command line name what stands in this folder.
namespace tarebowl::animal {

/// kWords in the order of the enumerators; no word for what has no member.
template <class Enum>
struct Words;

template <class Enum>
concept Worded = requires {
  Words<Enum>::kWords;
};

[[nodiscard]] constexpr std::string_view symbolOf(Worded auto value) {
  return Words<decltype(value)>::kWords.at(static_cast<std::size_t>(value));
}

/// The enumerator with this very word; nothing for any other text.
template <Worded Enum>
[[nodiscard]] constexpr std::optional<Enum> parseWord(std::string_view text) {
  const auto& words = Words<Enum>::kWords;
  const auto* const found = std::find(words.begin(), words.end(), text);
  if (found == words.end()) return std::nullopt;
  return static_cast<Enum>(found - words.begin());
}

template <std::size_t Count>
using WordList = std::array<std::string_view, Count>;

/// Unstated is the empty word.
template <>
struct Words<Provenance> {
  static constexpr WordList<6> kWords{"", "seen", "memory", "house-rule", "invented", "derived"};
};

template <>
struct Words<Sex> {
  static constexpr WordList<3> kWords{"unknown", "female", "male"};
};

template <>
struct Words<LifeStage> {
  static constexpr WordList<6> kWords{"unweaned", "growing", "adult", "pregnant", "lactating", "senior"};
};

template <>
struct Words<IndividualProblem> {
  static constexpr WordList<8> kWords{"no-code",
                                      "no-species",
                                      "born-after-leaving",
                                      "arrived-after-leaving",
                                      "born-after-arriving",
                                      "stages-not-in-order",
                                      "stage-before-birth",
                                      "died-without-day"};
};

template <>
struct Words<FeedingType> {
  static constexpr WordList<9> kWords{"carnivore",   "piscivore", "insectivore", "omnivore", "frugivore",
                                      "nectarivore", "folivore",  "grazer",      "granivore"};
};

template <>
struct Words<MassMethod> {
  static constexpr WordList<5> kWords{"scale", "trained-on-scale", "carried", "under-anaesthesia",
                                      "estimated"};
};

template <>
struct Words<MassDoubt> {
  static constexpr WordList<5> kWords{"not-above-zero", "grams-as-kilograms", "kilograms-as-grams",
                                      "far-from-own-history", "in-the-future"};
};

template <>
struct Words<ConditionProblem> {
  static constexpr WordList<3> kWords{"unknown-scale", "off-the-scale", "between-steps"};
};

template <>
struct Words<ProfileProblem> {
  static constexpr WordList<14> kWords{"no-code",
                                       "version-below-one",
                                       "own-parent",
                                       "no-id",
                                       "same-id-twice",
                                       "neither-bound",
                                       "bound-not-an-amount",
                                       "min-above-max",
                                       "preferred-outside-bounds",
                                       "unit-of-another-kind",
                                       "upper-limit-without-max",
                                       "lifted-without-reason",
                                       "dropped-without-reason",
                                       "exclusion-of-nothing"};
};

template <>
struct Words<CautionSeverity> {
  static constexpr WordList<3> kWords{"never", "limit", "consider"};
};

template <>
struct Words<EnergyLevel> {
  static constexpr WordList<3> kWords{"resting", "maintenance", "free-living"};
};

template <>
struct Words<EnergyFactor::Kind> {
  static constexpr WordList<6> kWords{"maintenance", "life-stage",    "activity",
                                      "season",      "condition-aim", "house"};
};

template <>
struct Words<EnergyCaution> {
  static constexpr WordList<5> kWords{"not-a-feeding-rate", "free-living-level", "outside-validity",
                                      "source-from-memory", "factors-double-count"};
};

template <>
struct Words<EnergyStep::Kind> {
  static constexpr WordList<7> kWords{"body-mass",  "metabolic-mass", "level", "factor",
                                      "per-animal", "headcount",      "group"};
};

}  // namespace tarebowl::animal
