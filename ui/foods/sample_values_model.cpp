// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/sample_values_model.h"

#include "ui/foods/stated_text.h"
#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

constexpr double kPerKilogram = 10.0;  // dry matter is typed per kg and stored per 100 g

double scaleOf(quantity::Basis basis) {
  return basis == quantity::Basis::DryMatter ? kPerKilogram : 1.0;
}

QString basisWord(quantity::Basis basis) {
  switch (basis) {
    case quantity::Basis::DryMatter:
      return SampleValuesModel::tr("per kg DM");
    case quantity::Basis::Energy:
      return SampleValuesModel::tr("per 1000 kcal");
    default:
      return SampleValuesModel::tr("per 100 g as fed");
  }
}

}  // namespace

std::optional<food::NutrientId> nutrientCalled(const QString& text) {
  const std::string word = text.trimmed().toStdString();
  if (const auto id = food::findByTagname(text.trimmed().toUpper().toStdString())) return id;
  for (const food::Nutrient& nutrient : food::allNutrients())
    if (const auto id = food::findByTagname(nutrient.tagname);
        id && text.trimmed().compare(nutrientName(*id), Qt::CaseInsensitive) == 0)
      return id;
  return food::findBySynonym(word);
}

void SampleValuesModel::show(const std::vector<food::SampleValue>& values) {
  beginResetModel();
  lines_.clear();
  const QLocale locale;
  for (const food::SampleValue& value : values) {
    Line line{.nutrient = nutrientName(value.nutrient)};
    line.basis = food::basisOf(value.amount);
    const double scale = scaleOf(line.basis);
    line.amount = writeStated({food::amountOf(value.amount) * scale, value.qualifier});
    if (value.sd) line.sd = locale.toString(*value.sd * scale, 'g', 8);
    if (value.count) line.count = locale.toString(*value.count);
    line.reported = value.reported;
    lines_.push_back(std::move(line));
  }
  lines_.emplace_back();
  endResetModel();
}

SampleValuesModel::Read SampleValuesModel::read(const Line& line) {
  const auto nutrient = nutrientCalled(line.nutrient);
  if (!nutrient) return {{}, tr("No nutrient is called “%1”.").arg(line.nutrient)};
  const auto stated = readStated(line.amount);
  if (!stated)
    return {
        {},
        tr("“%1” is no amount of %2: a number, < 0.05, ≥ 33, tr or n.d.").arg(line.amount, line.nutrient)};
  const double scale = scaleOf(line.basis);
  food::SampleValue value{.nutrient = *nutrient, .qualifier = stated->qualifier};
  value.amount = food::contentOn(line.basis, stated->amount / scale).value();
  if (!line.sd.isEmpty()) {
    const auto sd = readNumber(line.sd);
    if (!sd) return {{}, tr("“%1” is no standard deviation of %2.").arg(line.sd, line.nutrient)};
    value.sd = *sd / scale;
  }
  if (!line.count.isEmpty()) {
    const auto count = readNumber(line.count);
    if (!count || *count < 1.0 || *count > 1e6 || std::round(*count) != *count)
      return {{}, tr("n of %1 is a whole number from 1.").arg(line.nutrient)};
    value.count = static_cast<int>(*count);
  }
  value.reported = line.reported;
  return {value, {}};
}

std::optional<std::vector<food::SampleValue>> SampleValuesModel::values() const {
  std::vector<food::SampleValue> result;
  for (const Line& line : lines_) {
    if (line.isEmpty()) continue;
    const Read one = read(line);
    if (!one.value) return std::nullopt;
    result.push_back(*one.value);
  }
  return result;
}

QString SampleValuesModel::complaint() const {
  std::vector<food::NutrientId> seen;
  for (const Line& line : lines_) {
    if (line.isEmpty()) continue;
    const Read one = read(line);
    if (!one.value) return one.complaint;
    if (std::find(seen.begin(), seen.end(), one.value->nutrient) != seen.end())
      return tr("%1 stands here twice.").arg(nutrientName(one.value->nutrient));
    seen.push_back(one.value->nutrient);
  }
  return seen.empty() ? tr("A sample needs at least one value.") : QString();
}

int SampleValuesModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int SampleValuesModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

Qt::ItemFlags SampleValuesModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  if (index.isValid() && index.column() != Unit) flags |= Qt::ItemIsEditable;
  return flags;
}

QVariant SampleValuesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Line& line = lines_[static_cast<std::size_t>(index.row())];
  const bool last = index.row() == rowCount() - 1 && line.isEmpty();
  if (role == Qt::TextAlignmentRole) {
    const bool right = index.column() == Amount || index.column() == Sd || index.column() == Count;
    return static_cast<int>((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == Qt::ToolTipRole && !line.isEmpty()) return read(line).complaint;
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  switch (index.column()) {
    case Nutrient:
      return last && role == Qt::DisplayRole ? tr("type a nutrient…") : line.nutrient;
    case Amount:
      return line.amount;
    case Unit: {
      const auto nutrient = nutrientCalled(line.nutrient);
      return nutrient ? unitText(food::describe(*nutrient).unit) : QString();
    }
    case Basis:
      if (role == Qt::EditRole) return static_cast<int>(line.basis);
      return last ? QString() : basisWord(line.basis);
    case Sd:
      return line.sd;
    case Count:
      return line.count;
    default:
      return {};
  }
}

bool SampleValuesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole) return false;
  Line& line = lines_[static_cast<std::size_t>(index.row())];
  const QString text = value.toString().trimmed();
  switch (index.column()) {
    case Nutrient: {
      const auto nutrient = nutrientCalled(text);
      line.nutrient = nutrient ? nutrientName(*nutrient) : text;
      line.reported.reset();
      break;
    }
    case Amount:
      line.amount = text;
      line.reported.reset();  // it no longer is what the report said
      break;
    case Basis:
      line.basis = static_cast<quantity::Basis>(value.toInt());
      break;
    case Sd:
      line.sd = text;
      break;
    case Count:
      line.count = text;
      break;
    default:
      return false;
  }
  emit dataChanged(this->index(index.row(), 0), this->index(index.row(), ColumnCount - 1));
  keepEmptyLine();
  return true;
}

void SampleValuesModel::keepEmptyLine() {
  if (!lines_.empty() && lines_.back().isEmpty()) return;
  beginInsertRows({}, rowCount(), rowCount());
  Line next;
  if (!lines_.empty()) next.basis = lines_.back().basis;  // a report keeps to one basis
  lines_.push_back(std::move(next));
  endInsertRows();
}

void SampleValuesModel::removeRow(int row) {
  if (row < 0 || row >= rowCount()) return;
  beginRemoveRows({}, row, row);
  lines_.erase(lines_.begin() + row);
  endRemoveRows();
  keepEmptyLine();
}

QVariant SampleValuesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) {
    const bool right = section == Amount || section == Sd || section == Count;
    return static_cast<int>((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole) return {};
  const QString titles[] = {tr("nutrient"), tr("value"), tr("unit"), tr("basis"), tr("SD"), tr("n")};
  return titles[section];
}

}  // namespace tarebowl::ui
