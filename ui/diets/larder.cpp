// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/larder.h"

#include "core/store/food_reading.h"
#include "core/store/reading.h"
#include "ui/collection/open_collection.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

/// So many foods are read at a time, a few milliseconds: what a hand asks for comes between.
constexpr std::size_t kAtATime = 16;

}  // namespace

Larder::Larder(OpenCollection& collection, QObject* parent)
    : QObject(parent),
      collection_(collection),
      foods_(std::make_shared<const std::vector<diet::DietFood>>()) {
  connect(&collection, &OpenCollection::opened, this, [this] {
    foods_ = std::make_shared<const std::vector<diet::DietFood>>();
    forget();
  });
  connect(&collection, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    if (what.any({store::Part::Foods, store::Part::Targets})) forget();
  });
  connect(&collection, &OpenCollection::written, this, &Larder::forget);
}

void Larder::forget() {
  ++generation_;
  isOld_ = true;
  isReading_ = false;
}

void Larder::want() {
  if (!isOld_ || !collection_.file()) return emit complete();
  if (isReading_) return;
  isReading_ = true;
  reading_.clear();
  collection_.askWhenIdle(
      store::inOneReading([](store::Collection& collection) { return store::listFoods(collection); }),
      [this, of = generation_](const std::vector<food::FoodLine>& lines) {
        if (of != generation_) return;
        std::vector<std::string> codes;
        for (const food::FoodLine& line : lines) codes.push_back(line.code);
        codes_ = std::make_shared<const std::vector<std::string>>(std::move(codes));
        readFrom(0);
      });
}

void Larder::readFrom(std::size_t first) {
  if (first >= codes_->size()) {
    foods_ = std::make_shared<const std::vector<diet::DietFood>>(std::exchange(reading_, {}));
    isOld_ = false;
    isReading_ = false;
    return emit complete();
  }
  const std::size_t last = std::min(codes_->size(), first + kAtATime);
  collection_.askWhenIdle(store::inOneReading([codes = codes_, first, last](store::Collection& collection) {
                            std::vector<diet::DietFood> foods;
                            for (std::size_t i = first; i < last; ++i)
                              store::askAhead(collection,
                                              [&] { return store::dietFood(collection, (*codes)[i]); });
                            for (std::size_t i = first; i < last; ++i)
                              if (auto food = store::dietFood(collection, (*codes)[i]))
                                foods.push_back(std::move(*food));
                            return foods;
                          }),
                          [this, last, of = generation_](std::vector<diet::DietFood> foods) {
                            if (of != generation_) return;
                            std::ranges::move(foods, std::back_inserter(reading_));
                            readFrom(last);
                          });
}

}  // namespace tarebowl::ui
