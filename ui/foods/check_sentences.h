// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/checks.h"
#include "core/store/food_reading.h"
#include "ui/shared/state_mark.h"

#include <QString>

#include <vector>

namespace tarebowl::ui {

/// What a careful analyst would say of a food, and what to do about it.
struct CheckSentence {
  Mark mark = Mark::Met;
  QString what;    ///< "Calcium scatters by 31 %."
  QString advice;  ///< "More samples would settle it."
};

/// Never empty for a food with values: where nothing is doubtful it says so.
[[nodiscard]] std::vector<CheckSentence> checkSentences(const store::KnownFood& food);
[[nodiscard]] CheckSentence sentenceOf(const food::Finding& finding);

}  // namespace tarebowl::ui
