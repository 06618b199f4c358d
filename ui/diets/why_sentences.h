// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/solve.h"
#include "ui/diets/diet_draft.h"
#include "ui/shared/state_mark.h"

#include <QString>

#include <optional>
#include <vector>

/// Why a diet stands as it does, in sentences and not in solver talk. Pure text.
namespace tarebowl::ui {

struct WhySentence {
  Mark mark = Mark::Met;
  QString lead;                 ///< what is so
  QString rest;                 ///< by how much, since when, what would settle it; may be empty
  std::optional<RungRef> rung;  ///< the rung it speaks of
};

/// Most urgent first. solution is the solver's answer for this draft, or nothing while there is none (in
/// hold).
[[nodiscard]] std::vector<WhySentence> whySentences(const DietDraft& draft, const diet::Balance& balance,
                                                    const std::optional<diet::DietSolution>& solution);

}  // namespace tarebowl::ui
