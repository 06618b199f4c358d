// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/recipe_parts_model.h"

#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <algorithm>

namespace tarebowl::ui {

void RecipePartsModel::show(std::vector<Part> parts) {
  if (parts == parts_) return;
  beginResetModel();
  parts_ = std::move(parts);
  endResetModel();
}

int RecipePartsModel::add(const std::string& code, const QString& name) {
  const auto known = std::ranges::find(parts_, code, &Part::code);
  if (known != parts_.end()) return static_cast<int>(known - parts_.begin());
  const int row = rowCount();
  beginInsertRows({}, row, row);
  parts_.push_back({code, name, QString()});
  endInsertRows();
  return row;
}

void RecipePartsModel::remove(int row) {
  if (row < 0 || row >= rowCount()) return;
  beginRemoveRows({}, row, row);
  parts_.erase(parts_.begin() + row);
  endRemoveRows();
  emit dataChanged(index(0, Share), index(std::max(0, rowCount() - 1), Share));
  emit edited();
}

std::optional<double> RecipePartsModel::gramsOf(const Part& part) {
  const auto grams = readNumber(part.grams);
  return grams && *grams > 0.0 ? grams : std::nullopt;
}

QString RecipePartsModel::complaint() const {
  for (const Part& part : parts_) {
    if (part.grams.isEmpty()) return tr("How many grams of %1 go in?").arg(part.name);
    if (!gramsOf(part)) return tr("“%1” of %2 is not a number of grams above 0.").arg(part.grams, part.name);
  }
  return {};
}

std::optional<std::vector<food::RecipePart>> RecipePartsModel::parts() const {
  std::vector<food::RecipePart> parts;
  for (const Part& part : parts_) {
    const auto grams = gramsOf(part);
    if (!grams) return std::nullopt;
    parts.push_back({part.code, quantity::Grams(*grams)});
  }
  return parts;
}

QString RecipePartsModel::shareText(const Part& part) const {
  const auto own = gramsOf(part);
  double total = 0.0;
  for (const Part& other : parts_) {
    const auto grams = gramsOf(other);
    if (!grams) return QStringLiteral("?");
    total += *grams;
  }
  return own ? percent(*own / total) : QStringLiteral("?");
}

int RecipePartsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(parts_.size());
}

int RecipePartsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

Qt::ItemFlags RecipePartsModel::flags(const QModelIndex& index) const {
  const bool typed = index.isValid() && index.column() == Grams;
  return QAbstractTableModel::flags(index) | (typed ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

QVariant RecipePartsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Part& part = parts_[static_cast<std::size_t>(index.row())];
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() == Food ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role == Qt::ToolTipRole && index.column() == Food) return part.name;
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  if (index.column() == Food) return part.name;
  if (index.column() == Share) return shareText(part);
  return part.grams.isEmpty() && role == Qt::DisplayRole ? QStringLiteral("?") : part.grams;
}

bool RecipePartsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole || index.column() != Grams) return false;
  Part& part = parts_[static_cast<std::size_t>(index.row())];
  const QString text = value.toString().trimmed();
  if (text == part.grams) return true;
  part.grams = text;
  emit dataChanged(this->index(0, Grams), this->index(rowCount() - 1, Share));
  emit edited();
  return true;
}

QVariant RecipePartsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section == Food ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const QString titles[] = {tr("part"), tr("grams"), tr("share")};
  return titles[section];
}

}  // namespace tarebowl::ui
