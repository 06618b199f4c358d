// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/diet_sheet.h"
#include "core/transfer/desk_diet.h"

namespace tarebowl::transfer {

/// The version as it is to be shown: what was approved with the foods and targets that were decided on, all
/// else as the collection has them now. Where a food of the version has gone since, that too is as of now.
[[nodiscard]] diet::ProblemOfVersion asDecided(const DeskDiet& desk);

/// The page of the version (asDecided).
[[nodiscard]] exchange::DietSheet sheetOf(const DeskDiet& desk, const exchange::PageTongue& tongue = {});

}  // namespace tarebowl::transfer
