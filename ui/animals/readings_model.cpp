// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/readings_model.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/days.h"
#include "ui/shared/theme.h"

#include <algorithm>

namespace tarebowl::ui {

ReadingsModel::ReadingsModel(AnimalDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &AnimalDesk::pageChanged, this, &ReadingsModel::rebuild);
  rebuild();
}

void ReadingsModel::addMasses(const MeasuredSeries& series) {
  const QString who = series.ofGroup ? tr("group") : QString::fromStdString(series.code);
  for (std::size_t i = 0; i < series.masses.size(); ++i) {
    const store::StoredMass& stored = series.masses[i];
    const animal::MassReading& reading = stored.record.reading;
    Row row{.on = reading.on,
            .who = who,
            .value = massText(reading.mass),
            .how = wordFor(reading.method),
            .remark = QString::fromStdString(reading.note),
            .mass = stored.id,
            .kilograms = reading.mass};
    for (const animal::DoubtedReading& doubt : series.doubts) {
      if (doubt.reading != i) continue;
      row.trust = ReadingTrust::Doubtful;
      row.doubt = doubt.doubt;
      row.remark =
          tr("▲ doubtful: %1").arg(doubtText(doubt.doubt, reading.mass, quantity::Kilograms(doubt.expected)));
    }
    if (reading.excluded) {
      row.trust = ReadingTrust::LeftOut;
      row.remark = tr("□ left out: %1").arg(QString::fromStdString(*reading.excluded));
    }
    if (!stored.record.former.empty())
      row.remark += tr(" first written as %1: %2")
                        .arg(massText(stored.record.former.front().mass),
                             QString::fromStdString(stored.record.former.front().correction));
    rows_.push_back(row);
  }
}

void ReadingsModel::rebuild() {
  beginResetModel();
  rows_.clear();
  if (desk_.page())
    for (const MeasuredSeries& series : desk_.page()->series) {
      addMasses(series);
      for (const store::StoredCondition& stored : series.conditions)
        rows_.push_back({.on = stored.record.reading.on,
                         .who = series.ofGroup ? tr("group") : QString::fromStdString(series.code),
                         .value = conditionText(stored.record.reading),
                         .how = tr("condition"),
                         .remark = QString::fromStdString(stored.record.reading.note)});
    }
  std::stable_sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) { return b.on < a.on; });
  endResetModel();
}

const ReadingsModel::Row* ReadingsModel::rowAt(const QModelIndex& index) const {
  return index.isValid() && index.row() < rowCount() ? &rows_[static_cast<std::size_t>(index.row())]
                                                     : nullptr;
}

int ReadingsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ReadingsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section == Value ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Day:
      return tr("day");
    case Who:
      return tr("animal");
    case Value:
      return tr("value");
    case How:
      return tr("how");
    default:
      return tr("remark");
  }
}

QVariant ReadingsModel::data(const QModelIndex& index, int role) const {
  const Row* row = rowAt(index);
  if (row == nullptr) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() == Value ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role == Qt::ForegroundRole && row->trust == ReadingTrust::Doubtful) return currentTheme().atLimit;
  if (role == Qt::ForegroundRole && row->trust == ReadingTrust::LeftOut) return currentTheme().soft;
  if (role == Qt::ToolTipRole && index.column() == Remark) return row->remark;
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case Day:
      return dateText(row->on);
    case Who:
      return row->who;
    case Value:
      return row->value;
    case How:
      return row->how;
    default:
      return row->remark;
  }
}

}  // namespace tarebowl::ui
