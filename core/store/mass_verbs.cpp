// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/mass_verbs.h"

#include "core/store/animal_reading.h"
#include "core/store/animal_tables.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

std::string wordsFor(animal::MassDoubt doubt) {
  switch (doubt) {
    case animal::MassDoubt::NotAboveZero:
      return "is not above 0 kg";
    case animal::MassDoubt::GramsAsKilograms:
      return "is about a thousand times what is expected: were grams typed as kilograms?";
    case animal::MassDoubt::KilogramsAsGrams:
      return "is about a thousandth of what is expected: were kilograms typed as grams?";
    case animal::MassDoubt::FarFromOwnHistory:
      return "is far from what it weighed before";
    case animal::MassDoubt::InTheFuture:
      return "is of a day to come";
  }
  return "is doubtful";
}

/// The other readings of the same animal or group.
std::vector<animal::MassReading> seriesBeside(Collection::Inner& inner, const MassRecord& mass,
                                              long long self) {
  std::vector<animal::MassReading> series;
  const std::string column = mass.individual ? "individual" : "group_code";
  const std::string code = mass.individual ? *mass.individual : mass.group.value_or("");
  for (Row<MassRecord>& row : loadRows<MassRecord>(
           inner, "WHERE " + column + " = :code AND id <> :self ORDER BY on_day, id", code, self))
    series.push_back(std::move(row.record.reading));
  return series;
}

std::string speciesOf(Collection::Inner& inner, const MassRecord& mass) {
  const std::string table = mass.individual ? "individual" : "animal_group";
  const std::string code = mass.individual ? *mass.individual : mass.group.value_or("");
  std::string species;
  inner.sql() << "SELECT species FROM " + table + " WHERE code = :code", soci::use(code), soci::into(species);
  return species;
}

void askAbout(Collection& collection, const MassRecord& mass, long long self, const Author& author) {
  const auto today = quantity::dayOfTime(author.at);
  if (!today) refuse(collection.inner(), "\"" + author.at + "\" does not begin with a day");
  const auto expected = expectedMass(collection, speciesOf(collection.inner(), mass));
  const auto doubt =
      animal::doubtAbout(mass.reading, seriesBeside(collection.inner(), mass, self), *today, expected);
  if (!doubt) return;
  throw DoubtfulMass(collection.file(),
                     fmt::format("{}, {} kg, {}", nameOf(mass), mass.reading.mass.value(), wordsFor(*doubt)),
                     *doubt);
}

Written exclusion(Collection& collection, MassId id, int seenRevision, const std::string& verb,
                  const std::optional<std::string>& reason, const Author& author) {
  return changeThing<MassRecord>(
      collection, static_cast<long long>(id), seenRevision, verb, author, "",
      [&](Collection::Inner&, MassRecord& mass) { mass.reading.excluded = reason; });
}

}  // namespace

DoubtfulMass::DoubtfulMass(std::filesystem::path file, std::string detail, animal::MassDoubt doubt)
    : StoreError(StoreErrorCode::Refused, std::move(file), std::move(detail)), doubt_(doubt) {}

std::vector<Written> addMasses(Collection& collection, const std::vector<MassRecord>& masses,
                               const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    std::vector<Written> written;
    written.reserve(masses.size());
    for (MassRecord mass : masses) {
      mass.former.clear();
      written.push_back(addWithin(inner, mass, "add mass", author));
    }
    return written;
  });
}

Written addMass(Collection& collection, const MassRecord& mass, Confirmed confirmed, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    refuseUnsound(inner, 0, mass);
    if (confirmed == Confirmed::No) askAbout(collection, mass, 0, author);
    MassRecord fresh = mass;
    fresh.former.clear();
    return addWithin(inner, fresh, "add mass", author);
  });
}

Written correctMass(Collection& collection, MassId id, int seenRevision, const animal::MassReading& reading,
                    const std::string& reason, Confirmed confirmed, const Author& author) {
  const auto number = static_cast<long long>(id);
  return changeThing<MassRecord>(collection, number, seenRevision, "correct mass", author, "",
                                 [&](Collection::Inner& inner, MassRecord& mass) {
                                   mass.former.push_back({mass.reading.on, mass.reading.mass, reason});
                                   mass.reading = reading;
                                   refuseUnsound(inner, number, mass);
                                   if (confirmed == Confirmed::No) askAbout(collection, mass, number, author);
                                 });
}

Written excludeMass(Collection& collection, MassId id, int seenRevision, const std::string& reason,
                    const Author& author) {
  return exclusion(collection, id, seenRevision, "exclude mass", reason, author);
}

Written includeMass(Collection& collection, MassId id, int seenRevision, const Author& author) {
  return exclusion(collection, id, seenRevision, "include mass", std::nullopt, author);
}

Written addCondition(Collection& collection, const ConditionRecord& condition, const Author& author) {
  return addThing(collection, condition, author);
}

Written editCondition(Collection& collection, ConditionId id, int seenRevision,
                      const ConditionRecord& condition, const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, condition, author);
}

Written removeCondition(Collection& collection, ConditionId id, int seenRevision, const Author& author) {
  return removeThing<ConditionRecord>(collection, static_cast<long long>(id), seenRevision, author);
}

}  // namespace tarebowl::store
