// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explore.h"
#include "ui/diets/diet_draft.h"

#include <QString>

#include <optional>
#include <vector>

/// A trace in the trade's words: what moves, what it reads at one place, and what has to give. Pure text.
namespace tarebowl::ui {

/// What the Explore sheet can show: a bound that moves, or what is sought traded for something else.
struct TraceSubject {
  diet::TracedBound moved{};
  std::optional<diet::Objective> against{};
  bool operator==(const TraceSubject&) const = default;
};

/// Every bound of every rule, every food's limits, every trade worth looking at; in this order.
[[nodiscard]] std::vector<TraceSubject> traceSubjects(const diet::BalanceProblem& problem);

[[nodiscard]] RungRef rungOfLine(const diet::BalanceProblem& problem, std::size_t line);
[[nodiscard]] std::size_t lineOfRung(const diet::BalanceProblem& problem, RungRef rung);

/// "Calcium, minimum"; "Kale, maximum"; "Lowest cost against closest to now".
[[nodiscard]] QString subjectText(const diet::BalanceProblem& problem, const TraceSubject& subject);
/// Of the numbers along the chart: "g/kg DM", "g", "cost a day".
[[nodiscard]] QString subjectUnit(const diet::BalanceProblem& problem, const TraceSubject& subject);
/// Shares are kept as 0 … 1 and read in %.
[[nodiscard]] double subjectScale(const diet::BalanceProblem& problem, const TraceSubject& subject);
/// What the objective's curve counts: "distance from now", "cost a day", "mg iron".
[[nodiscard]] QString objectiveAxisText(const diet::Objective& objective);

/// "At 8.2 g/kg DM: Kale 22.1 g, Crickets 8 g; distance from now 0.13; Calcium short by 4 %."
[[nodiscard]] QString readingText(const diet::BalanceProblem& problem, const TraceSubject& subject,
                                  const diet::TracePoint& point);

/// What the whole trace says, for the eye and for a screen reader: where something begins to give, and how
/// far it goes.
[[nodiscard]] QString traceSentence(const diet::BalanceProblem& problem, const TraceSubject& subject,
                                    const diet::Trace& trace);

}  // namespace tarebowl::ui
