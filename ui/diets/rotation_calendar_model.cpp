// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_calendar_model.h"

#include "ui/diets/food_label.h"
#include "ui/diets/rotation_text.h"
#include "ui/shared/date_text.h"
#include "ui/shared/format.h"
#include "ui/shared/state_mark.h"

#include <QMimeData>

#include <algorithm>

namespace tarebowl::ui {

namespace {

using quantity::Grams;

const QString kCellKind = QStringLiteral("application/x-tarebowl-cell");

/// Foods that are fed on some day, or that may be.
std::vector<std::size_t> rowsOf(const RotationView& view) {
  std::vector<std::size_t> rows;
  const auto& foods = view.problem().base.foods;
  for (std::size_t food = 0; food < foods.size(); ++food) {
    if (view.isAllowance(food)) continue;
    const bool mayBe = !foods[food].max || *foods[food].max > Grams(0);
    const bool isFed =
        std::ranges::any_of(view.on.days, [food](const auto& day) { return day[food] > Grams(0); });
    if (mayBe || isFed) rows.push_back(food);
  }
  return rows;
}

}  // namespace

void RotationCalendarModel::show(const RotationView* view, quantity::Date today) {
  beginResetModel();
  view_ = view == nullptr ? std::nullopt : std::optional(*view);
  today_ = today;
  foods_ = view_ ? rowsOf(*view_) : std::vector<std::size_t>{};
  endResetModel();
}

std::optional<int> RotationCalendarModel::dayAt(int column) const {
  if (!view_ || column < 0 || column >= view_->days()) return std::nullopt;
  return column;
}

std::optional<CalendarCell> RotationCalendarModel::cellAt(const QModelIndex& index) const {
  if (!index.isValid() || isStates(index.row())) return std::nullopt;
  const auto day = dayAt(index.column());
  if (!day) return std::nullopt;
  return CalendarCell{foodAt(index.row()), *day};
}

QModelIndex RotationCalendarModel::indexOf(const CalendarCell& cell) const {
  const auto row = std::ranges::find(foods_, cell.food);
  if (row == foods_.end()) return {};
  return index(1 + static_cast<int>(row - foods_.begin()), cell.day);
}

int RotationCalendarModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !view_ ? 0 : static_cast<int>(foods_.size()) + 1;
}

int RotationCalendarModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() || !view_ ? 0 : view_->days() + 1;
}

Grams RotationCalendarModel::meanOf(std::size_t food) const {
  Grams sum;
  for (const diet::Diet& day : view_->on.days) sum += day[food];
  return sum / static_cast<double>(view_->days());
}

QString RotationCalendarModel::gramsText(const QModelIndex& index) const {
  const std::size_t food = foodAt(index.row());
  const Grams step = view_->problem().base.foods[food].scaleStep;
  const auto day = dayAt(index.column());
  if (!day) return measured(meanOf(food).value());
  const Grams mass = view_->gramsOn(*day, food);
  if (mass > Grams(0)) return grams(mass, step);
  return view_->isLocked(*day, food) ? QStringLiteral("0") : QStringLiteral("·");
}

QString RotationCalendarModel::sentence(const QModelIndex& index) const {
  const std::size_t food = foodAt(index.row());
  const QString name = foodLabel(view_->problem().base.foods[food]).name;
  const auto day = dayAt(index.column());
  if (!day) return tr("%1: %2 g a day on the mean").arg(name, gramsText(index));
  const QString mass =
      view_->gramsOn(*day, food) > Grams(0) ? tr("%1 g per animal").arg(gramsText(index)) : tr("not fed");
  const QString state = view_->isOver(*day)           ? tr(", fed")
                        : view_->isLocked(*day, food) ? tr(", locked")
                                                      : QString();
  return tr("%1, %2: %3").arg(name, longDay(view_->dateOf(*day)), mass + state);
}

QVariant RotationCalendarModel::stateData(int column, int role) const {
  const auto day = dayAt(column);
  const diet::Balance& balance =
      day ? view_->standing.days[static_cast<std::size_t>(*day)] : view_->standing.period;
  const auto missed = static_cast<int>(std::ranges::count_if(
      balance.targets, [](const auto& line) { return line.shortfall > diet::kNoShortfall; }));
  switch (role) {
    case MarkRole:
      return static_cast<int>(missed > 0 ? Mark::Lacking : Mark::Met);
    case Qt::DisplayRole:
      return missed > 0 ? tr("%1 missed").arg(missed) : wordOf(Mark::Met);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return day ? daySentences(*view_, *day).join(QLatin1Char('\n'))
                 : rotationSentences(*view_).join(QLatin1Char('\n'));
    default:
      return {};
  }
}

QVariant RotationCalendarModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const auto day = dayAt(index.column());
  if (role == OverRole) return day && view_->isOver(*day);
  if (role == IsTodayRole) return day && view_->dateOf(*day) == today_;
  if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
  if (isStates(index.row())) return stateData(index.column(), role);
  const std::size_t food = foodAt(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return gramsText(index);
    case Qt::EditRole:
      return day ? view_->gramsOn(*day, food).value() : QVariant();
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return sentence(index);
    case LockedRole:
      return day && view_->isLocked(*day, food);
    case StepRole:
      return view_->problem().base.foods[food].scaleStep.value();
    default:
      return {};
  }
}

QVariant RotationCalendarModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (!view_) return {};
  if (orientation == Qt::Vertical) {
    if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    if (isStates(section)) return tr("targets");
    const FoodLabel label = foodLabel(view_->problem().base.foods[foodAt(section)]);
    return label.remark.isEmpty() ? label.name : label.name + QStringLiteral(", ") + label.remark;
  }
  const auto day = dayAt(section);
  if (role == IsTodayRole) return day && view_->dateOf(*day) == today_;
  if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  if (!day) return tr("mean\na day");
  QString date = shortDay(view_->dateOf(*day));
  date.replace(date.indexOf(QLatin1Char(' ')), 1, QLatin1Char('\n'));
  const bool isMarked = !view_->problem().rules.fed.empty() || view_->kept().has(today_);
  if (!isMarked) return date;
  if (view_->isOver(*day)) return date + QLatin1Char('\n') + tr("fed");
  return date + QLatin1Char('\n') + (view_->dateOf(*day) == today_ ? tr("today") : QString());
}

Qt::ItemFlags RotationCalendarModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  const auto day = dayAt(index.column());
  if (!day || view_->isOver(*day)) return plain;
  Qt::ItemFlags flags = plain | Qt::ItemIsDropEnabled;
  const auto cell = cellAt(index);
  if (!cell) return flags;
  flags |= Qt::ItemIsEditable;
  if (view_->gramsOn(cell->day, cell->food) > Grams(0)) flags |= Qt::ItemIsDragEnabled;
  return flags;
}

bool RotationCalendarModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const auto cell = cellAt(index);
  bool isNumber = false;
  const double mass = value.toDouble(&isNumber);
  if (role != Qt::EditRole || !cell || !isNumber || mass < 0.0) return false;
  if (mass == view_->gramsOn(cell->day, cell->food).value()) return false;
  emit gramsWanted(static_cast<qint64>(cell->food), cell->day, mass);
  return true;
}

QStringList RotationCalendarModel::mimeTypes() const {
  return {kCellKind};
}

QMimeData* RotationCalendarModel::mimeData(const QModelIndexList& indexes) const {
  const auto cell = indexes.isEmpty() ? std::nullopt : cellAt(indexes.front());
  if (!cell) return nullptr;
  auto* data = new QMimeData;
  data->setData(kCellKind,
                QByteArray::number(static_cast<qlonglong>(cell->food)) + ' ' + QByteArray::number(cell->day));
  return data;
}

namespace {

std::optional<CalendarCell> cellIn(const QMimeData* data) {
  if (data == nullptr || !data->hasFormat(kCellKind)) return std::nullopt;
  const QList<QByteArray> parts = data->data(kCellKind).split(' ');
  if (parts.size() != 2) return std::nullopt;
  return CalendarCell{static_cast<std::size_t>(parts[0].toULongLong()), parts[1].toInt()};
}

}  // namespace

/// Wherever in a day it is let go.
bool RotationCalendarModel::canDropMimeData(const QMimeData* data, Qt::DropAction /*action*/, int /*row*/,
                                            int column, const QModelIndex& parent) const {
  const auto cell = cellIn(data);
  const auto day = dayAt(parent.isValid() ? parent.column() : column);
  return cell && day && *day != cell->day && !view_->isOver(*day);
}

bool RotationCalendarModel::dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                                         const QModelIndex& parent) {
  if (!canDropMimeData(data, action, row, column, parent)) return false;
  const auto cell = cellIn(data);
  emit moveWanted(static_cast<qint64>(cell->food), cell->day, parent.isValid() ? parent.column() : column);
  return true;
}

}  // namespace tarebowl::ui
