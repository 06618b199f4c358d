// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done to animals, and how it travels to the clerk and back.
#include "ui/animals/animal_desk.h"
#include "ui/animals/animal_text.h"

#include <memory>
#include <utility>

namespace tarebowl::ui {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

}  // namespace

void AnimalDesk::perform(CollectionVerb verb, const QString& what, std::optional<AnimalKind> adds) {
  collection_.perform(undoStack_, this,
                      {.verb = std::move(verb),
                       .what = what,
                       .done =
                           [this, adds](const store::Written& written) {
                             if (adds) shown_ = AnimalPlace{*adds, written.id};
                             readAgain();
                           },
                       .takenBack = [this] { readAgain(); }});
}

void AnimalDesk::performAll(CollectionEdit edit) {
  const auto done = std::move(edit.done);
  edit.done = [this, done](const store::Written& written) {
    if (done) done(written);
    readAgain();
  };
  edit.takenBack = [this] { readAgain(); };
  collection_.perform(undoStack_, this, std::move(edit));
}

void AnimalDesk::takeIn(const NewSpecies& told, std::function<void()> written) {
  CollectionEdit edit = editThatMakes(told, today());
  edit.done = [this, group = told.group.code,
               written = std::move(written)](const store::Written& /*species*/) {
    awaited_ = group;
    if (written) written();
  };
  performAll(std::move(edit));
}

void AnimalDesk::addSpecies(const animal::Species& species) {
  perform([species](store::Collection& collection,
                    const store::Author& author) { return store::addSpecies(collection, species, author); },
          tr("add %1").arg(text(species.name)), AnimalKind::Species);
}

void AnimalDesk::changeSpecies(const animal::Species& after) {
  if (!page_ || page_->species.record == after) return;
  perform(
      [id = page_->species.id, revision = page_->species.revision, after](store::Collection& collection,
                                                                          const store::Author& author) {
        return store::editSpecies(collection, id, revision, after, author);
      },
      tr("change %1").arg(text(after.name)));
}

void AnimalDesk::addGroup(const animal::Group& group) {
  perform([group](store::Collection& collection,
                  const store::Author& author) { return store::addGroup(collection, group, author); },
          tr("add %1").arg(text(group.name)), AnimalKind::Group);
}

void AnimalDesk::changeGroup(const animal::Group& after) {
  if (!page_ || !page_->group || page_->group->record == after) return;
  perform(
      [id = page_->group->id, revision = page_->group->revision, after](store::Collection& collection,
                                                                        const store::Author& author) {
        return store::editGroup(collection, id, revision, after, author);
      },
      tr("change %1").arg(text(after.name)));
}

void AnimalDesk::addIndividual(const animal::Individual& individual, const std::string& group) {
  CollectionEdit edit{.verb =
                          [individual](store::Collection& collection, const store::Author& author) {
                            return store::addIndividual(collection, individual, author);
                          },
                      .what = tr("add %1").arg(text(individual.code))};
  if (!group.empty())
    edit.further.push_back([stay = animal::Membership{group, individual.code, today()}](
                               store::Collection& collection, const store::Author& author) {
      return store::addMembership(collection, stay, author);
    });
  else
    edit.done = [this](const store::Written& written) {
      shown_ = AnimalPlace{AnimalKind::Individual, written.id};
    };
  performAll(std::move(edit));
}

void AnimalDesk::changeIndividual(const animal::Individual& after) {
  if (!page_ || !page_->individual || page_->individual->record == after) return;
  perform(
      [id = page_->individual->id, revision = page_->individual->revision, after](
          store::Collection& collection, const store::Author& author) {
        return store::editIndividual(collection, id, revision, after, author);
      },
      tr("change %1").arg(text(after.code)));
}

void AnimalDesk::removeShown() {
  if (!page_) return;
  CollectionVerb verb;
  if (page_->group)
    verb = [id = page_->group->id, revision = page_->group->revision](store::Collection& collection,
                                                                      const store::Author& author) {
      return store::removeGroup(collection, id, revision, author);
    };
  else if (page_->individual)
    verb = [id = page_->individual->id, revision = page_->individual->revision](store::Collection& collection,
                                                                                const store::Author& author) {
      return store::removeIndividual(collection, id, revision, author);
    };
  else
    verb = [id = page_->species.id, revision = page_->species.revision](store::Collection& collection,
                                                                        const store::Author& author) {
      return store::removeSpecies(collection, id, revision, author);
    };
  perform(std::move(verb), tr("remove %1").arg(titleOf(*page_)));
}

void AnimalDesk::addStay(const animal::Membership& stay) {
  perform([stay](store::Collection& collection,
                 const store::Author& author) { return store::addMembership(collection, stay, author); },
          tr("%1 joins the group").arg(text(stay.individual)));
}

void AnimalDesk::endStay(store::MembershipId id) {
  if (!page_) return;
  for (const store::StoredMembership& stay : page_->stays) {
    if (stay.id != id) continue;
    animal::Membership ended = stay.record;
    ended.until = today();
    perform(
        [id, revision = stay.revision, ended](store::Collection& collection, const store::Author& author) {
          return store::editMembership(collection, id, revision, ended, author);
        },
        tr("%1 leaves the group").arg(text(ended.individual)));
    return;
  }
}

void AnimalDesk::addMass(const store::MassRecord& mass, store::Confirmed confirmed) {
  perform(
      [mass, confirmed](store::Collection& collection, const store::Author& author) {
        return store::addMass(collection, mass, confirmed, author);
      },
      tr("weigh %1").arg(text(mass.individual.value_or(mass.group.value_or("")))));
}

const store::StoredMass* AnimalDesk::massOfId(store::MassId id) const {
  if (!page_) return nullptr;
  for (const MeasuredSeries& series : page_->series)
    for (const store::StoredMass& mass : series.masses)
      if (mass.id == id) return &mass;
  return nullptr;
}

void AnimalDesk::leaveMassOut(store::MassId id, const QString& reason) {
  const store::StoredMass* mass = massOfId(id);
  const std::string why = reason.trimmed().toStdString();
  if (mass == nullptr || why.empty()) return;
  perform(
      [id, revision = mass->revision, why](store::Collection& collection, const store::Author& author) {
        return store::excludeMass(collection, id, revision, why, author);
      },
      tr("leave a mass out"));
}

void AnimalDesk::countMassAgain(store::MassId id) {
  const store::StoredMass* mass = massOfId(id);
  if (mass == nullptr) return;
  perform(
      [id, revision = mass->revision](store::Collection& collection, const store::Author& author) {
        return store::includeMass(collection, id, revision, author);
      },
      tr("count a mass again"));
}

void AnimalDesk::correctMass(store::MassId id, quantity::Kilograms mass, const QString& reason) {
  const store::StoredMass* stored = massOfId(id);
  const std::string why = reason.trimmed().toStdString();
  if (stored == nullptr || why.empty()) return;
  animal::MassReading reading = stored->record.reading;
  reading.mass = mass;
  perform(
      [id, revision = stored->revision, reading, why](store::Collection& collection,
                                                      const store::Author& author) {
        return store::correctMass(collection, id, revision, reading, why, store::Confirmed::Yes, author);
      },
      tr("put a mass right"));
}

void AnimalDesk::addCondition(const store::ConditionRecord& condition) {
  perform(
      [condition](store::Collection& collection, const store::Author& author) {
        return store::addCondition(collection, condition, author);
      },
      tr("score the condition of %1").arg(text(condition.individual.value_or(condition.group.value_or("")))));
}

}  // namespace tarebowl::ui
