// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done to a food, and how it travels to the clerk and back.
#include "ui/foods/food_desk.h"
#include "ui/shared/nutrient_text.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace tarebowl::ui {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

}  // namespace

void FoodDesk::perform(CollectionVerb verb, const QString& what, std::optional<FoodId> food) {
  const auto subject = std::make_shared<FoodId>(food.value_or(FoodId{}));
  collection_.perform(undoStack_, this,
                      {.verb = std::move(verb),
                       .what = what,
                       .done =
                           [this, subject, isNew = !food](const store::Written& written) {
                             if (isNew) *subject = FoodId{written.id};
                             if (isNew) shown_ = *subject;
                             readAgain(*subject);
                           },
                       .takenBack = [this, subject] { readAgain(*subject); }});
}

void FoodDesk::takeImport(TakenImport import) {
  collection_.takeImport(undoStack_, this, std::move(import), [this] { refresh(); });
  refresh();
}

void FoodDesk::readAgain(FoodId id) {
  figures_.erase(id);
  asked_.erase(id);
  readList();
  show(shown_.value_or(id));
}

void FoodDesk::editRecord(store::FoodRecord record, const QString& what) {
  const FoodId id = page_->food.id;
  perform(
      [id, revision = page_->food.revision, record = std::move(record)](store::Collection& collection,
                                                                        const store::Author& author) {
        return store::editFood(collection, id, revision, record, author);
      },
      what, id);
}

void FoodDesk::addFood(const food::Food& food) {
  perform([food](store::Collection& collection,
                 const store::Author& author) { return store::addFood(collection, {.food = food}, author); },
          tr("add %1").arg(text(food.name)), std::nullopt);
}

void FoodDesk::changeFood(const food::Food& after) {
  if (!page_ || page_->food.record.food == after) return;
  store::FoodRecord record = page_->food.record;
  record.food = after;
  editRecord(std::move(record), tr("change %1").arg(text(after.name)));
}

void FoodDesk::removeFood() {
  if (!page_) return;
  const FoodId id = page_->food.id;
  perform(
      [id, revision = page_->food.revision](store::Collection& collection, const store::Author& author) {
        return store::removeFood(collection, id, revision, author);
      },
      tr("remove %1").arg(text(page_->food.record.food.name)), id);
}

void FoodDesk::addSample(const food::Sample& sample) {
  if (!page_) return;
  const FoodId id = page_->food.id;
  perform(
      [id, sample](store::Collection& collection, const store::Author& author) {
        return store::addSample(collection, id, sample, author);
      },
      tr("add a sample of %1").arg(text(page_->food.record.food.name)), id);
}

void FoodDesk::changeSample(SampleId id, const food::Sample& after) {
  const store::StoredSample* stored = sample(id);
  if (stored == nullptr || stored->sample == after) return;
  perform(
      [id, revision = stored->revision, after](store::Collection& collection, const store::Author& author) {
        return store::editSample(collection, id, revision, after, author);
      },
      tr("change a sample of %1").arg(text(page_->food.record.food.name)), page_->food.id);
}

void FoodDesk::removeSample(SampleId id) {
  const store::StoredSample* stored = sample(id);
  if (stored == nullptr) return;
  perform(
      [id, revision = stored->revision](store::Collection& collection, const store::Author& author) {
        return store::removeSample(collection, id, revision, author);
      },
      tr("remove a sample of %1").arg(text(page_->food.record.food.name)), page_->food.id);
}

void FoodDesk::setAside(SampleId id, const QString& reason) {
  const store::StoredSample* stored = sample(id);
  const std::string why = reason.trimmed().toStdString();
  if (stored == nullptr || why.empty()) return;
  perform(
      [id, revision = stored->revision, why](store::Collection& collection, const store::Author& author) {
        return store::excludeSample(collection, id, revision, why, author);
      },
      tr("set a sample aside"), page_->food.id);
}

void FoodDesk::takeBackIn(SampleId id) {
  const store::StoredSample* stored = sample(id);
  if (stored == nullptr) return;
  perform(
      [id, revision = stored->revision](store::Collection& collection, const store::Author& author) {
        return store::includeSample(collection, id, revision, author);
      },
      tr("count a sample again"), page_->food.id);
}

void FoodDesk::setByHand(const food::Override& value) {
  if (!page_) return;
  store::FoodRecord record = page_->food.record;
  std::erase_if(record.overrides, [&](const auto& old) { return old.nutrient == value.nutrient; });
  record.overrides.push_back(value);
  editRecord(std::move(record), tr("set %1 by hand").arg(nutrientWithin(value.nutrient)));
}

void FoodDesk::takeHandAway(food::NutrientId nutrient) {
  if (!page_) return;
  store::FoodRecord record = page_->food.record;
  if (std::erase_if(record.overrides, [&](const auto& old) { return old.nutrient == nutrient; }) == 0) return;
  editRecord(std::move(record), tr("leave %1 to the samples").arg(nutrientWithin(nutrient)));
}

void FoodDesk::changePlan(const std::vector<food::PlannedAnalysis>& plan) {
  if (!page_ || page_->food.record.plan == plan) return;
  store::FoodRecord record = page_->food.record;
  record.plan = plan;
  editRecord(std::move(record), tr("change the sampling plan of %1").arg(text(page_->food.record.food.name)));
}

void FoodDesk::changeCooking(const std::optional<food::Cooking>& cooking) {
  if (!page_ || page_->food.record.cooking == cooking) return;
  store::FoodRecord record = page_->food.record;
  record.cooking = cooking;
  if (cooking) record.recipe.reset();
  editRecord(std::move(record), tr("change what %1 is cooked from").arg(text(page_->food.record.food.name)));
}

void FoodDesk::changeRecipe(const std::optional<food::Recipe>& recipe) {
  if (!page_ || page_->food.record.recipe == recipe) return;
  store::FoodRecord record = page_->food.record;
  record.recipe = recipe;
  if (recipe) record.cooking.reset();
  editRecord(std::move(record), tr("change what %1 is mixed from").arg(text(page_->food.record.food.name)));
}

}  // namespace tarebowl::ui
