// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/mapping_model.h"

#include "ui/foods/column_words.h"
#include "ui/foods/sample_values_model.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"

#include <algorithm>
#include <map>
#include <utility>

namespace tarebowl::ui {
namespace {

using exchange::ColumnRole;
using exchange::ColumnUse;
using exchange::GuessDoubt;

/// The use of the column at a place (from 0): by its number where one is given, else by its title.
const ColumnUse* useOf(const std::vector<ColumnUse>& uses, std::size_t place, const std::string& title) {
  for (const ColumnUse& use : uses)
    if (use.number ? *use.number == place + 1 : use.title == title) return &use;
  return nullptr;
}

QString doubtText(GuessDoubt doubt) {
  switch (doubt) {
    case GuessDoubt::NotUnderstood:
      return MappingModel::tr("title not understood");
    case GuessDoubt::SecondOfNutrient:
      return MappingModel::tr("a second one of this nutrient");
    case GuessDoubt::UnitAssumed:
      return MappingModel::tr("assumed");
    default:
      return {};
  }
}

}  // namespace

MappingModel::MappingModel(ImportDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &ImportDesk::mappingChanged, this, &MappingModel::take);
  connect(&desk, &ImportDesk::stageChanged, this, &MappingModel::takeCoded);
}

void MappingModel::take() {
  std::vector<ColumnUse> uses;
  const auto& columns = desk_.columns();
  for (std::size_t c = 0; c < columns.size(); ++c) {
    const ColumnUse* known = useOf(desk_.mapping().columns, c, columns[c].title);
    uses.push_back(known != nullptr ? *known : ColumnUse{.title = columns[c].title, .number = c + 1});
  }
  if (uses.size() == uses_.size()) {
    uses_ = std::move(uses);  // an edit: the view keeps its place
    if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    return;
  }
  beginResetModel();
  uses_ = std::move(uses);
  coded_.clear();
  endResetModel();
}

std::vector<MappingModel::CodedName> MappingModel::codedNames() const {
  std::vector<CodedName> coded;
  if (!isLong()) return coded;
  using exchange::ImportIssue;
  std::map<std::string, CodedName> found;  // a name may be kept with one unit and left out with another
  for (const ImportIssue issue : {ImportIssue::KeptByName, ImportIssue::UnknownNutrient})
    for (const auto& [name, lines] : desk_.lines()->foundIn(issue)) {
      CodedName& one = found.try_emplace(name, CodedName{.name = name}).first->second;
      one.lines += lines;
      one.kept = one.kept || issue == ImportIssue::KeptByName;
    }
  for (auto& [name, one] : found) coded.push_back(std::move(one));
  for (const auto& [name, meaning] : desk_.mapping().nutrients) {
    const auto before = std::ranges::find(coded_, name, &CodedName::name);
    coded.push_back({.name = name, .lines = before == coded_.end() ? 0 : before->lines});
  }
  // What is most of the table comes first.
  std::ranges::sort(coded, [](const CodedName& a, const CodedName& b) {
    return a.lines != b.lines ? a.lines > b.lines : a.name < b.name;
  });
  return coded;
}

void MappingModel::takeCoded() {
  if (desk_.stage() != ImportDesk::Stage::Planned) return;
  std::vector<CodedName> coded = codedNames();
  const int from = static_cast<int>(uses_.size());
  if (coded == coded_) return;
  if (!coded_.empty()) {
    beginRemoveRows({}, from, from + static_cast<int>(coded_.size()) - 1);
    coded_.clear();
    endRemoveRows();
  }
  if (coded.empty()) return;
  beginInsertRows({}, from, from + static_cast<int>(coded.size()) - 1);
  coded_ = std::move(coded);
  endInsertRows();
}

int MappingModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(uses_.size() + coded_.size());
}

int MappingModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

bool MappingModel::hasUnit(int row) const {
  if (!isColumn(row)) return false;
  const ColumnUse& use = uses_[static_cast<std::size_t>(row)];
  return use.role == ColumnRole::Value || (use.role == ColumnRole::Sd && use.nutrient);
}

Qt::ItemFlags MappingModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  const bool busy = desk_.stage() == ImportDesk::Stage::Importing;
  const bool editable = index.column() == Becomes ||
                        ((index.column() == Unit || index.column() == Basis) && hasUnit(index.row()));
  if (editable && !busy) flags |= Qt::ItemIsEditable;
  return flags;
}

QString MappingModel::remarkOf(int row, int column) const {
  const ColumnUse& use = uses_[static_cast<std::size_t>(row)];
  for (const exchange::GuessNote& note : desk_.notes()) {
    if (note.column != static_cast<std::size_t>(row) + 1) continue;
    const bool ofUnit = note.doubt == GuessDoubt::UnitAssumed;
    if (ofUnit && column == Unit && use.role == ColumnRole::Value && !use.unit) return doubtText(note.doubt);
    if (!ofUnit && column == Becomes && use.role == ColumnRole::Ignored) return doubtText(note.doubt);
  }
  return {};
}

QVariant MappingModel::columnData(int row, int column, int role) const {
  const auto place = static_cast<std::size_t>(row);
  const ColumnUse& use = uses_[place];
  const exchange::ColumnExamples& shown = desk_.columns()[place];
  if (role == LeftOutRole) return use.role == ColumnRole::Ignored;
  if (role == RemarkRole) return remarkOf(row, column);
  if (role == DoubtRole) return !remarkOf(row, Becomes).isEmpty() || !remarkOf(row, Unit).isEmpty();
  switch (column) {
    case Title: {
      const QString title = QString::fromStdString(shown.title).simplified();
      return title.isEmpty() ? tr("column %1").arg(row + 1) : title;
    }
    case Examples: {
      QStringList examples;
      for (const std::string& example : shown.examples)
        examples << QString::fromStdString(example).simplified();
      return examples.isEmpty() ? tr("(nothing)") : examples.join(QStringLiteral(" · "));
    }
    case Becomes:
      return becomesText(use, isLong());
    case Unit: {
      if (!hasUnit(row)) return {};
      if (use.unit) return unitWords(use.unit);
      if (use.role == ColumnRole::Sd) return role == Qt::EditRole ? QString() : tr("as its value");
      if (!shown.unit.empty()) return QString::fromStdString(shown.unit);
      return use.nutrient ? unitText(food::describe(*use.nutrient).unit) : QString();
    }
    case Basis: {
      if (!hasUnit(row) || (use.role == ColumnRole::Sd && !use.unit)) return {};
      const bool own = use.unit && use.unit->basis;
      if (role == Qt::EditRole) return own ? static_cast<int>(*use.unit->basis) : -1;
      return own ? basisWords(*use.unit->basis) : tr("as the table");
    }
    default:
      return {};
  }
}

QVariant MappingModel::codedData(const CodedName& coded, int column, int role) const {
  const auto known = desk_.mapping().nutrients.find(coded.name);
  const bool isKnown = known != desk_.mapping().nutrients.end();
  const bool leftOut = isKnown && !known->second.nutrient;
  if (role == LeftOutRole) return leftOut;
  if (role == DoubtRole) return !isKnown;
  if (role == RemarkRole)
    return column != Becomes || isKnown ? QString()
           : coded.kept                 ? tr("kept where its unit is understood")
                                        : tr("its unit is none known here");
  switch (column) {
    case Title:
      return tr("“%1”").arg(QString::fromStdString(coded.name));
    case Examples:
      return coded.lines == 0   ? tr("a nutrient's name in the table")
             : coded.lines == 1 ? tr("in 1 line")
                                : tr("in %1 lines").arg(countText(static_cast<std::int64_t>(coded.lines)));
    case Becomes:
      if (!isKnown) return coded.kept ? tr("its own name") : becomesText({}, false);
      return leftOut ? becomesText({}, false) : nutrientWithTag(*known->second.nutrient);
    case Unit:
      return isKnown ? unitWords(known->second.unit) : QString();
    default:
      return {};
  }
}

QVariant MappingModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
  const bool known = role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::ToolTipRole ||
                     (role >= RemarkRole && role <= LeftOutRole);
  if (!known) return {};
  if (role == Qt::ToolTipRole) {
    const QString remark = data(index, RemarkRole).toString();
    const QString text = data(index).toString();
    return remark.isEmpty() ? text : QStringLiteral("%1 (%2)").arg(text, remark);
  }
  return isColumn(index.row()) ? columnData(index.row(), index.column(), role)
                               : codedData(codedAt(index.row()), index.column(), role);
}

bool MappingModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
  if (!isColumn(index.row())) return setCoded(codedAt(index.row()), value.toString());
  return setColumn(index.row(), index.column(), value);
}

bool MappingModel::setColumn(int row, int column, const QVariant& value) {
  ColumnUse use = uses_[static_cast<std::size_t>(row)];
  const QString text = value.toString().trimmed();
  if (column == Becomes) {
    const auto changed = readBecomes(text, use, isLong());
    if (!changed) {
      emit notUnderstood(
          tr("“%1” is nothing that a column can become: choose from the list, or type a nutrient.")
              .arg(text));
      return false;
    }
    keep(row, *changed);
    return true;
  }
  if (column == Unit) {
    const auto basis = use.unit ? use.unit->basis : std::nullopt;
    use.unit = exchange::parseUnitText(text.toStdString());
    if (!use.unit && !text.isEmpty()) {
      emit notUnderstood(tr("“%1” is no unit: write it as mg/100 g, g/kg, % or kcal.").arg(text));
      return false;
    }
    if (use.unit && !use.unit->basis) use.unit->basis = basis;
    keep(row, use);
    return true;
  }
  const auto fallback = use.nutrient ? food::describe(*use.nutrient).unit : quantity::Unit::Gram;
  if (!use.unit) use.unit = exchange::UnitText{.unit = fallback};
  use.unit->basis =
      value.toInt() < 0 ? std::nullopt : std::optional(static_cast<quantity::Basis>(value.toInt()));
  keep(row, use);
  return true;
}

bool MappingModel::setCoded(const CodedName& coded, const QString& text) {
  const auto read = readBecomes(text, {}, false);
  const bool leftOut = read && read->role == ColumnRole::Ignored;
  if (!read || !(leftOut || read->role == ColumnRole::Value)) {
    emit notUnderstood(tr("“%1” is no nutrient: type its name or its tagname.").arg(text));
    return false;
  }
  exchange::TableMapping mapping = desk_.mapping();
  exchange::CodedNutrient& meaning = mapping.nutrients[coded.name];
  meaning.nutrient = read->nutrient;
  meaning.reason = leftOut ? tr("left out by hand").toStdString() : std::string();
  desk_.setMapping(std::move(mapping));
  return true;
}

void MappingModel::keep(int row, const ColumnUse& use) {
  exchange::TableMapping mapping = desk_.mapping();
  std::vector<ColumnUse> uses = uses_;
  uses[static_cast<std::size_t>(row)] = use;
  mapping.columns = std::move(uses);
  desk_.setMapping(std::move(mapping));
}

QVariant MappingModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const QString titles[] = {tr("column"), tr("what stands in it"), tr("becomes"), tr("unit"), tr("basis")};
  return titles[section];
}

}  // namespace tarebowl::ui
