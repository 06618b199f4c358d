// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/targets_model.h"

#include "ui/animals/provenance_text.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/theme.h"

#include <utility>

namespace tarebowl::ui {
namespace {

QString boundText(std::optional<double> bound) {
  return bound ? stated(*bound) : QString();
}

QString referenceText(const animal::ProfileReference& reference) {
  return QStringLiteral("%1 %2").arg(QString::fromStdString(reference.code)).arg(reference.version);
}

QString mustText(const TargetRow& row) {
  if (row.kind == RuleKind::Dropped) return {};
  if (row.lifted) return TargetsModel::tr("◇ limit lifted");
  if (row.safeUpperLimit) return TargetsModel::tr("■ safe limit");
  return row.hard ? TargetsModel::tr("■ must hold") : TargetsModel::tr("○ wished");
}

bool hasBounds(const TargetRow& row) {
  return row.kind == RuleKind::Target || row.kind == RuleKind::Ratio || row.kind == RuleKind::Share;
}

QString zoneText(const TargetRow& row) {
  if (row.min && row.max)
    return TargetsModel::tr("%1 to %2 %3").arg(stated(*row.min), stated(*row.max), row.unit);
  if (row.min) return TargetsModel::tr("at least %1 %2").arg(stated(*row.min), row.unit);
  return row.max ? TargetsModel::tr("at most %1 %2").arg(stated(*row.max), row.unit) : QString();
}

}  // namespace

TargetsModel::TargetsModel(QObject* parent) : QAbstractTableModel(parent) {}

void TargetsModel::show(std::optional<animal::ResolvedProfile> profile, bool editable) {
  beginResetModel();
  profile_ = std::move(profile);
  editable_ = editable;
  rows_ = profile_ ? targetRows(*profile_) : std::vector<TargetRow>();
  endResetModel();
}

const TargetRow* TargetsModel::rowAt(const QModelIndex& index) const {
  return index.isValid() && index.row() < rowCount() ? &rows_[static_cast<std::size_t>(index.row())]
                                                     : nullptr;
}

int TargetsModel::rowOf(const std::string& id) const {
  for (std::size_t row = 0; row < rows_.size(); ++row)
    if (rows_[row].id == id) return static_cast<int>(row);
  return -1;
}

int TargetsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int TargetsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant TargetsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  const bool number = section == Min || section == Preferred || section == Max;
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const QString names[] = {tr("target"), tr("min"),  tr("preferred"), tr("max"),      tr("unit"),
                           tr("zone"),   tr("must"), tr("known how"), tr("stated in")};
  return names[section];
}

QVariant TargetsModel::textAt(const TargetRow& row, int column) const {
  switch (column) {
    case Name:
      return row.name;
    case Min:
      return boundText(row.min);
    case Preferred:
      return boundText(row.preferred);
    case Max:
      return boundText(row.max);
    case Unit:
      return row.unit;
    case Zone:
      return {};
    case Must:
      return mustText(row);
    case Provenance:
      return row.kind == RuleKind::Choice || row.kind == RuleKind::Dropped
                 ? QString()
                 : provenanceText(row.origin.provenance);
    default:
      return row.descent.inPlaceOf.empty() ? referenceText(row.descent.statedIn)
                                           : tr("%1, not %2")
                                                 .arg(referenceText(row.descent.statedIn),
                                                      referenceText(row.descent.inPlaceOf.front()));
  }
}

QString TargetsModel::describe(const TargetRow& row) {
  QStringList parts{row.name};
  const QString zone = zoneText(row);
  if (!zone.isEmpty()) parts << zone;
  if (row.preferred) parts << tr("preferred %1").arg(stated(*row.preferred));
  parts << mustText(row);
  if (row.kind != RuleKind::Dropped && row.kind != RuleKind::Choice) {
    parts << provenanceText(row.origin.provenance) << sourceText(row.origin);
    if (!row.origin.modelSpecies.empty())
      parts << tr("model species: %1").arg(QString::fromStdString(row.origin.modelSpecies));
  }
  if (!row.note.isEmpty()) parts << row.note;
  if (row.lifted)
    parts << tr("lifted by %1 on %2: %3")
                 .arg(QString::fromStdString(row.lifted->who), QString::fromStdString(row.lifted->on),
                      QString::fromStdString(row.lifted->reason));
  QStringList former;
  for (const animal::ProfileReference& reference : row.descent.inPlaceOf) former << referenceText(reference);
  QString where = tr("stated in %1").arg(referenceText(row.descent.statedIn));
  if (!former.isEmpty()) where += tr(" in place of %1").arg(former.join(QStringLiteral(", ")));
  parts << where;
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

QVariant TargetsModel::data(const QModelIndex& index, int role) const {
  const TargetRow* row = rowAt(index);
  if (row == nullptr) return {};
  const int column = index.column();
  const Theme& theme = currentTheme();
  if (role == Qt::TextAlignmentRole) {
    const bool number = column == Min || column == Preferred || column == Max;
    return static_cast<int>((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == Qt::ForegroundRole && column == Provenance) return colorOf(row->origin.provenance, theme);
  if (role == Qt::ForegroundRole && column == Must && row->lifted) return theme.lacking;
  if (role == Qt::ForegroundRole && (column == Unit || column == StatedIn || row->kind == RuleKind::Dropped))
    return theme.soft;
  if (role == Qt::ToolTipRole) return describe(*row);
  if (role == Qt::AccessibleTextRole) return column == Name ? describe(*row) : textAt(*row, column);
  if (role == Qt::DisplayRole || role == Qt::EditRole) return textAt(*row, column);
  return {};
}

Qt::ItemFlags TargetsModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  const TargetRow* row = rowAt(index);
  if (row == nullptr || !editable_ || !hasBounds(*row)) return flags;
  const int column = index.column();
  const bool bound = column == Min || column == Max || (column == Preferred && row->kind != RuleKind::Share);
  return bound ? flags | Qt::ItemIsEditable : flags;
}

bool TargetsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable)) return false;
  const TargetRow row = *rowAt(index);
  const QString typed = value.toString().trimmed();
  const auto number = readNumber(typed);
  if (!typed.isEmpty() && !number) {
    emit refused(tr("“%1” is no number.").arg(typed));
    return false;
  }
  const RuleField field = index.column() == Min   ? RuleField::Min
                          : index.column() == Max ? RuleField::Max
                                                  : RuleField::Preferred;
  const auto before = field == RuleField::Min ? row.min : field == RuleField::Max ? row.max : row.preferred;
  if (number == before || (before && typed == boundText(before))) return false;
  const auto after = withBound(*profile_, row, field, number);
  if (!after) {
    emit refused(
        row.safeUpperLimit && !number && field == RuleField::Max
            ? tr("%1 is a safe upper limit: it is made soft or dropped with a reason, not left blank.")
                  .arg(row.name)
            : tr("%1: the minimum may not lie above the maximum, and the preferred value lies between them.")
                  .arg(row.name));
    return false;
  }
  if (liftsLimit(row, field, number))
    emit reasonWanted(*after, row.name, row.id);
  else
    emit profileEdited(*after, tr("change %1").arg(row.name));
  return true;
}

}  // namespace tarebowl::ui
