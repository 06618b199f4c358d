// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_json.h"
#include "core/store/food_rules.h"
#include "core/store/fresh_id.h"
#include "core/store/verbs.h"
#include "core/store/write.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tarebowl::store {

namespace {

bool isAmount(double value) {
  return std::isfinite(value) && value >= 0.0;
}

void refuseUnsound(const Collection::Inner& inner, const food::Sample& sample) {
  if (sample.source.empty()) refuse(inner, "a sample needs a source");
  if (sample.excluded && sample.excluded->empty()) refuse(inner, "leaving a sample out needs a reason");
  std::set<food::NutrientId> stated;
  for (const food::SampleValue& value : sample.values) {
    const std::string& tagname = food::describe(value.nutrient).tagname;
    if (!stated.insert(value.nutrient).second) refuse(inner, "a sample states " + tagname + " once");
    if (!isAmount(food::amountOf(value.amount)) || !isAmount(value.sd.value_or(0.0)))
      refuse(inner, tagname + " must be a number of 0 or more");
    if (value.count.value_or(1) < 1) refuse(inner, tagname + " must rest on 1 determination or more");
  }
}

SampleRows rowsOf(Collection::Inner& inner, const food::Sample& sample) {
  SampleRows rows{.sample = sample};
  rows.sample.values.clear();
  for (const food::SampleValue& value : sample.values) rows.values.push_back(toRow(inner, value));
  std::ranges::sort(rows.values, {}, &ValueRow::component);
  return rows;
}

/// The sample as it is now; a conflict where it is not the one that was seen. mine: empty for a removal.
SampleRows seen(Collection::Inner& inner, SampleId sample, int revision, const std::string& mine) {
  auto current = loadSample(inner, static_cast<long long>(sample));
  if (!current) throw ConflictError(inner.file(), "the sample", mine, "");
  if (current->revision == revision) return std::move(*current);
  throw ConflictError(inner.file(), "the sample of " + current->sample.source, mine, toJson(inner, *current));
}

/// Values of components that this program does not know are not in what it was shown: they stay.
void keepUnknown(Collection::Inner& inner, const SampleRows& before, SampleRows& after) {
  for (const ValueRow& row : before.values)
    if (!fromRow(inner, row)) after.values.push_back(row);
  std::ranges::sort(after.values, {}, &ValueRow::component);
}

Written replace(Collection& collection, SampleId sample, int seenRevision, const food::Sample& changed,
                const Author& author, const std::string& verb) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    refuseUnsound(inner, changed);
    SampleRows after = rowsOf(inner, changed);
    const SampleRows before = seen(inner, sample, seenRevision, toJson(inner, after));
    after.id = before.id;
    after.food = before.food;
    after.revision = seenRevision + 1;
    keepUnknown(inner, before, after);
    refuseTakenSource(inner, after);
    updateSample(inner, after);
    return {
        after.id, after.revision,
        record(inner, {0, author, verb, "sample", after.id, toJson(inner, before), toJson(inner, after)})};
  });
}

/// The sample as this program shows it, with one thing about it changed.
food::Sample shown(Collection& collection, SampleId sample, const std::optional<std::string>& excluded) {
  return guarded(collection.file(), [&] {
    const auto rows = loadSample(collection.inner(), static_cast<long long>(sample));
    if (!rows) throw ConflictError(collection.file(), "the sample", "", "");
    food::Sample changed = toStored(collection.inner(), *rows).sample;
    changed.excluded = excluded;
    return changed;
  });
}

}  // namespace

Written addSample(Collection& collection, FoodId food, const food::Sample& sample, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    refuseUnsound(inner, sample);
    SampleRows rows = rowsOf(inner, sample);
    rows.food = static_cast<long long>(food);
    if (!loadFood(inner, rows.food)) refuse(inner, "the food of the sample is not there");
    rows.id = freshSampleId(inner);
    rows.revision = 1;
    refuseTakenSource(inner, rows);
    insertSample(inner, rows);
    return {rows.id, 1, record(inner, {0, author, "add sample", "sample", rows.id, {}, toJson(inner, rows)})};
  });
}

Written editSample(Collection& collection, SampleId sample, int seenRevision, const food::Sample& changed,
                   const Author& author) {
  return replace(collection, sample, seenRevision, changed, author, "edit sample");
}

Written excludeSample(Collection& collection, SampleId sample, int seenRevision, const std::string& reason,
                      const Author& author) {
  return replace(collection, sample, seenRevision, shown(collection, sample, reason), author,
                 "exclude sample");
}

Written includeSample(Collection& collection, SampleId sample, int seenRevision, const Author& author) {
  return replace(collection, sample, seenRevision, shown(collection, sample, std::nullopt), author,
                 "include sample");
}

Written removeSample(Collection& collection, SampleId sample, int seenRevision, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    const SampleRows before = seen(inner, sample, seenRevision, "");
    deleteSample(inner, before.id);
    return {before.id, 0,
            record(inner, {0, author, "remove sample", "sample", before.id, toJson(inner, before), {}})};
  });
}

}  // namespace tarebowl::store
