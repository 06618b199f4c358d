// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_chooser.h"

#include "core/store/group_reading.h"
#include "core/store/reading.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_list.h"
#include "ui/diets/diet_list_model.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/food_label.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/version_document.h"
#include "ui/shared/paths.h"

#include <utility>

namespace tarebowl::ui {
namespace {

/// What the finder's numbers from here on mean: a food of the diet; below, a row of the list.
constexpr qint64 kFirstFood = 1'000'000;

}  // namespace

DietChooser::DietChooser(Parts parts, OpenCollection& collection, QObject* parent)
    : QObject(parent), parts_(parts), collection_(collection) {
  connect(&parts_.list, &DietList::chosen, this, &DietChooser::openListed);
  connect(&parts_.list, &DietList::listed, this, &DietChooser::openFirstListed);
  connect(&parts_.document, &ProblemDocument::fileChanged, this, &DietChooser::followFile);
  connect(&parts_.version, &VersionDocument::opened, this, &DietChooser::showCurrent);
  connect(&parts_.version, &VersionDocument::listChanged, &parts_.shelf, &DietShelf::read);
  connect(&parts_.shelf, &DietShelf::changed, this, [this] {
    parts_.list.show(parts_.shelf);
    if (parts_.shelf.isRead()) openFirstDiet();
    showCurrent();
  });
  collection_.whenOpened(this, [this] { wantsFirstDiet_ = true; });
}

void DietChooser::followFile() {
  parts_.version.close();
  showCurrent();
  const std::filesystem::path folder = parts_.document.file().parent_path();
  if (folder != folder_) openFolder(folder);
}

void DietChooser::openFolder(const std::filesystem::path& folder) {
  folder_ = folder;
  parts_.list.listFolder(folder);
}

void DietChooser::openFile(const std::filesystem::path& file) {
  if (!parts_.document.open(file)) openFolder(file.parent_path());
}

void DietChooser::openFirstDiet() {
  if (!std::exchange(wantsFirstDiet_, false) || parts_.version.isOpen() || !parts_.document.isSaved() ||
      (!parts_.desk.isEmpty() && !parts_.document.file().empty()))
    return;
  for (const ShelvedDiet& diet : parts_.shelf.diets())
    if (const auto first = diet.toOpen()) return parts_.version.open(*first);
}

void DietChooser::openListed(DietListEntry::Kind kind, const QString& key) {
  switch (kind) {
    case DietListEntry::Kind::File:
      parts_.document.open(toPath(key));
      return showCurrent();
    case DietListEntry::Kind::NoDietYet:
      return designFor(key);
    case DietListEntry::Kind::Diet:
      if (!parts_.document.mayLeave()) return showCurrent();
      if (const ShelvedDiet* diet = parts_.shelf.find(key.toStdString()))
        if (const auto version = diet->toOpen()) parts_.version.open(*version);
      return;
    case DietListEntry::Kind::Heading:
      return;
  }
}

void DietChooser::showCurrent() {
  if (parts_.version.isOpen())
    parts_.list.setCurrent(DietListEntry::Kind::Diet,
                           QString::fromStdString(parts_.version.shown()->diet.record.code));
  else
    parts_.list.setCurrent(DietListEntry::Kind::File, toText(parts_.document.file()));
}

void DietChooser::designFor(const QString& groupCode) {
  if (!parts_.document.mayLeave()) return;
  collection_.ask(
      store::inOneReading(
          [code = groupCode.toStdString(), day = parts_.version.today()](store::Collection& collection) {
            return store::knowGroup(collection, code, day);
          }),
      [this](const std::optional<store::KnownGroup>& group) {
        if (!group) return emit refused(tr("This group is no longer in the collection."));
        diet::NamedDiet diet{
            .code = parts_.shelf.freeCode(group->group.record.code),
            .name = tr("%1, daily diet").arg(QString::fromStdString(group->group.record.name)).toStdString(),
            .group = group->group.record.code,
            .invented = group->group.record.invented};
        diet::DietVersion first;
        if (group->version)
          first.profile = {group->version->record.profile.code, group->version->record.profile.version};
        parts_.version.design(diet, first);
        emit foodsWanted();
      });
}

void DietChooser::openFirstListed() {
  if (!parts_.desk.isEmpty()) return;
  const DietListModel& model = parts_.list.model();
  for (int row = 0; row < model.rowCount(); ++row) {
    const QModelIndex index = model.index(row);
    const bool isFile =
        index.data(DietListModel::KindRole).toInt() == static_cast<int>(DietListEntry::Kind::File);
    if (!isFile || !index.data(DietListModel::ReadableRole).toBool()) continue;
    parts_.document.open(toPath(index.data(DietListModel::KeyRole).toString()));
    return;
  }
}

std::vector<FinderHit> DietChooser::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.isEmpty()) return hits;
  const auto add = [&](const QString& name, const QString& remark, qint64 id) {
    if (static_cast<int>(hits.size()) < most && name.contains(partOfName, Qt::CaseInsensitive))
      hits.push_back({name, remark, id});
  };
  const DietListModel& model = parts_.list.model();
  for (int row = 0; row < model.rowCount(); ++row) add(model.index(row).data().toString(), tr("diet"), row);
  const diet::BalanceProblem& problem = parts_.desk.problem();
  for (std::size_t i = 0; i < problem.foods.size(); ++i)
    add(foodLabel(problem.foods[i]).name, tr("in this diet"), kFirstFood + static_cast<qint64>(i));
  return hits;
}

void DietChooser::goTo(qint64 id) {
  if (id >= kFirstFood) return emit foodChosen(static_cast<int>(id - kFirstFood));
  const QModelIndex index = parts_.list.model().index(static_cast<int>(id));
  if (!index.isValid()) return;
  openListed(static_cast<DietListEntry::Kind>(index.data(DietListModel::KindRole).toInt()),
             index.data(DietListModel::KeyRole).toString());
}

}  // namespace tarebowl::ui
