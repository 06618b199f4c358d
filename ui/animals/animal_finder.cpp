// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_finder.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Animals {
  Q_DECLARE_TR_FUNCTIONS(Animals)
};

constexpr qint64 kKinds = 3;

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

}  // namespace

qint64 hitOf(const AnimalPlace& place) {
  return place.id * kKinds + static_cast<qint64>(place.kind);
}

AnimalPlace placeOfHit(qint64 id) {
  return {static_cast<AnimalKind>(id % kKinds), id / kKinds};
}

std::vector<FinderHit> findAnimals(const Herd& herd, const QString& partOfName, int most) {
  std::vector<FinderHit> hits;
  if (partOfName.isEmpty()) return hits;
  const auto take = [&](const QString& name, const QString& others, const QString& remark,
                        AnimalPlace place) {
    if (static_cast<int>(hits.size()) >= most) return;
    if (name.contains(partOfName, Qt::CaseInsensitive) || others.contains(partOfName, Qt::CaseInsensitive))
      hits.push_back({name, remark, hitOf(place)});
  };
  for (const store::StoredGroup& group : herd.groups)
    take(text(group.record.name), text(group.record.code), text(group.record.section),
         {AnimalKind::Group, static_cast<std::int64_t>(group.id)});
  for (const store::StoredSpecies& species : herd.species)
    take(text(species.record.name), text(species.record.scientificName),
         Animals::tr("%1 · species").arg(text(species.record.scientificName)),
         {AnimalKind::Species, static_cast<std::int64_t>(species.id)});
  for (const store::StoredIndividual& one : herd.individuals) {
    const store::StoredSpecies* species = herd.speciesOf(one.record.species);
    take(text(one.record.code), {}, species == nullptr ? QString() : text(species->record.name),
         {AnimalKind::Individual, static_cast<std::int64_t>(one.id)});
  }
  return hits;
}

}  // namespace tarebowl::ui
