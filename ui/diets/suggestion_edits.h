// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/edit_commands.h"
#include "ui/diets/suggestion.h"

/// Suggestions as changes of the draft, each one step of undo. Nothing where the draft has what is suggested
/// already, or no longer what it speaks of.
namespace tarebowl::ui {

[[nodiscard]] std::optional<DraftChange> tryOut(const DietDraft& draft, const QString& words,
                                                const AddedFood& added);
[[nodiscard]] std::optional<DraftChange> tryOut(const DietDraft& draft, const QString& words,
                                                const RaisedFood& raised);

/// The diet's own choices with that of one group moved.
[[nodiscard]] std::vector<animal::ChoiceRule> choicesWith(const DietDraft& draft, const MovedChoice& moved);

}  // namespace tarebowl::ui
