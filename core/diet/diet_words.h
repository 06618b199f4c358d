// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/diet/diet_version.h"
#include "core/diet/problem.h"
#include "core/diet/version_difference.h"

/// The words by which files, a collection and the command line name what stands in this folder.
namespace tarebowl::animal {

template <>
struct Words<diet::Objective::Kind> {
  static constexpr WordList<5> kWords{"closest", "lowest-cost", "lowest", "highest", "fewest-foods"};
};

template <>
struct Words<diet::Purpose> {
  static constexpr WordList<5> kWords{"bowl", "treat", "training-reward", "enrichment", "browse"};
};

template <>
struct Words<diet::VersionState> {
  static constexpr WordList<4> kWords{"draft", "submitted", "approved", "retired"};
};

template <>
struct Words<diet::DifferenceKind> {
  static constexpr WordList<26> kWords{"line-added",
                                       "line-removed",
                                       "amount",
                                       "min",
                                       "max",
                                       "locked",
                                       "purpose",
                                       "preparation",
                                       "allowance-added",
                                       "allowance-removed",
                                       "allowance-low",
                                       "allowance-high",
                                       "bound-min",
                                       "bound-max",
                                       "profile",
                                       "objective",
                                       "confidence",
                                       "energy-method",
                                       "whole-steps",
                                       "shares",
                                       "choices",
                                       "lifted",
                                       "back-in-force",
                                       "lifted-reason",
                                       "fed-from",
                                       "phase-in-days"};
};

}  // namespace tarebowl::animal
