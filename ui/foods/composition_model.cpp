// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/composition_model.h"

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr quintptr kTop = 0;  // internal id of a nutrient's row; a sample's is 1 + its nutrient's row

}  // namespace

const std::vector<food::NutrientId>& alwaysShown() {
  static const std::vector<food::NutrientId> nutrients = [] {
    std::vector<food::NutrientId> ids;
    for (const char* tagname :
         {"WATER", "PROCNT", "FAT", "ASH", "CHOCDF", "FIBND", "FIBAD", "ENERC",    "CA",   "P",    "MG",  "K",
          "NA",    "FE",     "ZN",  "CU",  "MN",     "SE",    "ID",    "VITA_RAE", "VITD", "VITE", "VITC"})
      if (const auto id = food::findByTagname(tagname)) ids.push_back(*id);
    return ids;
  }();
  return nutrients;
}

CompositionModel::CompositionModel(FoodDesk& desk, QObject* parent)
    : QAbstractItemModel(parent), desk_(desk) {
  connect(&desk, &FoodDesk::pageChanged, this, &CompositionModel::rebuild);
  rebuild();
}

void CompositionModel::rebuild() {
  beginResetModel();
  rows_ = desk_.values();
  facts_ = factsOf(compositionOf(rows_));
  if (desk_.page()) {
    for (const food::NutrientId nutrient : alwaysShown()) {
      const bool there = std::any_of(rows_.begin(), rows_.end(),
                                     [&](const DerivedValue& row) { return row.nutrient == nutrient; });
      if (!there) rows_.push_back({.nutrient = nutrient});
    }
  }
  std::stable_sort(rows_.begin(), rows_.end(), [](const DerivedValue& a, const DerivedValue& b) {
    const auto place = [](const DerivedValue& row) {
      // Energy is asked for right after the proximates, before fibre.
      const food::Nutrient& nutrient = food::describe(row.nutrient);
      const int group = nutrient.group == food::NutrientGroup::Energy ? 0 : static_cast<int>(nutrient.group);
      return std::pair(2 * group + (nutrient.group == food::NutrientGroup::Energy ? 1 : 0),
                       row.nutrient.index());
    };
    return place(a) < place(b);
  });
  endResetModel();
}

void CompositionModel::setBasis(CompositionBasis basis) {
  basis_ = basis;
  for (int row = 0; row < rowCount(); ++row) {
    const QModelIndex top = index(row, 0);
    emit dataChanged(top, index(row, ColumnCount - 1));
    if (rowCount(top) > 0) emit dataChanged(index(0, 0, top), index(rowCount(top) - 1, ColumnCount - 1, top));
  }
  emit headerDataChanged(Qt::Horizontal, Value, Value);
}

QModelIndex CompositionModel::index(int row, int column, const QModelIndex& parent) const {
  if (row < 0 || row >= rowCount(parent) || column < 0 || column >= ColumnCount) return {};
  return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kTop);
}

QModelIndex CompositionModel::parent(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kTop) return {};
  return createIndex(static_cast<int>(index.internalId()) - 1, 0, kTop);
}

int CompositionModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) return static_cast<int>(rows_.size());
  if (parent.internalId() != kTop || parent.column() != 0) return 0;
  return static_cast<int>(rows_[static_cast<std::size_t>(parent.row())].statements.size());
}

int CompositionModel::columnCount(const QModelIndex& /*parent*/) const {
  return ColumnCount;
}

std::optional<food::NutrientId> CompositionModel::nutrientAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  const QModelIndex top = index.internalId() == kTop ? index : parent(index);
  return rows_[static_cast<std::size_t>(top.row())].nutrient;
}

std::optional<SampleKey> CompositionModel::sampleAt(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kTop) return std::nullopt;
  return rows_[static_cast<std::size_t>(parent(index).row())]
      .statements[static_cast<std::size_t>(index.row())]
      .sample;
}

QModelIndex CompositionModel::indexOf(food::NutrientId nutrient) const {
  for (int row = 0; row < rowCount(); ++row)
    if (rows_[static_cast<std::size_t>(row)].nutrient == nutrient) return index(row, 0);
  return {};
}

std::optional<double> CompositionModel::onBasis(std::optional<quantity::AsFedContent> content) const {
  return content ? amountOn(basis_, *content, facts_) : std::nullopt;
}

const food::Sample* CompositionModel::sampleOf(const Statement& statement) const {
  if (!desk_.page()) return nullptr;
  for (const KeptSample& kept : desk_.page()->samples)
    if (kept.key == statement.sample) return &kept.sample;
  return nullptr;
}

QString CompositionModel::nutrientText(const DerivedValue& row, int column) const {
  const auto& value = row.value;
  switch (column) {
    case Nutrient:
      return nutrientName(row.nutrient);
    case Value:
      if (!value) return QStringLiteral("?");
      return valueText(row.nutrient, onBasis(value->amount), value->qualifier);
    case Scatter:
      return value ? scatterText(onBasis(value->sd), value->sampleCount) : QString();
    case Origin:
      return desk_.page() ? originText(row, *desk_.page()) : QString();
    default:
      return {};
  }
}

QString CompositionModel::statementText(const DerivedValue& row, const Statement& statement,
                                        int column) const {
  const food::Sample* sample = sampleOf(statement);
  if (sample == nullptr) return {};
  const bool readable = statement.standing != Standing::Unreadable;
  switch (column) {
    case Nutrient:
      return sampleText(*sample);
    case Value:
      return valueText(row.nutrient, readable ? onBasis(statement.value.amount) : std::nullopt,
                       statement.value.qualifier);
    case Scatter:
      return scatterText(onBasis(statement.value.sd), statement.value.sampleCount);
    case Origin:
      return standingText(statement.standing, *sample);
    default:
      return {};
  }
}

QVariant CompositionModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const bool top = index.internalId() == kTop;
  const DerivedValue& row = rows_[static_cast<std::size_t>(top ? index.row() : parent(index).row())];
  if (role == Qt::TextAlignmentRole) {
    const bool right = index.column() == Value || index.column() == Scatter;
    return static_cast<int>((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == UnknownRole) return top && !row.value;
  const Statement* statement = top ? nullptr : &row.statements[static_cast<std::size_t>(index.row())];
  if (role == LeftOutRole) return statement != nullptr && statement->standing != Standing::Counted;
  if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
  return top ? nutrientText(row, index.column()) : statementText(row, *statement, index.column());
}

QVariant CompositionModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) {
    const bool right = section == Value || section == Scatter;
    return static_cast<int>((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Nutrient:
      return tr("nutrient");
    case Value:
      return textOf(basis_);
    case Scatter:
      return tr("scatter");
    case Origin:
      return tr("where it comes from");
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
