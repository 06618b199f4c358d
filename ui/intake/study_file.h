// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/study_page.h"
#include "core/exchange/study_plan_page.h"

#include <QString>

#include <filesystem>
#include <optional>

namespace tarebowl::ui {

/// Writes the report of an intake study as .pdf, .xlsx or .html. Nothing on success, else why it was not
/// written.
[[nodiscard]] std::optional<QString> writeStudy(const exchange::IntakeToWrite& study,
                                                const std::filesystem::path& file);
/// The plan of one as .pdf or .html.
[[nodiscard]] std::optional<QString> writeStudyPlan(const exchange::StudyPlanToWrite& plan,
                                                    const std::filesystem::path& file);

}  // namespace tarebowl::ui
