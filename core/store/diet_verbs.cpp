// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_verbs.h"

#include "core/store/diet_tables.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

#include <functional>

namespace tarebowl::store {

namespace {

using diet::DietVersion;
using diet::VersionState;

int nextNumber(Collection::Inner& inner, const std::string& dietCode) {
  int number = 0;
  inner.sql() << "SELECT COALESCE(MAX(number), 0) + 1 FROM diet_version WHERE diet = :diet",
      soci::use(dietCode), soci::into(number);
  return number;
}

/// What was there before a version was begun from it.
void refuseUnknownOrigin(Collection::Inner& inner, const std::string& dietCode, const DietVersion& version) {
  if (!version.madeFrom) return;
  const auto origin =
      loadRow<VersionRecord>(inner, "WHERE diet = :diet AND number = :number", dietCode, *version.madeFrom);
  if (!origin) refuse(inner, fmt::format("there is no version {} of {}", *version.madeFrom, dietCode));
}

/// A version as a draft has it: what an approval adds is not there yet.
DietVersion asDraft(DietVersion version, int number) {
  version.number = number;
  version.state = VersionState::Draft;
  version.fedFrom.reset();
  version.steps.clear();
  return version;
}

void refuseUnlessDraft(Collection::Inner& inner, const VersionRecord& record) {
  if (record.version.state == VersionState::Draft) return;
  refuse(inner, fmt::format("{} is {}: {}", nameOf(record), symbolOf(record.version.state),
                            record.version.state == VersionState::Submitted
                                ? "it waits for a decision; send it back to change it"
                                : "it never changes; make a new version"));
}

/// further(record): what else comes with the step.
Written addStep(Collection& collection, VersionId id, int seenRevision, const std::string& verb,
                const diet::VersionStep& step, const Author& author,
                const std::function<void(VersionRecord&)>& further = {}) {
  return changeThing<VersionRecord>(collection, static_cast<long long>(id), seenRevision, verb, author, "",
                                    [&](Collection::Inner&, VersionRecord& record) {
                                      record.version.steps.push_back(step);
                                      record.version.state = step.to;
                                      if (further) further(record);
                                    });
}

diet::VersionStep stepTo(VersionState state, const std::string& reason, const Author& author) {
  return {state, author.who, author.at, reason};
}

}  // namespace

Written addDiet(Collection& collection, const diet::NamedDiet& diet, const Author& author) {
  return addThing(collection, diet, author);
}

Written editDiet(Collection& collection, DietId id, int seenRevision, const diet::NamedDiet& diet,
                 const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, diet, author);
}

Written removeDiet(Collection& collection, DietId id, int seenRevision, const Author& author) {
  return removeThing<diet::NamedDiet>(collection, static_cast<long long>(id), seenRevision, author);
}

Written addVersion(Collection& collection, const std::string& dietCode, const DietVersion& version,
                   const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    refuseUnknownOrigin(inner, dietCode, version);
    const VersionRecord fresh{.diet = dietCode, .version = asDraft(version, nextNumber(inner, dietCode))};
    return addWithin(inner, fresh, "add diet version", author);
  });
}

Written importVersion(Collection& collection, const VersionRecord& version, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    return addWithin(inner, version, "import diet version", author);
  });
}

Written editVersion(Collection& collection, VersionId id, int seenRevision, const DietVersion& version,
                    const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    const auto number = static_cast<long long>(id);
    const auto current = loadById<VersionRecord>(inner, number);
    VersionRecord mine = current ? current->record : VersionRecord{};
    mine.version = asDraft(version, mine.version.number);
    mine.version.steps = current ? current->record.version.steps : version.steps;
    const Row<VersionRecord> before = seen<VersionRecord>(inner, number, seenRevision, stateOf(mine));
    refuseUnlessDraft(inner, before.record);
    if (version.madeFrom != before.record.version.madeFrom)
      refuse(inner, "what a version was begun from stays");
    refuseUnsound(inner, number, mine);
    updateRow(inner, number, seenRevision + 1, before.record, mine);
    return {number, seenRevision + 1,
            record(inner, {0, author, "edit diet version", Table<VersionRecord>::kSubject, number,
                           stateOf(before.record), stateOf(mine)})};
  });
}

Written removeVersion(Collection& collection, VersionId id, int seenRevision, const Author& author) {
  return removeThing<VersionRecord>(collection, static_cast<long long>(id), seenRevision, author,
                                    refuseUnlessDraft);
}

Written submitVersion(Collection& collection, VersionId id, int seenRevision, const std::string& reason,
                      const Author& author) {
  return addStep(collection, id, seenRevision, "submit diet version",
                 stepTo(VersionState::Submitted, reason, author), author);
}

Written sendBackVersion(Collection& collection, VersionId id, int seenRevision, const std::string& reason,
                        const Author& author) {
  return addStep(collection, id, seenRevision, "send back diet version",
                 stepTo(VersionState::Draft, reason, author), author);
}

Written approveVersion(Collection& collection, VersionId id, int seenRevision, const DecidedDiet& decided,
                       const FeedingStart& start, const std::string& reason, const Author& author) {
  return addStep(collection, id, seenRevision, "approve diet version",
                 stepTo(VersionState::Approved, reason, author), author, [&](VersionRecord& record) {
                   record.decided = decided;
                   record.version.fedFrom = start.from;
                   record.version.phaseInDays = start.phaseInDays;
                 });
}

Written retireVersion(Collection& collection, VersionId id, int seenRevision, const std::string& reason,
                      const Author& author) {
  return addStep(collection, id, seenRevision, "retire diet version",
                 stepTo(VersionState::Retired, reason, author), author);
}

}  // namespace tarebowl::store
