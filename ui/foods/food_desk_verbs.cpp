// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done to a food, and how it travels to the clerk and back.
#include "ui/foods/food_desk.h"
#include "ui/foods/larder_command.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

QString nameOf(const food::Food& food) {
  return QString::fromStdString(food.name);
}

QString nameOf(food::NutrientId nutrient) {
  return QString::fromStdString(food::describe(nutrient).name);
}

template <class List, class Matches>
auto findOr(const List& list, const Matches& matches) -> const typename List::value_type* {
  const auto found = std::find_if(list.begin(), list.end(), matches);
  return found == list.end() ? nullptr : &*found;
}

}  // namespace

void FoodDesk::write(const LarderEdit& edit, std::function<void(const LarderEdit&)> then) {
  clerk_->ask([edit, who = person_](Larder& larder) { return larder.apply(edit, who); },
              [this, then = std::move(then)](const LarderEdit& done) {
                if (then) then(done);
                afterEdit(done);
              });
}

void FoodDesk::perform(const LarderEdit& edit, const QString& what) {
  write(edit,
        [this, what](const LarderEdit& done) { undoStack_.push(new LarderCommand(*this, done, what)); });
}

void FoodDesk::afterEdit(const LarderEdit& edit) {
  const FoodKey key = tarebowl::ui::foodOf(edit);
  figures_.erase(key);
  asked_.erase(key);
  const auto* food = std::get_if<FoodEdit>(&edit);
  if (food != nullptr && !food->before) shown_ = key;
  if (food != nullptr && !food->after && shown_ == key) {
    shown_.reset();
    page_.reset();
    values_.clear();
    emit pageChanged();
  }
  if (food != nullptr) readList();
  if (food == nullptr || food->after) show(key);
}

const KeptSample* FoodDesk::sample(SampleKey key) const {
  if (!page_) return nullptr;
  return findOr(page_->samples, [key](const KeptSample& kept) { return kept.key == key; });
}

void FoodDesk::addFood(const food::Food& food) {
  FoodEdit edit;
  edit.after = food;
  perform(edit, tr("add %1").arg(nameOf(food)));
}

void FoodDesk::changeFood(const food::Food& after) {
  if (!page_ || page_->food == after) return;
  FoodEdit edit;
  edit.key = page_->key;
  edit.before = page_->food;
  edit.after = after;
  perform(edit, tr("change %1").arg(nameOf(after)));
}

void FoodDesk::removeFood() {
  if (!page_) return;
  FoodEdit edit;
  edit.key = page_->key;
  edit.before = page_->food;
  perform(edit, tr("remove %1").arg(nameOf(page_->food)));
}

void FoodDesk::addSample(const food::Sample& sample) {
  if (!page_) return;
  SampleEdit edit;
  edit.food = page_->key;
  edit.after = sample;
  perform(edit, tr("add a sample of %1").arg(nameOf(page_->food)));
}

void FoodDesk::changeSample(SampleKey key, const food::Sample& after, const QString& what) {
  const KeptSample* kept = sample(key);
  if (kept == nullptr || kept->sample == after) return;
  SampleEdit edit;
  edit.key = key;
  edit.food = page_->key;
  edit.before = kept->sample;
  edit.after = after;
  perform(edit, what.isEmpty() ? tr("change a sample of %1").arg(nameOf(page_->food)) : what);
}

void FoodDesk::removeSample(SampleKey key) {
  const KeptSample* kept = sample(key);
  if (kept == nullptr) return;
  SampleEdit edit;
  edit.key = key;
  edit.food = page_->key;
  edit.before = kept->sample;
  perform(edit, tr("remove a sample of %1").arg(nameOf(page_->food)));
}

void FoodDesk::setAside(SampleKey key, const QString& reason) {
  const KeptSample* kept = sample(key);
  if (kept == nullptr || reason.trimmed().isEmpty()) return;
  food::Sample after = kept->sample;
  after.excluded = reason.trimmed().toStdString();
  changeSample(key, after, tr("set a sample aside"));
}

void FoodDesk::takeBackIn(SampleKey key) {
  const KeptSample* kept = sample(key);
  if (kept == nullptr) return;
  food::Sample after = kept->sample;
  after.excluded.reset();
  changeSample(key, after, tr("count a sample again"));
}

void FoodDesk::setByHand(const SetByHand& hand) {
  if (!page_) return;
  HandEdit edit{.food = page_->key, .nutrient = hand.nutrient};
  if (const auto* before =
          findOr(page_->setByHand, [&](const SetByHand& old) { return old.nutrient == hand.nutrient; }))
    edit.before = *before;
  edit.after = hand;
  perform(edit, tr("set %1 by hand").arg(nameOf(hand.nutrient)));
}

void FoodDesk::takeHandAway(food::NutrientId nutrient) {
  if (!page_) return;
  const auto* before =
      findOr(page_->setByHand, [&](const SetByHand& old) { return old.nutrient == nutrient; });
  if (before == nullptr) return;
  perform(HandEdit{.food = page_->key, .nutrient = nutrient, .before = *before},
          tr("leave %1 to the samples").arg(nameOf(nutrient)));
}

}  // namespace tarebowl::ui
