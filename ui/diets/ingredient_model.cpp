// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/ingredient_model.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_facts.h"
#include "ui/diets/food_label.h"
#include "ui/diets/version_text.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"

#include <QFont>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {

IngredientModel::IngredientModel(DietDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &DietDesk::opened, this, &IngredientModel::reset);
  connect(&desk, &DietDesk::restructured, this, &IngredientModel::reset);
  connect(&desk, &DietDesk::foodsChanged, this, &IngredientModel::refresh);
  reset();
}

void IngredientModel::reset() {
  beginResetModel();
  shares_ = dryMatterShares(desk_.problem(), desk_.draft().grams);
  endResetModel();
}

void IngredientModel::refresh() {
  shares_ = dryMatterShares(desk_.problem(), desk_.draft().grams);
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void IngredientModel::setPerGroup(bool perGroup) {
  perGroup_ = perGroup;
  refresh();
  emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

bool IngredientModel::hasCosts() const {
  const auto& foods = desk_.problem().foods;
  return std::any_of(foods.begin(), foods.end(), [](const auto& food) { return food.costPerKg.has_value(); });
}

double IngredientModel::animals() const {
  return perGroup_ ? std::max(1, desk_.problem().eater.count) : 1.0;
}

int IngredientModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(desk_.problem().foods.size());
}

int IngredientModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant IngredientModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) {
    const bool left = section == Food || section == ShareBar;
    return static_cast<int>((left ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  }
  if (role == Qt::ToolTipRole && section == Lock)
    return tr("Locked foods keep their grams; the others give way");
  if (role == Qt::ToolTipRole && section == ShareBar) return tr("Share of the eaten dry matter (DM)");
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Food:
      return tr("food and form");
    case GramsADay:
      return perGroup_ ? tr("group a day") : tr("a day");
    case Lock:
      return QString();
    case Min:
      return tr("min");
    case Max:
      return tr("max");
    case ShareBar:
      return tr("share of DM");
    case Share:
      return QString();
    case Cost:
      return tr("cost");
    default:
      return {};
  }
}

Qt::ItemFlags IngredientModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  if (!index.isValid()) return flags;
  if (desk_.isReadOnly()) return flags;
  const int column = index.column();
  if (column == GramsADay || column == Min || column == Max) flags |= Qt::ItemIsEditable;
  if (column == Lock) flags |= Qt::ItemIsUserCheckable;
  return flags;
}

std::optional<double> IngredientModel::number(std::size_t food, int column) const {
  const diet::DietFood& row = desk_.problem().foods[food];
  const double grams = desk_.draft().grams[food].value();
  switch (column) {
    case GramsADay:
      return animals() * grams;
    case Min:
      return animals() * row.min.value();
    case Max:
      return row.max ? std::optional(animals() * row.max->value()) : std::nullopt;
    case ShareBar:
    case Share:
      return shares_.at(food);
    case Cost:
      return row.costPerKg ? std::optional(animals() * *row.costPerKg * grams / 1000.0) : std::nullopt;
    default:
      return std::nullopt;
  }
}

QString IngredientModel::text(std::size_t food, int column) const {
  const diet::DietFood& row = desk_.problem().foods[food];
  if (column == Food) return QString::fromStdString(row.name);
  if (column == Lock) return desk_.draft().locked[food] ? tr("locked") : QString();
  const auto value = number(food, column);
  if (!value) return column == Max ? QStringLiteral("–") : QStringLiteral("?");
  switch (column) {
    case GramsADay:
    case Min:
    case Max:
      return grams(quantity::Grams(*value), row.scaleStep);
    case Cost:
      return *value == 0.0 ? QStringLiteral("0") : decimal(*value, *value < 0.095 ? 3 : 2);
    case ShareBar:
      return {};
    default:
      return percent(*value);
  }
}

QVariant IngredientModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const auto food = static_cast<std::size_t>(index.row());
  const diet::DietFood& row = desk_.problem().foods[food];
  switch (role) {
    case Qt::DisplayRole:
      return text(food, index.column());
    case Qt::EditRole:
    case NumberRole: {
      if (index.column() == Food) return text(food, Food);
      const auto value = number(food, index.column());
      return value ? QVariant(*value) : QVariant();
    }
    case Qt::CheckStateRole:
      return index.column() == Lock ? QVariant(desk_.draft().locked[food] ? Qt::Checked : Qt::Unchecked)
                                    : QVariant();
    case Qt::TextAlignmentRole:
      return static_cast<int>((index.column() == Food ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    case NameRole:
      return foodLabel(row).name;
    case RemarkRole:
      return foodLabel(row).remark;
    case UnitRole:
      return index.column() == GramsADay ? tr("g") : QString();
    case StepRole:
      return animals() * row.scaleStep.value();
    case DecimalsRole:
      return scaleDecimals(row.scaleStep);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return description(food, index.column());
    default:
      return {};
  }
}

QString IngredientModel::foodDescription(std::size_t food) const {
  const diet::DietFood& row = desk_.problem().foods[food];
  QStringList parts{QString::fromStdString(row.name)};
  if (!row.form.empty()) parts << QString::fromStdString(row.form);
  if (!row.preparation.empty()) parts << QString::fromStdString(row.preparation);
  if (!row.group.empty()) parts << tr("group: %1").arg(QString::fromStdString(row.group));
  if (row.eatenFraction < 1.0) parts << tr("%1 of it is eaten").arg(percent(row.eatenFraction));
  if (row.invented) parts << tr("invented product");
  const diet::PlaceInVersion& place = desk_.draft().places.at(food);
  if (place.allowance)
    parts << tr("%1, unweighed: %2 to %3 g")
                 .arg(purposeText(place.allowance->purpose), stated(place.allowance->low.value()),
                      stated(place.allowance->high.value()));
  else if (place.purpose != diet::Purpose::Bowl)
    parts << tr("given as %1").arg(purposeText(place.purpose));
  return parts.join(QStringLiteral(" · "));
}

QString IngredientModel::description(std::size_t food, int column) const {
  const diet::DietFood& row = desk_.problem().foods[food];
  const QString name = QString::fromStdString(row.name);
  switch (column) {
    case Food:
      return foodDescription(food);
    case GramsADay:
      return tr("%1: %2 g %3, in steps of %4 g")
          .arg(name, text(food, column), perGroup_ ? tr("for the group a day") : tr("per animal a day"),
               stated(animals() * row.scaleStep.value()));
    case Lock:
      return desk_.draft().locked[food] ? tr("%1 is locked: it keeps its grams").arg(name)
                                        : tr("%1 is free: it gives way when another food is held").arg(name);
    case Min:
      return tr("%1: at least %2 g").arg(name, text(food, column));
    case Max:
      return row.max ? tr("%1: at most %2 g").arg(name, text(food, column)) : tr("%1: no maximum").arg(name);
    case ShareBar:
    case Share:
      return shares_.at(food) ? tr("%1: %2 of the dry matter").arg(name, percent(*shares_.at(food)))
                              : tr("%1: its water is unknown").arg(name);
    default:
      return row.costPerKg ? tr("%1: %2 a day").arg(name, text(food, column)) : tr("%1: no price").arg(name);
  }
}

bool IngredientModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return false;
  const auto food = static_cast<std::size_t>(index.row());
  if (index.column() == Lock && role == Qt::CheckStateRole) {
    desk_.setLocked(food, value.toInt() == Qt::Checked);
    return true;
  }
  if (role != Qt::EditRole) return false;
  if (index.column() == Min || index.column() == Max) return setLimits(food, index.column(), value);
  bool isNumber = false;
  const double mass = value.toDouble(&isNumber);
  if (index.column() != GramsADay || !isNumber) return false;
  desk_.setGrams(food, quantity::Grams(mass / animals()));
  return true;
}

bool IngredientModel::setLimits(std::size_t food, int column, const QVariant& value) {
  const diet::DietFood& row = desk_.problem().foods[food];
  bool isNumber = false;
  const quantity::Grams mass(value.toDouble(&isNumber) / animals());
  if (column == Min) return desk_.setLimits(food, isNumber ? mass : quantity::Grams(0.0), row.max);
  return desk_.setLimits(food, row.min, isNumber ? std::optional(mass) : std::nullopt);
}

}  // namespace tarebowl::ui
