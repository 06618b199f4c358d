// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reading.h"

#include "core/store/opening.h"

namespace tarebowl::store {

Reading::Reading(const Collection& collection)
    : collection_(collection), isOwn_(collection.inner().connection.beginReading()) {}

Reading::~Reading() {
  if (!isOwn_) return;
  collection_.inner().roundOfAsking = 0;
  collection_.inner().connection.endReading();
}

bool Reading::holds() const {
  return !collection_.inner().connection.guesses();
}

void Reading::askAhead(bool isToAsk) {
  collection_.inner().roundOfAsking = isToAsk ? ++rounds_ : 0;
  collection_.inner().wouldAskAhead = false;
}

bool Reading::wouldAskAhead() const {
  return collection_.inner().wouldAskAhead;
}

void Reading::fetch() {
  Collection::Inner& inner = collection_.inner();
  if (!holds()) inner.components.forget();  // it learned them of answers that may not hold
  guarded(collection_.file(), [&] { inner.connection.fetchAnswers(); });
}

bool gathers(const Collection& collection) {
  Collection::Inner& inner = collection.inner();
  if (!inner.connection.gathers()) return false;
  inner.wouldAskAhead = true;
  return inner.roundOfAsking > 0;
}

bool asksTogether(const Collection& collection) {
  return collection.inner().connection.gathers();
}

bool asksFirst(const Collection& collection) {
  return gathers(collection) && collection.inner().roundOfAsking == 1;
}

}  // namespace tarebowl::store
