// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_table.h"

#include "ui/intake/intake_text.h"
#include "ui/shared/table_copy.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <sstream>

namespace tarebowl::ui {
namespace {

struct Intake {
  Q_DECLARE_TR_FUNCTIONS(Intake)
};

using exchange::Cell;

Cell cellOf(const std::optional<double>& value) {
  return value ? Cell(*value) : Cell(std::string());
}

Cell titleOf(const QString& text) {
  return text.toStdString();
}

std::vector<std::string> foodsIn(const std::vector<const intake::IntakeStretch*>& points) {
  std::vector<std::string> codes;
  for (const intake::IntakeStretch* point : points)
    for (const intake::StretchFood& food : point->foods)
      if (std::ranges::find(codes, food.food) == codes.end()) codes.push_back(food.food);
  return codes;
}

std::vector<Cell> titles(const transfer::IntakeTrend& trend, const std::vector<std::string>& foods) {
  std::vector<Cell> row{titleOf(Intake::tr("From")), titleOf(Intake::tr("Until")),
                        titleOf(Intake::tr("Days with a bowl")), titleOf(Intake::tr("Days known")),
                        titleOf(Intake::tr("Bowls behind it"))};
  for (const std::size_t line : {transfer::kSubjectLine, transfer::kCalciumLine}) {
    const ValueLine shown = valueLineOf(trend, line);
    const QString what = shown.unit.isEmpty() ? shown.name : shown.name + QStringLiteral(", ") + shown.unit;
    row.push_back(titleOf(Intake::tr("%1, offered").arg(what)));
    row.push_back(titleOf(Intake::tr("%1, eaten").arg(what)));
    row.push_back(titleOf(Intake::tr("%1, sd of eaten").arg(what)));
  }
  for (const std::string& food : foods) {
    row.push_back(titleOf(Intake::tr("%1, offered g a day").arg(foodNameIn(trend, food))));
    row.push_back(titleOf(Intake::tr("%1, eaten g a day").arg(foodNameIn(trend, food))));
  }
  return row;
}

}  // namespace

std::vector<std::vector<Cell>> intakeTable(const transfer::IntakeTrend& trend, const DaySpan& span) {
  const auto points = pointsWithin(trend, span);
  const std::vector<std::string> foods = foodsIn(points);
  std::vector<std::vector<Cell>> table{titles(trend, foods)};
  for (const intake::IntakeStretch* point : points) {
    std::vector<Cell>& row = table.emplace_back();
    row.insert(row.end(), {quantity::isoDate(point->from), quantity::isoDate(point->until)});
    for (const std::size_t count : {point->days, point->daysKnown, point->bowlsKnown})
      row.emplace_back(static_cast<double>(count));
    for (const std::size_t line : {transfer::kSubjectLine, transfer::kCalciumLine}) {
      const intake::StretchValue value =
          point->values.empty() ? intake::StretchValue{} : point->values.at(line);
      row.push_back(cellOf(value.offered));
      row.push_back(cellOf(value.eaten));
      row.push_back(cellOf(value.eaten ? std::optional(value.sd) : std::nullopt));
    }
    const auto days = static_cast<double>(point->daysKnown);
    for (const std::string& code : foods) {
      const auto food = std::ranges::find(point->foods, code, &intake::StretchFood::food);
      const bool known = food != point->foods.end() && days > 0.0;
      row.push_back(cellOf(known ? std::optional(food->offered / days) : std::nullopt));
      row.push_back(cellOf(known ? std::optional(food->eaten / days) : std::nullopt));
    }
  }
  return table;
}

std::string intakeTableAsCsv(const transfer::IntakeTrend& trend, const DaySpan& span) {
  std::ostringstream out;
  exchange::CsvWriter writer(out);
  for (const auto& row : intakeTable(trend, span)) writer.write(row);
  return out.str();
}

QString intakeTableToCopy(const transfer::IntakeTrend& trend, const DaySpan& span) {
  QString text;
  for (const auto& row : intakeTable(trend, span)) {
    QStringList cells;
    for (const Cell& cell : row) {
      const auto* words = std::get_if<std::string>(&cell);
      cells << (words != nullptr ? copiedCell(QString::fromStdString(*words))
                                 : QString::fromStdString(exchange::numberText(std::get<double>(cell))));
    }
    text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
  }
  return text;
}

}  // namespace tarebowl::ui
