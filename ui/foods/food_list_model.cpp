// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_list_model.h"

#include "ui/foods/food_text.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

namespace nutrients = food::nutrients;

QString figureText(double figure, int column) {
  const int decimals = column == FoodListModel::CalciumToPhosphorus ? 2 : 1;
  return decimal(figure, decimals);
}

}  // namespace

std::optional<double> figureOf(const food::Composition& composition, int column) {
  const auto onDryMatter = [&](food::NutrientId nutrient) -> std::optional<double> {
    const auto amount = composition.amountPer100g(nutrient);
    const auto dryMatter = composition.dryMatter();
    if (!amount || !dryMatter) return std::nullopt;
    return *amount / dryMatter->value();
  };
  switch (column) {
    case FoodListModel::Water:
      return composition.amountPer100g(nutrients::water());
    case FoodListModel::Protein:
      return onDryMatter(nutrients::protein());
    case FoodListModel::Calcium:
      if (const auto mgPer100g = onDryMatter(nutrients::calcium())) return *mgPer100g / 100.0;
      return std::nullopt;
    case FoodListModel::CalciumToPhosphorus: {
      const auto calcium = composition.amountPer100g(nutrients::calcium());
      const auto phosphorus = composition.amountPer100g(nutrients::phosphorus());
      if (!calcium || !phosphorus || *phosphorus <= 0.0) return std::nullopt;
      return *calcium / *phosphorus;
    }
    default:
      return std::nullopt;
  }
}

FoodListModel::FoodListModel(FoodDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &FoodDesk::opened, this, &FoodListModel::rebuild);
  connect(&desk, &FoodDesk::listChanged, this, &FoodListModel::rebuild);
  connect(&desk, &FoodDesk::figuresRead, this, &FoodListModel::takeFigures);
}

void FoodListModel::look(const QString& text) {
  text_ = text;
  rebuild();
}

void FoodListModel::rebuild() {
  beginResetModel();
  rows_ = inOrder();
  endResetModel();
}

std::vector<int> FoodListModel::inOrder() const {
  std::vector<int> rows = desk_.find(text_, desk_.foods().size());
  const auto& foods = desk_.foods();
  if (sortColumn_ == Group) {
    std::stable_sort(rows.begin(), rows.end(), [&](int a, int b) {
      return foods[static_cast<std::size_t>(a)].group < foods[static_cast<std::size_t>(b)].group;
    });
  } else if (sortColumn_ > Group) {
    std::vector<std::optional<double>> figures(foods.size());
    for (const int row : rows)
      if (const auto* known = desk_.knownFigures(FoodId{foods[static_cast<std::size_t>(row)].id}))
        figures[static_cast<std::size_t>(row)] = figureOf(known->composition, sortColumn_);
    const bool rising = sortOrder_ == Qt::AscendingOrder;
    std::stable_sort(rows.begin(), rows.end(), [&](int a, int b) {
      const auto& left = figures[static_cast<std::size_t>(a)];
      const auto& right = figures[static_cast<std::size_t>(b)];
      if (!left || !right) return left.has_value() && !right.has_value();  // what is unknown comes last
      return rising ? *left < *right : *right < *left;
    });
    return rows;
  }
  if (sortOrder_ == Qt::DescendingOrder) std::reverse(rows.begin(), rows.end());
  return rows;
}

void FoodListModel::sort(int column, Qt::SortOrder order) {
  sortColumn_ = column;
  sortOrder_ = order;
  if (column > Group) {
    std::vector<FoodId> ids;
    for (const food::FoodLine& line : desk_.foods()) ids.push_back(FoodId{line.id});
    desk_.readFigures(std::move(ids));
  }
  rebuild();
}

void FoodListModel::takeFigures() {
  if (rows_.empty()) return;
  if (sortColumn_ > Group) {
    emit layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    const std::vector<int> old = std::exchange(rows_, inOrder());
    QModelIndexList after;
    for (const QModelIndex& index : before) {
      const int place = old[static_cast<std::size_t>(index.row())];
      const auto found = std::find(rows_.begin(), rows_.end(), place);
      after << this->index(static_cast<int>(found - rows_.begin()), index.column());
    }
    changePersistentIndexList(before, after);
    emit layoutChanged();
    return;
  }
  emit dataChanged(index(0, Name), index(rowCount() - 1, ColumnCount - 1));
}

const food::FoodLine& FoodListModel::line(int row) const {
  return desk_.foods()[static_cast<std::size_t>(rows_[static_cast<std::size_t>(row)])];
}

FoodId FoodListModel::idAt(int row) const {
  return FoodId{line(row).id};
}

int FoodListModel::rowOf(FoodId id) const {
  for (int row = 0; row < rowCount(); ++row)
    if (idAt(row) == id) return row;
  return -1;
}

int FoodListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int FoodListModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant FoodListModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section <= Group ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Name:
      return tr("food and form");
    case Group:
      return tr("group");
    case Water:
      return tr("water\n%");
    case Protein:
      return tr("protein\n% DM");
    case Calcium:
      return tr("Ca\ng/kg DM");
    case CalciumToPhosphorus:
      return tr("Ca:P");
    default:
      return {};
  }
}

QVariant FoodListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const food::FoodLine& food = line(index.row());
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() <= Group ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role == Qt::DisplayRole && index.column() == Name) return nameOf(food);
  if (role == Qt::DisplayRole && index.column() == Group) return QString::fromStdString(food.group);
  if (role == Qt::ToolTipRole && index.column() == Group) return QString::fromStdString(food.group);
  const bool isNameTip = role == Qt::ToolTipRole && index.column() == Name;  // what a narrow column cuts off
  if (role != Qt::DisplayRole && role != RemarkRole && role != InStockRole && !isNameTip) return {};
  const FoodFigures* figures = desk_.figures(FoodId{food.id});
  if (isNameTip)
    return QStringLiteral("%1 %2")
        .arg(nameOf(food), remarkOf(food.form, figures != nullptr && figures->invented))
        .trimmed();
  if (role == RemarkRole) return remarkOf(food.form, figures != nullptr && figures->invented);
  if (role == InStockRole) return figures == nullptr || figures->inStock;
  if (figures == nullptr) return QStringLiteral("…");
  const auto figure = figureOf(figures->composition, index.column());
  return figure ? figureText(*figure, index.column()) : QStringLiteral("?");
}

}  // namespace tarebowl::ui
