// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/members_model.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/theme.h"

#include <algorithm>

namespace tarebowl::ui {

MembersModel::MembersModel(AnimalDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &AnimalDesk::pageChanged, this, &MembersModel::rebuild);
  connect(&desk, &AnimalDesk::listChanged, this, &MembersModel::rebuild);
  rebuild();
}

bool MembersModel::isOver(const store::StoredMembership& stay) const {
  return stay.record.until && *stay.record.until <= desk_.today();
}

void MembersModel::rebuild() {
  beginResetModel();
  stays_.clear();
  if (desk_.page() && desk_.page()->group) stays_ = desk_.page()->stays;
  std::stable_partition(stays_.begin(), stays_.end(),
                        [this](const store::StoredMembership& stay) { return !isOver(stay); });
  endResetModel();
}

const store::StoredMembership* MembersModel::stayAt(const QModelIndex& index) const {
  return index.isValid() && index.row() < rowCount() ? &stays_[static_cast<std::size_t>(index.row())]
                                                     : nullptr;
}

int MembersModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(stays_.size());
}

int MembersModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant MembersModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section == Mass ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Code:
      return tr("animal");
    case Sex:
      return tr("sex");
    case Age:
      return tr("age");
    case Stage:
      return tr("life stage");
    case Mass:
      return tr("mass");
    default:
      return tr("in the group");
  }
}

QString MembersModel::text(const store::StoredMembership& stay, int column) const {
  const store::StoredIndividual* stored = desk_.herd().individualOf(stay.record.individual);
  if (column == Code) return QString::fromStdString(stay.record.individual);
  if (column == Stay) return stayText(stay.record);
  if (stored == nullptr) return QStringLiteral("?");
  if (column == Sex)
    return stored->record.sex == animal::Sex::Unknown ? QStringLiteral("?") : wordFor(stored->record.sex);
  if (column == Age) return ageText(stored->record, desk_.today());
  if (column == Stage) return wordFor(animal::stageOn(stored->record, desk_.today()));
  const MeasuredSeries* series = seriesOf(*desk_.page(), stay.record.individual);
  const auto mass =
      series == nullptr ? std::nullopt : animal::massOn(store::readingsOf(series->masses), desk_.today());
  return mass ? massText(mass->mass) : QStringLiteral("?");
}

QVariant MembersModel::data(const QModelIndex& index, int role) const {
  const store::StoredMembership* stay = stayAt(index);
  if (stay == nullptr || !desk_.page()) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() == Mass ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role == Qt::ForegroundRole && isOver(*stay)) return currentTheme().soft;
  if (role == Qt::DisplayRole) return text(*stay, index.column());
  return {};
}

}  // namespace tarebowl::ui
