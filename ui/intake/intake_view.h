// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
// moc of Qt 6.4 cannot read <chrono> before <string>.

#include "core/transfer/intake_trend.h"

#include <QDate>
#include <QString>

#include <optional>
#include <vector>

/// What the charts of the Intake room show, worked out apart from the widgets.
namespace tarebowl::ui {

/// Days that are in sight, both in it.
struct DaySpan {
  QDate from{};
  QDate until{};
  [[nodiscard]] int days() const { return static_cast<int>(from.daysTo(until)) + 1; }
  bool operator==(const DaySpan&) const = default;
};

/// One point of a chart: a day, or a few of them together.
struct ChartDays {
  DaySpan span{};
  std::size_t days = 0;  ///< with a bowl
  std::size_t daysKnown = 0;
  std::size_t bowls = 0;
  std::size_t bowlsKnown = 0;  ///< that stand behind what is said to be eaten
  /// There were bowls, or should have been, and nothing of the point is known.
  [[nodiscard]] bool isMissing() const { return daysKnown == 0; }
};

/// Grams a day of all animals, food on food; the last one is all others together.
struct FoodBand {
  QString name{};
  std::vector<double> offered{};
  std::vector<double> eaten{};
};
struct FoodBands {
  std::vector<ChartDays> points{};
  std::vector<FoodBand> bands{};
};
[[nodiscard]] FoodBands foodBandsOf(const transfer::IntakeTrend& trend);

/// One line of what is followed.
struct ValueLine {
  QString name{};  ///< "Calcium", "Ca : P"
  QString unit{};  ///< "g/kg DM", "mg a day and animal"; empty for a ratio
  std::optional<double> min{};
  std::optional<double> max{};
  std::vector<ChartDays> points{};
  std::vector<std::optional<double>> offered{};
  std::vector<std::optional<double>> eaten{};
  std::vector<double> sd{};
  std::vector<intake::Drop> drops{};
};
[[nodiscard]] ValueLine valueLineOf(const transfer::IntakeTrend& trend, std::size_t line);

/// Manly's alpha of each food of one bowl, period after period.
struct ChoiceLine {
  QString name{};
  std::vector<std::optional<double>> alpha{};
  std::vector<std::optional<intake::Interval>> interval{};
};
struct ChoiceLines {
  std::string label{};  ///< of the bowl
  std::vector<DaySpan> periods{};
  std::vector<std::size_t> bowls{};  ///< behind each period
  std::vector<ChoiceLine> foods{};
  double neutral = 0.0;
};
/// Labels of the bowls in which something is chosen, the most told of first.
[[nodiscard]] std::vector<std::string> choiceLabels(const transfer::IntakeTrend& trend);
[[nodiscard]] ChoiceLines choiceLinesOf(const transfer::IntakeTrend& trend, const std::string& label);

/// What the collection calls a food.
[[nodiscard]] QString foodNameIn(const transfer::IntakeTrend& trend, const std::string& code);
[[nodiscard]] DaySpan daysOf(quantity::Date from, quantity::Date until);

}  // namespace tarebowl::ui
