// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/memory_larder.h"

#include "ui/foods/derived_values.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Shelf {
  Q_DECLARE_TR_FUNCTIONS(Shelf)
};

/// Puts, changes or removes one of a list of things with keys; refuses where `before` is not what is there.
template <class List, class Find, class Before, class After>
void put(List& list, const Find& isIt, const Before& before, const After& after) {
  const auto found = std::find_if(list.begin(), list.end(), isIt);
  const bool there = found != list.end();
  if (there != before.has_value() || (there && !(*found == *before)))
    throw Refusal(Shelf::tr("This was changed elsewhere since it was read; nothing was written."));
  if (after && there)
    *found = *after;
  else if (after)
    list.push_back(*after);
  else if (there)
    list.erase(found);
}

}  // namespace

MemoryShelf::MemoryShelf(std::vector<FoodPage> pages) {
  for (FoodPage& page : pages) {
    page.key = FoodKey{++lastKey_};
    for (KeptSample& sample : page.samples) sample.key = SampleKey{++lastKey_};
    pages_.emplace(page.key, std::move(page));
  }
}

MemoryLarder::MemoryLarder(std::shared_ptr<MemoryShelf> shelf) : shelf_(std::move(shelf)) {}

std::vector<FoodListing> MemoryLarder::foods() {
  const std::lock_guard lock(shelf_->mutex_);
  std::vector<FoodListing> result;
  for (const auto& [key, page] : shelf_->pages_) result.push_back({key, page.food});
  return result;
}

std::optional<FoodPage> MemoryLarder::page(FoodKey key) {
  const std::lock_guard lock(shelf_->mutex_);
  const auto found = shelf_->pages_.find(key);
  if (found == shelf_->pages_.end()) return std::nullopt;
  return found->second;
}

std::vector<food::Composition> MemoryLarder::compositions(std::span<const FoodKey> foods,
                                                          std::span<const food::NutrientId> nutrients) {
  std::vector<food::Composition> result;
  for (const FoodKey key : foods) {
    const auto kept = page(key);
    food::Composition composition = kept ? compositionOf(*kept) : food::Composition();
    if (!nutrients.empty())
      for (const food::NutrientId known : composition.knownNutrients())
        if (std::find(nutrients.begin(), nutrients.end(), known) == nutrients.end()) composition.erase(known);
    result.push_back(std::move(composition));
  }
  return result;
}

FoodPage& MemoryLarder::pageOf(FoodKey key) {
  const auto found = shelf_->pages_.find(key);
  if (found == shelf_->pages_.end()) throw Refusal(Shelf::tr("This food was removed elsewhere."));
  return found->second;
}

FoodEdit MemoryLarder::applyTo(FoodEdit edit) {
  if (!edit.before) {
    if (edit.key == FoodKey{}) edit.key = FoodKey{++shelf_->lastKey_};
    FoodPage page = shelf_->removed_[edit.key];
    page.key = edit.key;
    page.food = edit.after.value();
    shelf_->pages_.emplace(edit.key, std::move(page));
    return edit;
  }
  FoodPage& page = pageOf(edit.key);
  if (page.food != *edit.before)
    throw Refusal(Shelf::tr("This food was changed elsewhere since it was read; nothing was written."));
  if (edit.after)
    page.food = *edit.after;
  else
    shelf_->removed_[edit.key] = std::move(shelf_->pages_.extract(edit.key).mapped());
  return edit;
}

SampleEdit MemoryLarder::applyTo(SampleEdit edit) {
  if (edit.key == SampleKey{}) edit.key = SampleKey{++shelf_->lastKey_};
  const auto kept = [&](const std::optional<food::Sample>& sample) {
    return sample ? std::optional(KeptSample{edit.key, *sample}) : std::nullopt;
  };
  put(
      pageOf(edit.food).samples, [&](const KeptSample& sample) { return sample.key == edit.key; },
      kept(edit.before), kept(edit.after));
  return edit;
}

HandEdit MemoryLarder::applyTo(HandEdit edit) {
  put(
      pageOf(edit.food).setByHand, [&](const SetByHand& hand) { return hand.nutrient == edit.nutrient; },
      edit.before, edit.after);
  return edit;
}

LarderEdit MemoryLarder::apply(const LarderEdit& edit, const QString& /*who*/) {
  const std::lock_guard lock(shelf_->mutex_);
  return std::visit([this](const auto& one) -> LarderEdit { return applyTo(one); }, edit);
}

}  // namespace tarebowl::ui
