// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_list_model.h"

#include "ui/diets/version_text.h"

#include <iterator>

namespace tarebowl::ui {
namespace {

using Kind = DietListEntry::Kind;

DietListEntry entryOfDiet(const ShelvedDiet& shelved) {
  QString name = QString::fromStdString(shelved.diet.name);
  if (!name.startsWith(shelved.group)) name = DietListModel::tr("%1, %2").arg(shelved.group, name);
  return {Kind::Diet, QString::fromStdString(shelved.diet.code), name, versionsText(shelved.versions)};
}

}  // namespace

QString versionsText(const std::vector<store::VersionLine>& versions) {
  constexpr std::size_t kMost = 2;
  QStringList parts;
  for (auto it = versions.rbegin(); it != versions.rend() && parts.size() < static_cast<int>(kMost); ++it)
    if (it->state != diet::VersionState::Retired || parts.isEmpty())
      parts << DietListModel::tr("version %1, %2").arg(it->number).arg(stateText(it->state));
  return parts.isEmpty() ? DietListModel::tr("nothing in it yet") : parts.join(QStringLiteral(" · "));
}

void DietListModel::setShelf(const DietShelf& shelf) {
  shelved_.clear();
  for (const ShelvedDiet& diet : shelf.diets()) shelved_.push_back(entryOfDiet(diet));
  for (const store::StoredGroup& group : shelf.groupsWithout())
    shelved_.push_back({Kind::NoDietYet, QString::fromStdString(group.record.code),
                        QString::fromStdString(group.record.name), tr("no diet yet: design one")});
  rebuild();
}

void DietListModel::setFiles(const std::vector<ProblemEntry>& files) {
  files_.clear();
  for (const ProblemEntry& file : files)
    files_.push_back({Kind::File, toText(file.file), file.title, file.subtitle, file.readable});
  rebuild();
}

void DietListModel::rebuild() {
  beginResetModel();
  entries_ = shelved_;
  if (!shelved_.empty() && !files_.empty()) entries_.push_back({Kind::Heading, {}, tr("Problem files")});
  entries_.insert(entries_.end(), files_.begin(), files_.end());
  endResetModel();
}

int DietListModel::rowOf(Kind kind, const QString& key) const {
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    const DietListEntry& entry = entries_[i];
    if (entry.kind != kind) continue;
    std::error_code error;
    if (entry.key == key ||
        (kind == Kind::File && std::filesystem::equivalent(toPath(entry.key), toPath(key), error)))
      return static_cast<int>(i);
  }
  return -1;
}

int DietListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(entries_.size());
}

Qt::ItemFlags DietListModel::flags(const QModelIndex& index) const {
  const bool isHeading =
      index.isValid() && entries_[static_cast<std::size_t>(index.row())].kind == Kind::Heading;
  return isHeading ? Qt::ItemFlags(Qt::NoItemFlags) : QAbstractListModel::flags(index);
}

QVariant DietListModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const DietListEntry& entry = entries_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
      return entry.title;
    case SubtitleRole:
      return entry.subtitle;
    case KeyRole:
      return entry.key;
    case KindRole:
      return static_cast<int>(entry.kind);
    case ReadableRole:
      return entry.readable;
    case Qt::ToolTipRole:
      return entry.title + QLatin1Char('\n') + entry.subtitle +
             (entry.kind == Kind::File ? QLatin1Char('\n') + entry.key : QString());
    case Qt::AccessibleTextRole:
      return entry.subtitle.isEmpty() ? entry.title : entry.title + QStringLiteral(", ") + entry.subtitle;
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
