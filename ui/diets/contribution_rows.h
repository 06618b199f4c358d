// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"
#include "ui/shared/contribution_chart.h"

namespace tarebowl::ui {

/// What the foods bring to a rung, as the chart shows it: amounts per animal and day for a nutrient, both
/// nutrients for a ratio, the share of the basis for a share rule.
[[nodiscard]] ContributionChartState contributionRows(const DietDraft& draft, RungRef rung);

}  // namespace tarebowl::ui
