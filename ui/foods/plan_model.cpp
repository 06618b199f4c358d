// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/plan_model.h"

#include "ui/foods/import_sentences.h"
#include "ui/shared/decimal_text.h"

#include <QLocale>

namespace tarebowl::ui {

using exchange::PlanLineKind;

Mark markOf(PlanLineKind kind) {
  switch (kind) {
    case PlanLineKind::NewFood:
    case PlanLineKind::UnchangedFood:
      return Mark::Met;
    case PlanLineKind::ChangedFood:
    case PlanLineKind::Noted:
      return Mark::AtLimit;
    case PlanLineKind::LeftOut:
      return Mark::Unknown;
    case PlanLineKind::Problem:
      return Mark::Lacking;
  }
  return Mark::Unknown;
}

PlanModel::PlanModel(const ImportDesk& desk, QObject* parent)
    : QAbstractTableModel(parent), desk_(desk), lines_(desk.lines()) {
  connect(&desk, &ImportDesk::stageChanged, this, &PlanModel::take);
}

void PlanModel::take() {
  if (desk_.lines() == lines_) return;
  beginResetModel();
  lines_ = desk_.lines();
  endResetModel();
}

void PlanModel::setKind(std::optional<PlanLineKind> kind) {
  if (kind == kind_) return;
  beginResetModel();
  kind_ = kind;
  endResetModel();
}

std::size_t PlanModel::countOf(std::optional<PlanLineKind> kind) const {
  return kind ? lines_->of(*kind).size() : lines_->size();
}

int PlanModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(countOf(kind_));
}

int PlanModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

std::size_t PlanModel::placeOf(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return kind_ ? lines_->of(*kind_).at(at) : at;
}

QVariant PlanModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() == Line ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  const std::size_t place = placeOf(index.row());
  if (role == MarkRole) return static_cast<int>(markOf(lines_->kindOf(place)));
  if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
  const auto line = lines_->at(place);
  if (const auto* food = std::get_if<exchange::PlannedFood>(&line)) {
    if (index.column() == Line) return countText(static_cast<std::int64_t>(food->line));
    return index.column() == Subject ? QString::fromStdString(food->name) : outcomeText(*food);
  }
  const auto& remark = std::get<exchange::PlannedRemark>(line);
  if (index.column() == Line) return countText(static_cast<std::int64_t>(remark.remark.line));
  return index.column() == Subject ? placeText(remark.remark) : reasonText(remark);
}

QVariant PlanModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section == Line ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const QString titles[] = {tr("line"), tr("food or place"), tr("what will happen, or why not")};
  return titles[section];
}

}  // namespace tarebowl::ui
