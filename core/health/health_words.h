// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/health/observation.h"

/// The words by which files, a collection and the command line name what stands in this folder.
namespace tarebowl::animal {

template <>
struct Words<health::SignKind> {
  static constexpr WordList<8> kWords{"faeces",   "appetite", "vomiting",  "limping",
                                      "fracture", "blood",    "treatment", "other"};
};

template <>
struct Words<health::Appetite> {
  static constexpr WordList<5> kWords{"none", "poor", "reduced", "usual", "keen"};
};

template <>
struct Words<health::Softer> {
  static constexpr WordList<2> kWords{"higher", "lower"};
};

template <>
struct Words<health::Analyte> {
  static constexpr WordList<6> kWords{"calcium",   "ionised-calcium", "phosphorus",
                                      "magnesium", "25-oh-d3",        "alkaline-phosphatase"};
};

}  // namespace tarebowl::animal
