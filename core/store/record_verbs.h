// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/fresh_id.h"
#include "core/store/record_json.h"
#include "core/store/record_rules.h"
#include "core/store/write.h"
#include "core/store/written.h"

/// The shape that the verbs of animals share: a transaction, the rules, the row, the entry in the log.
namespace tarebowl::store {

/// The thing as it is now; a conflict where it is not the one that was seen. mine: empty for a removal.
template <class T>
[[nodiscard]] Row<T> seen(Collection::Inner& inner, long long id, int revision, const std::string& mine) {
  auto current = loadById<T>(inner, id);
  if (!current) throw ConflictError(inner.file(), std::string("the ") + Table<T>::kSubject, mine, "");
  if (current->revision == revision) return std::move(*current);
  throw ConflictError(inner.file(), nameOf(current->record), mine, stateOf(current->record));
}

template <class T>
[[nodiscard]] long long freshId(Collection::Inner& inner) {
  return freshId(inner, Table<T>::kName, Table<T>::kSubject);
}

template <class T>
Written addWithin(Collection::Inner& inner, const T& thing, const std::string& verb, const Author& author) {
  const long long id = freshId<T>(inner);
  refuseUnsound(inner, id, thing);
  insertRow(inner, id, 1, thing);
  return {id, 1, record(inner, {0, author, verb, Table<T>::kSubject, id, {}, stateOf(thing)})};
}

template <class T>
Written addThing(Collection& collection, const T& thing, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    return addWithin(inner, thing, std::string("add ") + Table<T>::kSubject, author);
  });
}

/// change(inner, thing) makes of the thing as it was seen what it is to be.
template <class T, class Change>
Written changeThing(Collection& collection, long long id, int seenRevision, const std::string& verb,
                    const Author& author, const std::string& mine, Change&& change) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    const Row<T> before = seen<T>(inner, id, seenRevision, mine);
    T after = before.record;
    change(inner, after);
    refuseUnsound(inner, id, after);
    updateRow(inner, id, seenRevision + 1, before.record, after);
    return {id, seenRevision + 1,
            record(inner, {0, author, verb, Table<T>::kSubject, id, stateOf(before.record), stateOf(after)})};
  });
}

template <class T>
Written editThing(Collection& collection, long long id, int seenRevision, const T& thing,
                  const Author& author) {
  return changeThing<T>(collection, id, seenRevision, std::string("edit ") + Table<T>::kSubject, author,
                        stateOf(thing), [&](Collection::Inner&, T& after) { after = thing; });
}

/// forbid(inner, thing): further reasons why this one stays.
template <class T, class Forbid>
Written removeThing(Collection& collection, long long id, int seenRevision, const Author& author,
                    Forbid&& forbid) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    const Row<T> before = seen<T>(inner, id, seenRevision, "");
    forbid(inner, before.record);
    refuseInUse(inner, before.record);
    removeRow(inner, id, before.record);
    return {id, 0,
            record(inner, {0,
                           author,
                           std::string("remove ") + Table<T>::kSubject,
                           Table<T>::kSubject,
                           id,
                           stateOf(before.record),
                           {}})};
  });
}

template <class T>
Written removeThing(Collection& collection, long long id, int seenRevision, const Author& author) {
  return removeThing<T>(collection, id, seenRevision, author, [](Collection::Inner&, const T&) {});
}

}  // namespace tarebowl::store
