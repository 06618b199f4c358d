// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_view.h"
#include "ui/shared/rows_model.h"
#include "ui/shared/state_mark.h"

#include <QString>

#include <optional>
#include <vector>

/// What the Intake room says in words.
namespace tarebowl::ui {

/// "12.5", "0.4"; no more digits than a kitchen scale shows.
[[nodiscard]] QString gramsADay(double grams);
/// "1 bowl", "12 bowls".
[[nodiscard]] QString bowlsText(std::size_t bowls);
/// "3 Oct 2026", "3 Oct 2026 – 9 Oct 2026".
[[nodiscard]] QString spanText(const DaySpan& span);
/// What stands behind a point: "3 Oct 2026 · 2 bowls", "… · 5 of 7 days known (9 bowls)".
[[nodiscard]] QString daysText(const ChartDays& point);
/// "0.31 (0.27–0.35)".
[[nodiscard]] QString alphaText(const std::optional<double>& alpha,
                                const std::optional<intake::Interval>& interval);
/// "14 Aug 2026 – 20 Aug 2026: down to 4.1, 60 % below the usual 10.3 (median of 52 known days)".
[[nodiscard]] QString dropText(const intake::Drop& drop);
/// The house rule in words.
[[nodiscard]] QString dropRuleText(const intake::DropRule& rule);

/// Points of the trend that lie in these days.
[[nodiscard]] std::vector<const intake::IntakeStretch*> pointsWithin(const transfer::IntakeTrend& trend,
                                                                     const DaySpan& span);
/// How many of the days are known: the others are missing, not zero.
[[nodiscard]] QString knownText(const transfer::IntakeTrend& trend, const DaySpan& span);

struct NoticedLine {
  Mark mark = Mark::Met;
  QString text{};
  bool operator==(const NoticedLine&) const = default;
};
[[nodiscard]] std::vector<NoticedLine> noticedIn(const transfer::IntakeTrend& trend, const DaySpan& span);
[[nodiscard]] QString perAnimalText(const transfer::IntakeTrend& trend, const DaySpan& span);

/// A row for each food, the most offered first: grams a day offered and eaten, their share, how many bowls,
/// how far it is eaten in the long run, and how early it is picked.
[[nodiscard]] QStringList foodTitles();
[[nodiscard]] std::vector<RowsModel::Row> foodRows(const transfer::IntakeTrend& trend, const DaySpan& span);

}  // namespace tarebowl::ui
