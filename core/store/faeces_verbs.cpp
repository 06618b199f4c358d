// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/faeces_verbs.h"

#include "core/store/faeces_tables.h"
#include "core/store/record_reading.h"
#include "core/store/record_verbs.h"
#include "core/store/rule_queries.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

std::string_view wordsFor(intake::FaecesProblem problem) {
  using intake::FaecesProblem;
  switch (problem) {
    case FaecesProblem::DaysBackwards:
      return "faeces are collected from a day to one that is not before it";
    case FaecesProblem::NothingWeighed:
      return "faeces weigh more than 0 g";
    case FaecesProblem::NoDryMatter:
      return "dry matter of faeces is above 0 and at most 100 g per 100 g fresh, its scatter 0 or more";
    case FaecesProblem::BadValue:
      return "a content of faeces and its scatter are 0 or more";
    case FaecesProblem::TwiceTheSame:
      return "a nutrient stands in an analysis of faeces once";
    case FaecesProblem::Energy:
      break;
  }
  return "faeces have no metabolizable energy: leave energy out";
}

void refuseDaysTwice(Collection::Inner& inner, long long id, const intake::FaecesCollected& faeces) {
  const std::string from = quantity::isoDate(faeces.from);
  const std::string until = quantity::isoDate(faeces.until);
  std::string there;
  inner.sql() << "SELECT from_day FROM faeces_collected WHERE group_code = :group AND from_day <= :until AND "
                 "until_day >= :from AND id <> :id ORDER BY from_day",
      soci::use(faeces.group), soci::use(until), soci::use(from), soci::use(id), soci::into(there);
  if (inner.sql().got_data())
    refuse(inner,
           fmt::format("faeces of {} from {} on are there already and share a day: change those, or name "
                       "other days",
                       faeces.group, there));
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long id, const intake::FaecesCollected& faeces) {
  if (!codeIsThere(inner, "animal_group", faeces.group)) refuse(inner, "there is no group " + faeces.group);
  if (const auto problem = intake::problemWith(faeces)) refuse(inner, std::string(wordsFor(*problem)));
  refuseDaysTwice(inner, id, faeces);
}

std::string nameOf(const intake::FaecesCollected& faeces) {
  return fmt::format("the faeces of {} from {}", faeces.group, quantity::isoDate(faeces.from));
}

Written addFaeces(Collection& collection, const intake::FaecesCollected& faeces, const Author& author) {
  return addThing(collection, faeces, author);
}

Written editFaeces(Collection& collection, FaecesId id, int seenRevision,
                   const intake::FaecesCollected& changed, const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, changed, author);
}

Written removeFaeces(Collection& collection, FaecesId id, int seenRevision, const Author& author) {
  return removeThing<intake::FaecesCollected>(collection, static_cast<long long>(id), seenRevision, author);
}

std::vector<StoredFaeces> faecesOfGroup(const Collection& collection, const std::string& group) {
  return readAll<StoredFaeces>(collection, "WHERE group_code = :group ORDER BY from_day, id", group);
}

}  // namespace tarebowl::store
