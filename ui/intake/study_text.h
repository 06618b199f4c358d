// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/faeces.h"
#include "core/transfer/study_planning.h"
#include "ui/intake/intake_view.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// Studies in words.
namespace tarebowl::ui {

/// The days of a planned study.
[[nodiscard]] DaySpan daysOfPlan(const exchange::StudyPlanToWrite& plan);
/// "12 days, 1 Dec 2026 – 12 Dec 2026".
[[nodiscard]] QString planHeading(const exchange::StudyPlanToWrite& plan);
/// Why so many days.
[[nodiscard]] QString planReason(const exchange::StudyPlanToWrite& plan);
/// What the kitchen does each day, a line each.
[[nodiscard]] QStringList planSteps(const exchange::StudyPlanToWrite& plan);
/// Why there is no plan, and what to do.
[[nodiscard]] QString noPlanText(const transfer::NoStudyPlan& none);

/// "3 Oct 2026 – 7 Oct 2026: 412 g fresh, 24.3 g DM in 100 g; CA 1850 ± 90 mg, P 1200 mg per 100 g DM".
[[nodiscard]] QString faecesText(const intake::FaecesCollected& faeces);

/// What is wrong with what was typed, and how it is put right.
[[nodiscard]] QString faecesProblemText(intake::FaecesProblem problem);

/// What a person types of an analysis: "Ca 1850 ± 90; P 1200", by tagname, name or a laboratory's word.
struct ReadValues {
  std::vector<intake::FaecesValue> values{};
  QString complaint{};  ///< empty where all of it was read
};
[[nodiscard]] ReadValues readFaecesValues(const QString& text);

}  // namespace tarebowl::ui
