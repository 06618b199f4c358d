// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/nutrient_numbers_model.h"

#include "ui/foods/sample_values_model.h"
#include "ui/foods/stated_text.h"
#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {

NutrientNumbersModel::NutrientNumbersModel(Meaning meaning, QObject* parent)
    : QAbstractTableModel(parent), meaning_(std::move(meaning)) {}

void NutrientNumbersModel::show(const Numbers& numbers) {
  beginResetModel();
  lines_.clear();
  for (const auto& [nutrient, number] : numbers) lines_.push_back({nutrientName(nutrient), stated(number)});
  lines_.emplace_back();
  endResetModel();
}

QString NutrientNumbersModel::complaintOf(const Line& line) const {
  if (line.nutrient.isEmpty()) return {};
  if (!nutrientCalled(line.nutrient)) return tr("No nutrient is called “%1”.").arg(line.nutrient);
  const auto number = readNumber(line.number);
  const bool fits = number && *number >= meaning_.least && *number <= meaning_.most &&
                    (!meaning_.whole || std::round(*number) == *number);
  return fits ? QString() : tr("“%1” of %2 is not %3.").arg(line.number, line.nutrient, meaning_.hint);
}

QString NutrientNumbersModel::complaint() const {
  std::vector<food::NutrientId> seen;
  for (const Line& line : lines_) {
    if (line.nutrient.isEmpty()) continue;
    if (const QString complaint = complaintOf(line); !complaint.isEmpty()) return complaint;
    const food::NutrientId nutrient = nutrientCalled(line.nutrient).value();
    if (std::ranges::find(seen, nutrient) != seen.end())
      return tr("%1 stands here twice.").arg(nutrientName(nutrient));
    seen.push_back(nutrient);
  }
  return {};
}

std::optional<NutrientNumbersModel::Numbers> NutrientNumbersModel::numbers() const {
  if (!complaint().isEmpty()) return std::nullopt;
  Numbers numbers;
  for (const Line& line : lines_)
    if (!line.nutrient.isEmpty())
      numbers.emplace_back(nutrientCalled(line.nutrient).value(), readNumber(line.number).value());
  return numbers;
}

int NutrientNumbersModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int NutrientNumbersModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

Qt::ItemFlags NutrientNumbersModel::flags(const QModelIndex& index) const {
  return QAbstractTableModel::flags(index) | (index.isValid() ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

QVariant NutrientNumbersModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Line& line = lines_[static_cast<std::size_t>(index.row())];
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() == Number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role == Qt::ToolTipRole) return complaintOf(line);
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  if (index.column() == Number) return line.number;
  const bool hint = line.nutrient.isEmpty() && role == Qt::DisplayRole;
  return hint ? tr("type a nutrient…") : line.nutrient;
}

bool NutrientNumbersModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole) return false;
  Line& line = lines_[static_cast<std::size_t>(index.row())];
  const QString text = value.toString().trimmed();
  if (text == (index.column() == Nutrient ? line.nutrient : line.number)) return true;
  if (index.column() == Nutrient) {
    const auto nutrient = nutrientCalled(text);
    line.nutrient = nutrient ? nutrientName(*nutrient) : text;
    if (line.number.isEmpty()) line.number = stated(meaning_.first);
  } else {
    line.number = text;
  }
  emit dataChanged(this->index(index.row(), 0), this->index(index.row(), ColumnCount - 1));
  dropEmptied(index.row());
  keepEmptyLine();
  emit edited();
  return true;
}

void NutrientNumbersModel::dropEmptied(int row) {
  if (!lines_[static_cast<std::size_t>(row)].nutrient.isEmpty()) return;
  beginRemoveRows({}, row, row);
  lines_.erase(lines_.begin() + row);
  endRemoveRows();
}

void NutrientNumbersModel::keepEmptyLine() {
  if (!lines_.empty() && lines_.back().nutrient.isEmpty()) return;
  beginInsertRows({}, rowCount(), rowCount());
  lines_.emplace_back();
  endInsertRows();
}

QVariant NutrientNumbersModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section == Number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  return section == Nutrient ? tr("nutrient") : meaning_.title;
}

}  // namespace tarebowl::ui
