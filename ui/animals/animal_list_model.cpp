// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_list_model.h"

#include "ui/animals/animal_text.h"

#include <algorithm>
#include <set>

namespace tarebowl::ui {
namespace {

QString words(const std::string& text) {
  return QString::fromStdString(text);
}

QStandardItem* makeItem(const QString& name, const QStringList& remarks, const AnimalPlace& place) {
  QStringList remark = remarks;
  remark.removeAll(QString());
  auto* item = new QStandardItem(name);
  const QString behind = remark.join(QStringLiteral(" · "));
  item->setEditable(false);
  item->setData(behind, AnimalListModel::RemarkRole);
  item->setData(static_cast<int>(place.kind), AnimalListModel::KindRole);
  item->setData(static_cast<qlonglong>(place.id), AnimalListModel::IdRole);
  item->setToolTip(behind.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, behind));
  item->setAccessibleText(item->toolTip());
  return item;
}

}  // namespace

AnimalListModel::AnimalListModel(AnimalDesk& desk, QObject* parent)
    : QStandardItemModel(parent), desk_(desk) {
  connect(&desk, &AnimalDesk::opened, this, &AnimalListModel::rebuild);
  connect(&desk, &AnimalDesk::listChanged, this, &AnimalListModel::rebuild);
}

void AnimalListModel::look(const QString& text) {
  text_ = text.trimmed();
  rebuild();
}

bool AnimalListModel::has(const QStringList& words) const {
  return std::any_of(words.begin(), words.end(),
                     [this](const QString& word) { return word.contains(text_, Qt::CaseInsensitive); });
}

QList<QStandardItem*> AnimalListModel::makeAnimals(const std::vector<std::string>& codes,
                                                   const Housing& housing, bool all) const {
  QList<QStandardItem*> items;
  for (const std::string& code : codes) {
    const auto individual = housing.individuals.find(code);
    if (individual == housing.individuals.end() || (!all && !has({words(code)}))) continue;
    const animal::Individual& animal = individual->second->record;
    items << makeItem(words(code),
                      {animal.sex == animal::Sex::Unknown ? QString() : wordFor(animal.sex),
                       wordFor(animal::stageOn(animal, desk_.today()))},
                      {AnimalKind::Individual, static_cast<std::int64_t>(individual->second->id)});
  }
  return items;
}

QList<QStandardItem*> AnimalListModel::makeGroups(const animal::Species& species, Housing& housing,
                                                  bool all) const {
  QList<QStandardItem*> items;
  for (const store::StoredGroup& stored : desk_.herd().groups) {
    const animal::Group& group = stored.record;
    if (group.species != species.code) continue;
    const bool hit = all || has({words(group.name), words(group.code), words(group.section)});
    const std::vector<animal::Membership>& stays = housing.stays[group.code];
    const auto animals = makeAnimals(animal::membersOn(stays, group.code, desk_.today()), housing, hit);
    if (!hit && animals.isEmpty()) continue;
    const auto count = animal::headcountOn(group, stays, desk_.today());
    auto* item = makeItem(words(group.name),
                          {count ? QString::number(*count) : QStringLiteral("?"), words(group.section)},
                          {AnimalKind::Group, static_cast<std::int64_t>(stored.id)});
    item->appendRows(animals);
    items << item;
  }
  return items;
}

AnimalListModel::Housing AnimalListModel::housingToday() const {
  Housing housing;
  std::set<std::string> housed;
  for (const store::StoredMembership& stored : desk_.herd().stays) {
    const animal::Membership& stay = stored.record;
    housing.stays[stay.group].push_back(stay);
    if (stay.from <= desk_.today() && (!stay.until || *stay.until > desk_.today()))
      housed.insert(stay.individual);
  }
  for (const store::StoredIndividual& stored : desk_.herd().individuals) {
    const animal::Individual& one = stored.record;
    housing.individuals.emplace(one.code, &stored);
    if (!housed.contains(one.code)) housing.withoutGroup[one.species].push_back(one.code);
  }
  return housing;
}

void AnimalListModel::rebuild() {
  beginResetModel();
  const bool quiet = blockSignals(true);  // one reset, not a signal for every row
  invisibleRootItem()->removeRows(0, invisibleRootItem()->rowCount());
  Housing housing = housingToday();
  for (const store::StoredSpecies& stored : desk_.herd().species) {
    const animal::Species& species = stored.record;
    const bool hit = has({words(species.name), words(species.scientificName), words(species.code)});
    QList<QStandardItem*> children = makeGroups(species, housing, hit);
    children += makeAnimals(housing.withoutGroup[species.code], housing, hit);
    if (!hit && children.isEmpty()) continue;
    auto* item = makeItem(words(species.name), {words(species.scientificName)},
                          {AnimalKind::Species, static_cast<std::int64_t>(stored.id)});
    item->appendRows(children);
    invisibleRootItem()->appendRow(item);
  }
  blockSignals(quiet);
  endResetModel();
}

std::optional<AnimalPlace> AnimalListModel::placeAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  return AnimalPlace{static_cast<AnimalKind>(index.data(KindRole).toInt()), index.data(IdRole).toLongLong()};
}

QModelIndex AnimalListModel::indexOf(const AnimalPlace& place) const {
  const QModelIndexList found = rowCount() == 0 ? QModelIndexList()
                                                : match(index(0, 0), IdRole, static_cast<qlonglong>(place.id),
                                                        -1, Qt::MatchExactly | Qt::MatchRecursive);
  for (const QModelIndex& index : found)
    if (placeAt(index) == place) return index;
  return {};
}

}  // namespace tarebowl::ui
